// SPDX-License-Identifier: MIT
#include "core/units/temperature.h"

#include <gtest/gtest.h>

using sp::units::Temperature;

namespace {

// OpenStax Contemporary Mathematics, module m00073: published pairs of degrees Fahrenheit and Celsius.
TEST(Temperature, agreesWithPublishedPairs) {
    struct Row {
        std::int64_t milliF;
        std::int64_t milliC;
    };
    for (const Row& row : {Row{392'000, 200'000}, Row{68'000, 20'000}, Row{37'400, 3'000}, Row{82'400, 28'000},
                           Row{64'400, 18'000}, Row{35'600, 2'000}}) {
        EXPECT_EQ(Temperature::fromMillifahrenheit(row.milliF).millicelsius(), row.milliC);
        EXPECT_EQ(Temperature::fromMillicelsius(row.milliC).millifahrenheit(), row.milliF);
        EXPECT_EQ(Temperature::fromMillifahrenheit(row.milliF), Temperature::fromMillicelsius(row.milliC));
    }
}

TEST(Temperature, keepsTheScaleItWasTypedIn) {
    EXPECT_EQ(Temperature::fromMillifahrenheit(315'000).millifahrenheit(), 315'000);
    EXPECT_EQ(Temperature::fromMillifahrenheit(315'000).millicelsius(), 157'222);
}

} // namespace
