// SPDX-License-Identifier: MIT
#include "app/format/formatter.h"
#include "tests/app/format/format_fixture.h"

namespace sp::desk::test {

// The marks and orders of a locale are CLDR's, as Qt carries them.
TEST(Formatter, writesMoneyWithTheLocalesMarksAndTheBooksDecimals) {
    const auto amount = units::Money::fromMicros(1'234'500'000);
    EXPECT_EQ(formatterOf("en_US").money(amount), qs("1,234.50"));
    EXPECT_EQ(formatterOf("de_DE").money(amount), qs("1.234,50"));
    EXPECT_EQ(formatterOf("en_US").moneyExact(units::Money::fromMicros(4'861)), qs("0.004861"));
    EXPECT_EQ(formatterOf("de_DE").moneyExact(units::Money::fromMicros(4'861)), qs("0,004861"));
    EXPECT_EQ(formatterOf("en_US").moneyNamed(amount), qs("1,234.50 USD"));
}

TEST(Formatter, writesSizesInTheShopsUnit) {
    const auto width = units::Length::fromInch64ths(3 * 64 + 32);
    const auto height = units::Length::fromInch64ths(2 * 64 + 48);
    EXPECT_EQ(formatterOf("en_US").size(width, height), qs("3 1/2 × 2 3/4 in"));
    EXPECT_EQ(formatterOf("de_DE", units::LengthUnit::Millimetre).length(width), qs("88,9 mm"));
}

TEST(Formatter, writesSharesToOneDecimal) {
    const Formatter formatter = formatterOf("en_US");
    EXPECT_EQ(formatter.rate(units::Rate::fromPpm(814'621)), qs("81.5 %"));
    EXPECT_EQ(formatter.rate(units::Rate::fromPpm(449'500)), qs("45.0 %"));
    EXPECT_EQ(formatter.rate(units::Rate::fromPpm(-500)), qs("-0.1 %"));
    EXPECT_EQ(formatter.rate(units::Rate::fromPpm(-499)), qs("0.0 %"));
    EXPECT_EQ(formatter.rate(units::Rate::fromPercent(1'250)), qs("1,250.0 %"));
}

TEST(Formatter, putsDayAndMonthInTheLocalesOrder) {
    const units::Date day = someWednesday();
    EXPECT_EQ(formatterOf("en_US").date(day), qs("Nov 25, 2026"));
    EXPECT_EQ(formatterOf("en_GB").date(day), qs("25 Nov 2026"));
    EXPECT_EQ(formatterOf("sv_SE").date(day), qs("2026-11-25"));
}

} // namespace sp::desk::test
