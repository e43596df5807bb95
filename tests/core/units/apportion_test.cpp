// SPDX-License-Identifier: MIT
#include "core/units/apportion.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

using namespace sp;
using units::Count;
using units::Currency;
using units::Fraction;
using units::Money;

namespace {

using sp::support::cents;

TEST(ToMinor, roundsHalvesAwayFromZeroToTheCurrencysOwnUnit) {
    EXPECT_EQ(units::toMinor(Fraction::of(6'945'000), Currency{}), cents(695));
    EXPECT_EQ(units::toMinor(Fraction::of(-6'945'000), Currency{}), cents(-695));
    EXPECT_EQ(units::toMinor(Fraction::of(6'944'999), Currency{}), cents(694));
    EXPECT_EQ(units::toMinor(Fraction::of(1'500'000), *Currency::parse("JPY")).micros(), 2'000'000);
    EXPECT_EQ(units::toMinor(Fraction::of(1'499'500), *Currency::parse("KWD")).micros(), 1'500'000);
}

TEST(ToMinor, roundsHalvesAwayFromZero) {
    for (const auto& [micros, expected] : {std::pair{14'999, 1},
                                           {15'000, 2},
                                           {25'000, 3},
                                           {-15'000, -2},
                                           {-14'999, -1},
                                           {-25'000, -3},
                                           {4'999, 0},
                                           {-4'999, 0},
                                           {5'000, 1}})
        EXPECT_EQ(units::toMinor(Fraction::of(micros), {}), cents(expected)) << micros;
}

// By hand: 10 / 3 = 3.333333 3…, 1 micro / 2 is a half and goes to the even 0.
TEST(EachOf, dividesToTheMicroHalfToEven) {
    EXPECT_EQ(units::eachOf(cents(1'000), Count::of(3)).micros(), 3'333'333);
    EXPECT_EQ(units::eachOf(Money::fromMicros(1), Count::of(2)).micros(), 0);
    EXPECT_EQ(units::eachOf(Money::fromMicros(3), Count::of(2)).micros(), 2);
}

TEST(Apportion, neverLosesACent) {
    std::mt19937_64 random(test::printedSeed());
    for (int i = 0; i < 2000; ++i) {
        std::vector<Money> weights;
        for (std::size_t n = random() % 12 + 1; n > 0; --n)
            weights.push_back(cents(static_cast<std::int64_t>(random() % 100'000)));
        const auto amount = cents(static_cast<std::int64_t>(random() % 20'000) - 10'000);
        Money sum;
        for (const auto share : units::apportion(amount, weights, Currency{})) {
            EXPECT_EQ(share.micros() % 10'000, 0);
            sum += share;
        }
        EXPECT_EQ(sum, amount);
    }
}

TEST(Apportion, givesAllToTheFirstWhenNothingWeighs) {
    const std::vector<Money> weights(3);
    EXPECT_EQ(units::apportion(cents(500), weights, Currency{}).front(), cents(500));
}

// By hand: 0.10 over three equal weights is 0.033…, so the running totals 0.03, 0.07, 0.10 give 3, 4 and 3 cents.
TEST(Apportion, roundsTheRunningTotals) {
    const std::vector<Money> weights(3, cents(1));
    EXPECT_EQ(units::apportion(cents(10), weights, Currency{}), (std::vector{cents(3), cents(4), cents(3)}));
}

// 1.00 over three equal weights: running totals 0.333, 0.667 and 1.00 rounded are 0.33, 0.67 and 1.00.
TEST(Apportion, roundsEachRunningTotal) {
    using testing::ElementsAre;
    const std::vector<Money> equal(3, cents(7));
    EXPECT_THAT(units::apportion(cents(100), equal, {}), ElementsAre(cents(33), cents(34), cents(33)));
    EXPECT_THAT(units::apportion(cents(-100), equal, {}), ElementsAre(cents(-33), cents(-34), cents(-33)));
    const std::vector<Money> some{Money{}, cents(1), cents(3)};
    EXPECT_THAT(units::apportion(cents(100), some, {}), ElementsAre(Money{}, cents(25), cents(75)));
    EXPECT_THAT(units::apportion(cents(100), std::vector<Money>(3), {}), ElementsAre(cents(100), Money{}, Money{}));
    EXPECT_THAT(units::apportion(Money{}, equal, {}), ElementsAre(Money{}, Money{}, Money{}));
    EXPECT_THAT(units::apportion(cents(100), {}, {}), testing::IsEmpty());
}

// By hand: 0.004 + 0.003 + 0.004 = 0.011, seen as 0.01; the running totals are 0.004, 0.007 and 0.011. Each part by
// itself would be seen as 0.00.
TEST(ShownParts, addUpToTheSumThatIsSeen) {
    using testing::ElementsAre;
    const auto micros = [](std::int64_t n) { return std::optional(Money::fromMicros(n)); };
    EXPECT_THAT(units::shownParts({micros(4'000), std::nullopt, micros(3'000), micros(4'000)}, {}),
                ElementsAre(micros(0), std::nullopt, micros(10'000), micros(0)));
    EXPECT_THAT(units::shownParts({micros(5'000), micros(5'000)}, {}), ElementsAre(micros(10'000), micros(0)));
    EXPECT_THAT(units::shownParts({}, {}), testing::IsEmpty());
}

// By hand: 10 micro-units over four are 3, 3, 2 and 2.
TEST(EvenShare, givesWhatDoesNotDivideToTheFirst) {
    std::vector<std::int64_t> shares;
    for (std::int64_t part = 0; part < 4; ++part)
        shares.push_back(units::evenShare(Money::fromMicros(10), part, 4).micros());
    EXPECT_EQ(shares, (std::vector<std::int64_t>{3, 3, 2, 2}));
}

// By hand: 19.99 ÷ 3 = 6.66333…; 0.05 ÷ 2 = 0.025, away from zero to 0.03; 19.99 ÷ 3 in yen is 7.
TEST(ShownEachOf, isOnePieceInMinorUnits) {
    EXPECT_EQ(units::shownEachOf(cents(1'999), Count::of(3), Currency{}), cents(666));
    EXPECT_EQ(units::shownEachOf(cents(5), Count::of(2), Currency{}), cents(3));
    EXPECT_EQ(units::shownEachOf(cents(-5), Count::of(2), Currency{}), cents(-3));
    EXPECT_EQ(units::shownEachOf(cents(1'999), Count::of(3), *Currency::parse("JPY")), cents(700));
}

// By hand: 3 × 4.15 = 12.45.
TEST(AllOf, isExact) { EXPECT_EQ(units::allOf(cents(415), Count::of(3)), cents(1'245)); }

// By hand: 0.9 m of a roll at 8.40 for 2 m is 3.78; a third of a micro-unit is none, one and a half go to the even 2.
TEST(ForLength, costsItsShare) {
    const auto decimetres = [](std::int64_t n) { return units::Length::fromNanometres(n * 100'000'000); };
    EXPECT_EQ(units::forLength(cents(840), decimetres(20), decimetres(9)), cents(378));
    EXPECT_EQ(units::forLength(Money::fromMicros(1), decimetres(3), decimetres(1)).micros(), 0);
    EXPECT_EQ(units::forLength(Money::fromMicros(1), decimetres(2), decimetres(3)).micros(), 2);
}

} // namespace
