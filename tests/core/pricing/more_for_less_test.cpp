// SPDX-License-Identifier: MIT
// Where more pieces come to less; worked by hand.
#include "core/pricing/ladder.h"
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using catalogue::SetUpCharge;
using sample::cents;
using units::Count;
using units::Rate;

namespace {

std::optional<pricing::MoreForLess> offerFor(const Job& job) {
    layout::FitMemo fits;
    return pricing::moreForLess(job.order, job.price(), 0, job.book, fits);
}

// Cost 10.00; 95 % below 24, 65 % from 24, 60 % from 48, 30 % from 96. 24 × 16.50 is 396.00: as much as 20.3 at 19.50,
// so 21 is the first that comes to more, 409.50. 96 × 13.00 is 1,248.00, 78 × 16.00 the same; 79 come to 1,264.00.
TEST(Offers, offerMoreWhereItCostsLess) {
    for (const auto& [pieces, offered, charged] : {std::tuple{20, 0, 0},
                                                   {21, 24, 39'600},
                                                   {23, 24, 39'600},
                                                   {24, 0, 0},
                                                   {46, 0, 0},
                                                   {47, 48, 76'800},
                                                   {78, 0, 0},
                                                   {79, 96, 124'800},
                                                   {95, 96, 124'800},
                                                   {96, 0, 0},
                                                   {200, 0, 0}}) {
        Job job(pieces);
        job.rules().ladder = {{Count::of(1), Rate::fromPercent(95)},
                              {Count::of(24), Rate::fromPercent(65)},
                              {Count::of(48), Rate::fromPercent(60)},
                              {Count::of(96), Rate::fromPercent(30)}};
        const auto offer = offerFor(job);
        EXPECT_EQ(offer.has_value(), offered != 0) << pieces;
        if (!offer) continue;
        EXPECT_EQ(*offer, (pricing::MoreForLess{Count::of(offered), cents(charged), job.line0().charged})) << pieces;
    }
}

// 20 at 20.00 come to 400.00, 24 at 16.00 to 384.00 and 30 at 12.80 to 384.00 as well: six pieces more for the same
// are the better offer. At 10.00 from 40 on it is 400.00, which is no less.
TEST(Offers, offerThePiecesThatCostTheLeast) {
    Job job(20);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(100)},
                          {Count::of(24), Rate::fromPercent(60)},
                          {Count::of(30), Rate::fromPercent(28)},
                          {Count::of(40), Rate{}}};
    EXPECT_EQ(offerFor(job)->quantity, Count::of(30));
}

// Where prices hold the tax an exempt customer is offered 24 without it, 396.00; who pays it 24 × 19.80, 475.20.
TEST(Offers, holdTheTaxOfWhoPaysIt) {
    Job job(23);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    EXPECT_EQ(offerFor(job)->charged, cents(47'520));
    job.book.customer = catalogue::Customer{};
    job.book.customer->certificate = catalogue::Certificate{"1", "Westmark", sample::day("2026-01-01"), {}};
    job.order.asksExemption = true;
    EXPECT_EQ(offerFor(job)->charged, cents(39'600));
}

// What is asked does not go by the ladder: a typed price; up to the smallest order more pieces cost no less, nor do
// they where nothing is paid. Surcharges and set-up are counted: 2 of the 23 are 2XL at 2.75 more, and art is an hour
// at 36.00, asked at 95 and at 65 %: 23 × 19.50 + 5.50 + 70.20 = 524.20, 24 × 16.50 + 5.50 + 59.40 = 460.90.
TEST(Offers, offerNothingWhereTheOrderCostsNoLess) {
    Job job(23);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
    job.setUpCosts(3600);
    job.rules().setUp = SetUpCharge::OwnLine;
    job.sizesCost(0, 275);
    job.first().sizes = {{"2XL", Count::of(2)}};
    EXPECT_EQ(*offerFor(job), (pricing::MoreForLess{Count::of(24), cents(46'090), cents(52'420)}));
    job.rules().minimumOrder = cents(52'420);
    EXPECT_TRUE(offerFor(job)) << "the order comes to its minimum by itself";
    job.rules().minimumOrder = cents(52'421);
    EXPECT_FALSE(offerFor(job));
    job.rules().minimumOrder = {};
    job.order.discount.share = Rate::fromPercent(100);
    EXPECT_FALSE(offerFor(job));
    job.order.discount.share.reset();
    job.first().overrideEach = cents(1950);
    EXPECT_FALSE(offerFor(job));
}

} // namespace
