// SPDX-License-Identifier: MIT
#include "core/units/currency.h"

#include <gtest/gtest.h>

using sp::units::Currency;

namespace {

// ISO 4217: minor units as repeated by OPC Foundation Core Part 3 section 8.61 (USD, EUR, GBP, AUD, INR, JPY) and the
// exponent list of the pub.dev package moneys (BHD, CLP, DJF, CLF, BIF); KWD from memory.
TEST(Currency, knowsTheMinorUnitsOfIso4217) {
    struct Row {
        const char* code;
        int decimals;
    };
    for (const Row& row :
         {Row{"USD", 2}, Row{"EUR", 2}, Row{"GBP", 2}, Row{"AUD", 2}, Row{"INR", 2}, Row{"JPY", 0}, Row{"BHD", 3},
          Row{"CLP", 0}, Row{"DJF", 0}, Row{"CLF", 4}, Row{"BIF", 0}, Row{"KRW", 0}, Row{"KWD", 3}}) {
        const auto currency = Currency::parse(row.code);
        ASSERT_TRUE(currency.has_value()) << row.code;
        EXPECT_EQ(currency->decimals(), row.decimals) << row.code;
    }
}

TEST(Currency, countsMicrosInAMinorUnit) {
    EXPECT_EQ(Currency::parse("USD")->microsPerMinor(), 10'000);
    EXPECT_EQ(Currency::parse("JPY")->microsPerMinor(), 1'000'000);
    EXPECT_EQ(Currency::parse("KWD")->microsPerMinor(), 1'000);
}

TEST(Currency, refusesWhatIsNotACode) {
    for (const auto* text : {"", "US", "usd", "USDT", "U$D"}) EXPECT_FALSE(Currency::parse(text).has_value()) << text;
}

} // namespace
