// SPDX-License-Identifier: MIT
#include "core/pricing/mark_up.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace sp;
using pricing::marginFromMarkUp;
using sample::cents;
using units::Money;
using units::Rate;

namespace {

Money priceOf(Money cost, Rate markUp) { return Money::fromExact(pricing::priceAtMarkUp(cost.exact(), markUp)); }

// OpenStax, Contemporary Mathematics m00058 and Prealgebra 2e m81307: cost, mark-up, price.
TEST(MarkUp, agreesWithThePublishedExamples) {
    struct Row {
        std::int64_t cost;
        int percent;
        std::int64_t price;
    };
    for (const Row& row : {Row{6200, 15, 7130}, Row{75000, 45, 108750}, Row{130, 60, 208}, Row{25000, 40, 35000},
                           Row{120000, 50, 180000}, Row{850000, 35, 1147500}, Row{2500, 18, 2950}})
        EXPECT_EQ(priceOf(cents(row.cost), Rate::fromPercent(row.percent)), cents(row.price)) << row.cost;
}

// The same modules: cost and price, mark-up.
TEST(MarkUp, isReadBackFromPublishedPrices) {
    EXPECT_EQ(pricing::markUpOf(cents(10350), cents(9000)), Rate::fromPercent(15));
    EXPECT_EQ(pricing::markUpOf(cents(84000), cents(48000)), Rate::fromPercent(75));
    EXPECT_EQ(pricing::markUpOf(cents(1062), cents(885)), Rate::fromPercent(20));
    EXPECT_NEAR(static_cast<double>(pricing::markUpOf(cents(990), cents(520))->ppm()) / 10'000, 90.38, 0.005);
    EXPECT_NEAR(static_cast<double>(pricing::marginOf(cents(84000), cents(48000))->ppm()) / 10'000, 42.86, 0.005);
}

TEST(MarkUp, hasNoValueOnNothing) {
    EXPECT_FALSE(pricing::markUpOf(cents(100), Money{}).has_value());
    EXPECT_FALSE(pricing::marginOf(Money{}, cents(100)).has_value());
}

// margin = mark-up / (1 + mark-up), computed from the definitions of m00058 and m68115.
TEST(Margin, followsFromTheMarkUp) {
    const double pairs[][2] = {{10, 9.09},  {20, 16.67}, {25, 20},  {40, 28.57},  {50, 33.33}, {60, 37.5},
                               {75, 42.86}, {100, 50},   {150, 60}, {200, 66.67}, {300, 75}};
    for (const auto& pair : pairs) {
        const auto margin = marginFromMarkUp(Rate::fromPercent(static_cast<std::int64_t>(pair[0])));
        ASSERT_TRUE(margin) << pair[0];
        EXPECT_NEAR(static_cast<double>(margin->ppm()) / 10'000, pair[1], 0.005) << pair[0];
    }
}

TEST(Margin, isNoneOfWhatIsGivenAway) { EXPECT_EQ(marginFromMarkUp(Rate::fromPercent(-100)), std::nullopt); }

TEST(Ladder, takesTheHighestStepNotAboveTheQuantity) {
    const std::vector<catalogue::MarkUpStep> ladder{{units::Count::of(1), Rate::fromPercent(95)},
                                                    {units::Count::of(12), Rate::fromPercent(75)},
                                                    {units::Count::of(24), Rate::fromPercent(65)}};
    EXPECT_EQ(pricing::markUpFor(ladder, units::Count::of(1)), Rate::fromPercent(95));
    EXPECT_EQ(pricing::markUpFor(ladder, units::Count::of(11)), Rate::fromPercent(95));
    EXPECT_EQ(pricing::markUpFor(ladder, units::Count::of(12)), Rate::fromPercent(75));
    EXPECT_EQ(pricing::markUpFor(ladder, units::Count::of(1000)), Rate::fromPercent(65));
    EXPECT_EQ(pricing::markUpFor({}, units::Count::of(5)), Rate{});
}

} // namespace
