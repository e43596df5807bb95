// SPDX-License-Identifier: MIT
#include "core/quoting/owner_figures.h"

#include <gtest/gtest.h>

namespace sp::quoting {

namespace {

using units::Count;
using units::Money;

pricing::PricedLine line(std::int64_t cost, std::int64_t profit, std::int64_t paidOut) {
    pricing::PricedLine line;
    line.cost.total = Money::fromMicros(cost);
    line.earnings.profit = Money::fromMicros(profit);
    line.cost.outOfPocket = Money::fromMicros(paidOut);
    return line;
}

} // namespace

// By hand: 100 ÷ 24 = 4.1666…, 66.8 ÷ 24 = 2.78333…, 39.6 ÷ 24 = 1.65.
TEST(OwnerFigures, areTheLinesFiguresForOnePiece) {
    const auto figures = ownerFigures(line(100'000'000, 66'800'000, 39'600'000), Count::of(24));
    EXPECT_EQ(figures.costEach.micros(), 4'166'667);
    EXPECT_EQ(figures.profitEach.micros(), 2'783'333);
    EXPECT_EQ(figures.paidOutEach.micros(), 1'650'000);
}

// By hand: −10 ÷ 3 = −3.3333…; of half micro-units 3 ÷ 2 and 5 ÷ 2 go to the even 2, 1 ÷ 2 to 0.
TEST(OwnerFigures, sayALossAndRoundHalvesToEven) {
    EXPECT_EQ(ownerFigures(line(0, -10'000'000, 0), Count::of(3)).profitEach.micros(), -3'333'333);
    const auto figures = ownerFigures(line(3, 1, 5), Count::of(2));
    EXPECT_EQ(figures.costEach.micros(), 2);
    EXPECT_EQ(figures.profitEach.micros(), 0);
    EXPECT_EQ(figures.paidOutEach.micros(), 2);
}

TEST(OwnerFigures, areTheLinesOwnForASinglePiece) {
    const auto figures = ownerFigures(line(7, 8, 9), Count::of(1));
    EXPECT_EQ(figures.costEach.micros(), 7);
    EXPECT_EQ(figures.profitEach.micros(), 8);
    EXPECT_EQ(figures.paidOutEach.micros(), 9);
}

} // namespace sp::quoting
