// SPDX-License-Identifier: MIT
#include "core/base/overflow.h"
#include "core/units/money.h"
#include "core/units/unit_price.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

using namespace sp::units;

namespace {

struct RoundingCase {
    const char* name;
    std::int64_t numerator;
    std::int64_t denominator;
    std::int64_t halfEven;
    std::int64_t halfUp;
};

void PrintTo(const RoundingCase& row, std::ostream* out) { *out << row.name; }

class FractionRounding : public testing::TestWithParam<RoundingCase> {};

TEST_P(FractionRounding, agreesWithThePublishedPairs) {
    const auto& row = GetParam();
    const Fraction value = Fraction::ratio(row.numerator, row.denominator);
    EXPECT_EQ(value.roundedHalfEven(), row.halfEven);
    EXPECT_EQ(value.roundedHalfUp(), row.halfUp);
}

// Pairs as printed in the documentation of bround (learn.microsoft.com) and of RoundingMode (docs.cangjie-lang.cn).
INSTANTIATE_TEST_SUITE_P(Published, FractionRounding,
                         testing::Values(RoundingCase{"2.5", 25, 10, 2, 3}, RoundingCase{"3.5", 35, 10, 4, 4},
                                         RoundingCase{"22.5", 225, 10, 22, 23}, RoundingCase{"4.5", 45, 10, 4, 5},
                                         RoundingCase{"-4.5", -45, 10, -4, -5}, RoundingCase{"7.5", 75, 10, 8, 8},
                                         RoundingCase{"-1.1", -11, 10, -1, -1}));

TEST(Fraction, keepsAPackPriceExactUntilItIsMultiplied) {
    // 6.94 for 1,440 stones; 1,440 of them cost 6.94 again, which a price rounded per stone would miss.
    const UnitPrice price{Money::fromMicros(6'940'000), Count::of(1440)};
    EXPECT_EQ(Money::fromExact(price.each() * Fraction::of(1440)).micros(), 6'940'000);
    EXPECT_EQ(Money::fromExact(price.each() * Fraction::of(720)).micros(), 3'470'000);
}

TEST(Fraction, throwsInsteadOfWrapping) {
    const Fraction big = Fraction::of(static_cast<Int128>(1) << 100);
    EXPECT_THROW((void)(big * big), sp::base::Overflow);
    EXPECT_THROW((void)big.roundedHalfEven(), sp::base::Overflow);
}

TEST(Fraction, reducesBeforeItGivesUp) {
    const Fraction big = Fraction::ratio(static_cast<Int128>(1) << 100, 3);
    const Fraction small = Fraction::ratio(9, static_cast<Int128>(1) << 100);
    EXPECT_TRUE(big * small == Fraction::of(3));
}

TEST(Fraction, floorAndCeilingEncloseTheValue) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int i = 0; i < 2000; ++i) {
        const auto n = static_cast<std::int64_t>(random() % 2'000'001) - 1'000'000;
        const auto d = static_cast<std::int64_t>(random() % 999) + 1;
        const Fraction value = Fraction::ratio(n, d);
        EXPECT_FALSE(value < Fraction::of(value.floor())) << n << '/' << d;
        EXPECT_FALSE(Fraction::of(value.ceiling()) < value) << n << '/' << d;
        EXPECT_LE(value.ceiling() - value.floor(), 1) << n << '/' << d;
    }
}

} // namespace
