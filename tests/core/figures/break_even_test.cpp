// SPDX-License-Identifier: MIT
#include "core/figures/break_even.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using figures::breakEven;
using figures::Earned;
using units::Count;
using units::Duration;
using units::Money;

using sp::support::money;

// OpenStax, Principles of Accounting 2, section 3.2 (from memory): a bird bath sold at 100 with 20 of variable cost,
// 18,000 of fixed costs a month: 225 are to be sold.
TEST(BreakEven, isThatOfTheTextbook) {
    const Earned one{.pieces = Count::of(1), .income = money(100), .cost = money(90), .paidOut = money(20)};
    const auto even = breakEven(money(18'000), one);
    EXPECT_EQ(even.contribution, money(80));
    EXPECT_EQ(even.toGo, money(17'920));
    EXPECT_EQ(even.pieces, Count::of(224)); // besides the one
}

TEST(BreakEven, countsAPieceAndAnHourThatAreBegun) {
    const Earned soFar{.pieces = Count::of(30),
                       .income = money(310),
                       .paidOut = money(100),
                       .cardFee = money(10),
                       .bench = Duration::fromMinutes(600)};
    const auto even = breakEven(money(501), soFar);
    EXPECT_EQ(even.toGo, money(301));
    EXPECT_EQ(even.pieces, Count::of(46)); // 301 × 30 ÷ 200 = 45.15
    EXPECT_EQ(even.bench, Duration::fromMinutes(903));
}

TEST(BreakEven, hasNothingToGoOnceItIsCarried) {
    const Earned soFar{.pieces = Count::of(30), .income = money(700), .paidOut = money(100)};
    const auto even = breakEven(money(600), soFar);
    EXPECT_TRUE(even.toGo.isZero());
    EXPECT_EQ(even.pieces, std::nullopt);
    EXPECT_EQ(even.bench, std::nullopt);
    EXPECT_TRUE(breakEven(money(0), {}).toGo.isZero());
}

TEST(BreakEven, isNeverReachedByWhatCarriesNothing) {
    const Earned atALoss{.pieces = Count::of(30), .income = money(70), .paidOut = money(100)};
    EXPECT_EQ(breakEven(money(600), atALoss).toGo, money(630));
    EXPECT_EQ(breakEven(money(600), atALoss).pieces, std::nullopt);
    EXPECT_EQ(breakEven(money(600), {}).toGo, money(600));
    EXPECT_EQ(breakEven(money(600), {}).bench, std::nullopt);
}

} // namespace
