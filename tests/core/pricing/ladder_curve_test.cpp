// SPDX-License-Identifier: MIT
// The ladder as money by quantity; worked by hand.
#include "core/pricing/ladder_curve.h"
#include "tests/core/pricing/price_job.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using pricing::Cliff;
using pricing::QuantityPrice;
using sample::cents;
using testing::ElementsAre;
using units::Count;
using units::Money;
using units::Rate;

namespace {

pricing::LadderCurve curveOf(const Job& job) {
    layout::FitMemo fits;
    const auto curve = pricing::ladderCurve(job.order.lines.front(), job.book, fits);
    EXPECT_TRUE(curve.has_value()) << (curve ? "" : describe(curve.error()));
    return curve.value_or(pricing::LadderCurve{});
}

// Cost 10.00; 95 % below 24, 65 % from 24, 60 % from 48, 30 % from 96. 24 × 16.50 is 396.00, as much as 20.3 at 19.50:
// 21 to 23 come to more. 48 × 16.00 is 768.00; 46 × 16.50 is 759.00, 47 come to 775.50. 96 × 13.00 is 1,248.00 and so
// is 78 × 16.00: 79 to 95 come to more. A quarter beyond 96 is 120.
TEST(LadderCurve, marksWhereMorePiecesComeToLess) {
    Job job(3);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(95)},
                          {Count::of(24), Rate::fromPercent(65)},
                          {Count::of(48), Rate::fromPercent(60)},
                          {Count::of(96), Rate::fromPercent(30)}};
    const auto curve = curveOf(job);
    ASSERT_EQ(curve.points.size(), 120U);
    EXPECT_EQ(curve.points.front(), (QuantityPrice{Count::of(1), cents(1950), cents(1950)}));
    EXPECT_EQ(curve.points.back(), (QuantityPrice{Count::of(120), cents(1300), cents(156'000)}));
    EXPECT_EQ(*curve.at(Count::of(23)), (QuantityPrice{Count::of(23), cents(1950), cents(44'850)}));
    EXPECT_EQ(curve.at(Count::of(121)), nullptr);
    EXPECT_THAT(curve.cliffs, ElementsAre(Cliff{Count::of(21), Count::of(24), cents(39'600)},
                                          Cliff{Count::of(47), Count::of(48), cents(76'800)},
                                          Cliff{Count::of(79), Count::of(96), cents(124'800)}));
}

// Below a smallest order of 400.00 nobody pays less for more: only 21 to 23 lie above 400.00, and 24 are 400.00.
TEST(LadderCurve, countsTheSmallestOrderIn) {
    Job job(3);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
    job.rules().minimumOrder = cents(40'000);
    const auto curve = curveOf(job);
    EXPECT_EQ(curve.at(Count::of(1))->total, cents(40'000));
    EXPECT_THAT(curve.cliffs, ElementsAre(Cliff{Count::of(21), Count::of(24), cents(40'000)}));
}

// What is typed on the line and its sizes do not count: the ladder is asked about. With one step there is no cliff, and
// twelve pieces are shown.
TEST(LadderCurve, isOfTheLadderAlone) {
    Job job(3);
    job.first().overrideEach = cents(1);
    job.sizesCost(0, 500);
    job.first().sizes = {{"2XL", Count::of(3)}};
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    const auto curve = curveOf(job);
    ASSERT_EQ(curve.points.size(), 12U);
    EXPECT_EQ(curve.points.back(), (QuantityPrice{Count::of(12), cents(1500), cents(18'000)}));
    EXPECT_TRUE(curve.cliffs.empty());
}

// 10,000 and a quarter are looked at in steps of 32; where a step of the ladder begins, and before it, none is left
// out.
TEST(LadderCurve, keepsTheStepsOfALongLadder) {
    Job job(3);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(100)}, {Count::of(10'000), Rate::fromPercent(99)}};
    const auto curve = curveOf(job);
    EXPECT_LE(curve.points.size(), static_cast<std::size_t>(pricing::kMostQuantities) + 2);
    ASSERT_NE(curve.at(Count::of(9'999)), nullptr);
    ASSERT_NE(curve.at(Count::of(10'000)), nullptr);
    ASSERT_EQ(curve.cliffs.size(), 1U);
    EXPECT_EQ(curve.cliffs[0].at, Count::of(10'000)); // 199,000.00; 9,999 at 20.00 are 199,980.00
}

TEST(LadderCurve, keepsAStepAtTheMostPiecesThereAre) {
    Job job(3);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(100)},
                          {Count::of(catalogue::kMaxPieces), Rate::fromPercent(99)}};
    const auto curve = curveOf(job);
    EXPECT_EQ(curve.points.back().quantity, Count::of(catalogue::kMaxPieces));
    ASSERT_NE(curve.at(Count::of(catalogue::kMaxPieces - 1)), nullptr);
}

TEST(LadderCurve, saysWhyThereIsNone) {
    Job job(3);
    job.first().first().stones.clear();
    layout::FitMemo fits;
    EXPECT_FALSE(pricing::ladderCurve(job.first(), job.book, fits).has_value());
}

} // namespace
