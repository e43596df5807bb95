// SPDX-License-Identifier: MIT
#include "core/supply/plan_figures.h"

#include <gtest/gtest.h>

namespace sp::supply {

namespace {

using units::Count;
using units::Money;

Money micros(std::int64_t amount) { return Money::fromMicros(amount); }

} // namespace

// All by hand: 10 ÷ 3 = 3.3333…, 20 ÷ 3 = 6.6666…, 12.50 + 4.95 = 17.45, 17.45 − 16.20 = 1.25.
TEST(PlanFigures, onePackIsItsShareOfTheGoods) {
    EXPECT_EQ(packEach({"a", "s", Count::of(3), micros(10'000'000)}).micros(), 3'333'333);
    EXPECT_EQ(packEach({"a", "s", Count::of(1), micros(9'990'000)}).micros(), 9'990'000);
}

TEST(PlanFigures, anOrderIsGoodsAndShipping) {
    EXPECT_EQ(orderTotal({"s", micros(12'500'000), micros(4'950'000)}).micros(), 17'450'000);
}

TEST(PlanFigures, aPieceIsItsShareOfTheWholePlan) {
    PurchasePlan plan;
    plan.cost = micros(20'000'000);
    EXPECT_EQ(costEach(plan, 3).micros(), 6'666'667);
    EXPECT_EQ(costEach(StrategyCost{micros(20'000'000), {}}, 3), micros(6'666'667));
    EXPECT_EQ(costEach(StrategyCost{micros(5), {}}, 2), micros(2)) << "halves go to the even micro-unit";
    EXPECT_EQ(costEach(StrategyCost{}, 3), std::nullopt);
}

TEST(PlanFigures, whatIsNotProvenIsCostOverBound) {
    PurchasePlan plan;
    plan.cost = micros(17'450'000);
    plan.bound = micros(16'200'000);
    EXPECT_EQ(unprovenGap(plan).micros(), 1'250'000);
    plan.bound = plan.cost;
    EXPECT_TRUE(unprovenGap(plan).isZero());
}

TEST(PlanFigures, aBoundIsToldTooLowRatherThanTooHigh) {
    PurchasePlan plan;
    plan.cost = micros(37'500);
    plan.bound = micros(29'999);
    EXPECT_EQ(boundInMinor(plan, {}), micros(20'000));
    plan.bound = plan.cost;
    plan.proven = true;
    EXPECT_EQ(boundInMinor(plan, {}), micros(40'000)) << "as the cost is told";
}

} // namespace sp::supply
