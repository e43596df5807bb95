// SPDX-License-Identifier: MIT
// The prices of other quantities; worked by hand.
#include "core/pricing/ladder.h"
#include "tests/core/pricing/price_job.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using catalogue::SetUpCharge;
using sample::cents;
using units::Count;
using units::Rate;

namespace {

// 12, 24 and 48 are shown, and 24, which is ordered: cost 10.00 and 36.00 of set-up, at 50 % below 24 pieces and 20 %
// from there on. A typed price stands for the ordered ones, and sizes are counted for them alone.
TEST(Ladder, showsWhatOtherQuantitiesCost) {
    Job job(24);
    job.setUpCosts(3600);
    job.sizesCost(200, 0);
    job.first().sizes = {{"2XL", Count::of(24)}};
    job.rules().setUp = SetUpCharge::OwnLine;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}, {Count::of(24), Rate::fromPercent(20)}};
    job.book.shop.ladderQuantities = {Count::of(48), Count::of(12), Count::of(24)};
    layout::FitMemo fits;
    const auto ladder = pricing::ladderFor(job.order, 0, job.book, false, fits);
    ASSERT_TRUE(ladder.has_value());
    using pricing::LadderPrice;
    EXPECT_THAT(*ladder, testing::ElementsAre(
                             LadderPrice{Count::of(12), cents(1500), cents(5400), cents(12 * 1500 + 5400), false},
                             LadderPrice{Count::of(24), cents(1440), cents(4320), cents(24 * 1440 + 4320), true},
                             LadderPrice{Count::of(48), cents(1200), cents(4320), cents(48 * 1200 + 4320), false}));
    job.first().overrideEach = cents(2000);
    const auto typed = pricing::ladderFor(job.order, 0, job.book, false, fits);
    ASSERT_TRUE(typed.has_value());
    EXPECT_EQ((*typed)[0].each, cents(1500));
    EXPECT_EQ((*typed)[1].each, cents(2000));
    EXPECT_EQ((*typed)[2].each, cents(1200));
}

// 10.00 with 20 % tax inside; an exempt customer's ladder has none.
TEST(Ladder, holdsTheTaxOfWhoPaysIt) {
    Job job(24);
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    job.book.shop.ladderQuantities.clear();
    layout::FitMemo fits;
    EXPECT_EQ(pricing::ladderFor(job.order, 0, job.book, false, fits)->at(0).each, cents(1200));
    EXPECT_EQ(pricing::ladderFor(job.order, 0, job.book, true, fits)->at(0).each, cents(1000));
    job.book.shop.ladderQuantities = {Count::of(2'000'000)};
    EXPECT_FALSE(pricing::ladderFor(job.order, 0, job.book, false, fits).has_value());
}

// A typed price of a charge is not one for other quantities, and without it there may be none.
TEST(Ladder, ofAChargeIsItsOwnQuantity) {
    Job job;
    auto& line = job.first();
    line.places.clear();
    line.baseMaterial = {};
    line.quantity = Count::of(2);
    line.overrideEach = cents(650);
    layout::FitMemo fits;
    const auto ladder = pricing::ladderFor(job.order, 0, job.book, false, fits);
    ASSERT_TRUE(ladder) << describe(ladder.error());
    ASSERT_EQ(ladder->size(), 1U);
    EXPECT_EQ(ladder->front().total, cents(1300));
}

TEST(Ladder, ofWhatIsAtNoChargeHasNoPrices) {
    Job job;
    job.first().atNoCharge = true;
    layout::FitMemo fits;
    EXPECT_TRUE(pricing::ladderFor(job.order, 0, job.book, false, fits).value().empty());
    job.first().atNoCharge = false;
    EXPECT_FALSE(pricing::ladderFor(job.order, 0, job.book, false, fits).value().empty());
    job.order.atNoCharge = true;
    EXPECT_TRUE(pricing::ladderFor(job.order, 0, job.book, false, fits).value().empty());
}

} // namespace
