// SPDX-License-Identifier: MIT
#include "core/units/date.h"

#include <gtest/gtest.h>

using sp::units::Date;

namespace {

TEST(Date, readsBackWhatItWrote) {
    for (const auto* text : {"2026-11-25", "2024-02-29", "0001-01-01", "9999-12-31"})
        EXPECT_EQ(Date::parse(text)->iso(), text);
}

TEST(Date, countsDaysAcrossALeapDay) {
    EXPECT_EQ(Date::parse("2024-02-28")->daysUntil(*Date::parse("2024-03-01")), 2);
    EXPECT_EQ(Date::parse("2023-02-28")->daysUntil(*Date::parse("2023-03-01")), 1);
}

TEST(Date, refusesDaysThatDoNotExist) {
    for (const auto* text :
         {"2023-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "26-11-25", "2026/11/25", "", "tomorrow"})
        EXPECT_FALSE(Date::parse(text).has_value()) << text;
}

} // namespace
