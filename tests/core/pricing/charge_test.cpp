// SPDX-License-Identifier: MIT
// From cost to what is charged for pieces, set-up, sizes, rush, discount and minimum, each with the figure worked by
// hand beside it, and the edges between which a rule changes. All prices are invented.
#include "core/pricing/ladder.h"
#include "tests/core/pricing/price_job.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using catalogue::SetUpCharge;
using sample::cents;
using units::Count;
using units::Money;
using units::Rate;

namespace {

// Cost 10.00: without a mark-up below the first step, 95 % from 5 to 23, 65 % from 24 on.
TEST(Charges, climbTheLadder) {
    for (const auto& [pieces, each] : {std::pair{4, 1000}, {5, 1950}, {23, 1950}, {24, 1650}, {25, 1650}}) {
        Job job(pieces);
        job.rules().ladder = {{Count::of(5), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
        EXPECT_EQ(job.line0().each, cents(each)) << pieces;
        EXPECT_EQ(job.line0().goods, cents(each * pieces)) << pieces;
    }
}

// 10 × 10.00 and an hour of art at 36.00, at 50 %: as a line of its own 15.00 each and 54.00; spread
// (100 + 36) × 1.5 / 10 = 20.40 each.
TEST(Charges, chargeTheSetUpAloneOrSpread) {
    Job job;
    job.setUpCosts(3600);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.rules().setUp = SetUpCharge::OwnLine;
    EXPECT_EQ(job.line0().each, cents(1500));
    EXPECT_EQ(job.line0().setUp, cents(5400));
    EXPECT_EQ(job.line0().charged, cents(20'400));
    job.rules().setUp = SetUpCharge::Spread;
    EXPECT_EQ(job.line0().each, cents(2040));
    EXPECT_EQ(job.line0().setUp, Money{});
    EXPECT_EQ(job.line0().charged, cents(20'400));
}

// A typed price stands for the pieces; the set-up of its own line is asked besides, and what was reckoned is kept.
TEST(Charges, ofATypedPrice) {
    Job job;
    job.setUpCosts(3600);
    job.rules().setUp = SetUpCharge::OwnLine;
    job.first().overrideEach = Money::fromMicros(12'345'000); // to the cent, half up
    const auto line = job.line0();
    EXPECT_EQ(line.each, cents(1235));
    EXPECT_EQ(line.calculatedEach, cents(1000));
    EXPECT_EQ(line.charged, cents(12'350 + 3600));
}

// 10 pieces, 4 of them 2XL. Extra cost 2.00 without a surcharge is in the price of every piece: (100 + 8) / 10 at 50 %.
// With a surcharge of 2.75 the price of a piece is the plain one, and 4 × 2.75 come on top.
TEST(Charges, ofSizes) {
    Job job;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.first().sizes = {{"M", Count::of(6)}, {"2XL", Count::of(4)}};
    job.sizesCost(200, 0);
    EXPECT_EQ(job.line0().each, cents(1620));
    EXPECT_TRUE(job.line0().sizes.empty());
    job.sizesCost(200, 275);
    auto line = job.line0();
    EXPECT_EQ(line.each, cents(1500));
    ASSERT_EQ(line.sizes.size(), 1U);
    EXPECT_EQ(line.sizes[0], (pricing::Surcharge{"2XL", Count::of(4), cents(275), cents(1100)}));
    EXPECT_EQ(line.charged, cents(15'000 + 1100));
    EXPECT_EQ(line.cost.total, cents(10'800)) << "the larger blanks still cost what they cost";
    EXPECT_EQ(line.earnings.profit, cents(16'100 - 10'800));
    job.sizesCost(0, 275); // costs no more and is charged for all the same
    EXPECT_EQ(job.line0().charged, cents(15'000 + 1100));
    job.first().sizes = {{"2XL", Count::of(0)}};
    EXPECT_TRUE(job.line0().sizes.empty());
}

// 10 pieces with a design on the front and one on each sleeve, 1.50 a sleeve: 10 × 2 × 1.50 besides the price of a
// piece, which stays. Capital letters do not matter; a place that the shop has no surcharge for has none.
TEST(Charges, ofPlaces) {
    Job job;
    job.rules().places = {{"Sleeve", cents(150)}, {"Hem", cents(75)}, {"Back", {}}};
    const auto plain = job.line0();
    EXPECT_TRUE(plain.places.empty());
    auto& places = job.first().places;
    places.assign(3, places.front());
    places[0].place = "Front";
    places[1].place = "sleeve";
    places[2].place = "SLEEVE";
    const auto line = job.line0();
    ASSERT_EQ(line.places.size(), 1U);
    EXPECT_EQ(line.places[0], (pricing::Surcharge{"Sleeve", Count::of(20), cents(150), cents(3000)}));
    EXPECT_EQ(line.charged, line.goods + cents(3000));
    EXPECT_EQ(job.price().goods, line.goods + cents(3000));
    places[0].place = "Back";
    places.resize(1);
    EXPECT_TRUE(job.line0().places.empty()) << "a surcharge of nothing is not a row";
    places[0].place = "Hem";
    EXPECT_EQ(job.line0().charged, job.line0().goods + cents(750));
    job.first().atNoCharge = true;
    EXPECT_TRUE(job.line0().places.empty());
    EXPECT_EQ(job.line0().charged, Money{});
}

// 1.20 with 20 % tax in it is 1.00 where none is due: 10 × 1.00, and 10 × 1.20 where it is.
TEST(Charges, ofPlacesGiveUpTheTaxInThem) {
    Job job;
    job.rules().places = {{"Sleeve", cents(120)}};
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    job.first().first().place = "Sleeve";
    EXPECT_EQ(job.line0().places.at(0).amount, cents(1200));
    job.first().taxable = false;
    EXPECT_EQ(job.line0().places.at(0).amount, cents(1000));
}

// Of each other quantity its total has the surcharges of its pieces: that is known, unlike the sizes.
TEST(Charges, ofPlacesAreInTheTotalsOfOtherQuantities) {
    Job job;
    job.rules().places = {{"Sleeve", cents(150)}};
    job.book.shop.ladderQuantities = {Count::of(5), Count::of(20)};
    job.first().first().place = "Sleeve";
    layout::FitMemo fits;
    const auto ladder = pricing::ladderFor(job.order, 0, job.book, false, fits);
    ASSERT_TRUE(ladder);
    ASSERT_EQ(ladder->size(), 3U);
    for (const auto& step : *ladder)
        EXPECT_EQ(step.total, Money::fromMicros((step.each + cents(150)).micros() * step.quantity.value()));
}

// The sizes of a blank are not asked for on the customer's own garment, nor is the blank.
TEST(Charges, ofACustomersGarmentHaveNoBlank) {
    Job job;
    job.first().customersGarment = true;
    EXPECT_EQ(job.line0().charged, Money{});
    EXPECT_EQ(job.line0().cost.total, Money{});
}

// 100.00 of goods, 60 % within 2 days, 20 % within 7: on the day itself, at both edges and one day past them.
TEST(Charges, chargeRushByTheDays) {
    Job job;
    job.rules().rush = {{2, Rate::fromPercent(60)}, {7, Rate::fromPercent(20)}};
    EXPECT_EQ(job.price().rush, Money{}) << "no day is wanted";
    for (const auto& [days, rush] : {std::pair{0, 6000}, {1, 6000}, {2, 6000}, {3, 2000}, {7, 2000}, {8, 0}}) {
        job.order.wantedBy = job.order.quotedOn.plusDays(days);
        EXPECT_EQ(job.price().rush, cents(rush)) << days;
        EXPECT_EQ(job.price().rushRate, Rate::fromPercent(rush / 100)) << days;
        EXPECT_EQ(job.price().subtotal, cents(10'000 + rush)) << days;
    }
}

// On set-up and sizes too: (100 + 36 + 2.75) × 10 % = 13.875, up to 13.88.
TEST(Charges, chargeRushOnAllThatIsCharged) {
    Job job;
    job.setUpCosts(3600);
    job.sizesCost(0, 275);
    job.first().sizes = {{"2XL", Count::of(1)}};
    job.rules().setUp = SetUpCharge::OwnLine;
    job.rules().rush = {{7, Rate::fromPercent(10)}};
    job.order.wantedBy = job.order.quotedOn;
    EXPECT_EQ(job.price().goods, cents(13'875));
    EXPECT_EQ(job.price().rush, cents(1388));
}

// A share is of goods and rush: 12.5 % of 100.00 + 20.00; an amount is taken as it is. None is more than there is.
TEST(Charges, takeTheDiscountOff) {
    Job job;
    job.rules().rush = {{7, Rate::fromPercent(20)}};
    job.order.wantedBy = job.order.quotedOn;
    job.order.discount.share = Rate::fromPpm(125'000);
    EXPECT_EQ(job.price().discount, cents(1500));
    EXPECT_EQ(job.price().subtotal, cents(10'500));
    job.order.discount = {{}, cents(4550)};
    EXPECT_EQ(job.price().discount, cents(4550));
    EXPECT_EQ(job.price().subtotal, cents(7450));
    job.order.discount.amount = cents(12'000);
    EXPECT_EQ(job.price().subtotal, Money{});
    job.order.discount.amount = Money::fromMicros(1'005'000); // half a cent goes up
    EXPECT_EQ(job.price().discount, cents(101));
    job.order.discount = {Rate::fromPercent(100), {}};
    EXPECT_EQ(job.price().subtotal, Money{});
    job.order.discount = {Rate{}, {}};
    EXPECT_EQ(job.price().subtotal, cents(12'000));
    job.order.discount = {{}, Money{}};
    EXPECT_EQ(job.price().subtotal, cents(12'000));
}

TEST(Charges, refuseADiscountBeyondTheOrder) {
    Job job;
    for (const auto& discount :
         {catalogue::Discount{{}, cents(10'001)}, catalogue::Discount{{}, cents(-1)},
          catalogue::Discount{Rate::fromPpm(1'000'001), {}}, catalogue::Discount{Rate::fromPpm(-1), {}}}) {
        job.order.discount = discount;
        const auto result = job.asked();
        ASSERT_FALSE(result.has_value());
        EXPECT_EQ(result.error().code, base::Code::OutOfRange);
    }
}

// The minimum order is reached exactly, missed by a cent, and in force on an order that is given away.
TEST(Charges, topUpToTheMinimum) {
    Job job;
    job.rules().minimumOrder = cents(10'000);
    EXPECT_EQ(job.price().minimumOrderCharge, Money{});
    job.rules().minimumOrder = cents(10'001);
    EXPECT_EQ(job.price().minimumOrderCharge, cents(1));
    EXPECT_EQ(job.price().subtotal, cents(10'001));
    job.order.discount.share = Rate::fromPercent(100);
    EXPECT_EQ(job.price().minimumOrderCharge, cents(10'001));
    job.rules().minimumOrder = Money::fromMicros(20'005'000); // to the cent, half up
    EXPECT_EQ(job.price().minimumOrderCharge, cents(2001));
}

// 1,000,000,000 is the most, for a line and for an order.
TEST(Charges, endAtAThousandMillion) {
    Job job(1);
    job.first().overrideEach = cents(100'000'000'000);
    EXPECT_EQ(job.price().total, pricing::kMaxMoney);
    job.first().overrideEach = cents(100'000'000'001);
    EXPECT_EQ(job.asked().error().code, base::Code::TooLarge);
    EXPECT_THAT(describe(job.asked().error()), testing::HasSubstr("Lantern"));
    job.first().overrideEach = cents(50'000'000'000);
    job.order.lines.push_back(job.first());
    EXPECT_EQ(job.price().subtotal, pricing::kMaxMoney);
    job.rules().minimumOrder = cents(100'000'000'001);
    EXPECT_EQ(job.asked().error().code, base::Code::TooLarge);
    EXPECT_THAT(describe(job.asked().error()), testing::HasSubstr("OrderTooLarge"));
}

TEST(Charges, namesTheLineItCannotCost) {
    Job job;
    job.order.lines.push_back(job.first());
    job.order.lines[1].title = "Anchor";
    job.order.lines[1].quantity = {};
    EXPECT_THAT(describe(job.asked().error()), testing::HasSubstr("Anchor"));
}

TEST(Charges, takeADayThatIsToday) {
    Job job;
    job.order.wantedBy = job.order.quotedOn;
    EXPECT_TRUE(job.asked().has_value());
    job.order.wantedBy = job.order.quotedOn.plusDays(-1);
    EXPECT_EQ(job.asked().error().code, base::Code::OutOfRange);
}

} // namespace
