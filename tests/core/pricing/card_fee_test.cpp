// SPDX-License-Identifier: MIT
//
// What a card takes of the price. Figures worked by hand; all prices are invented. The formula, (kept + fixed) ÷
// (1 − rate), is that of any payment processor's guide, here with the tax that is paid by card too: common practice, no
// source.
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using pricing::PriceCoverage;
using pricing::PricedOrder;
using sample::cents;
using units::Count;
using units::Money;
using units::Rate;

namespace {

/// One piece that costs 100.00, all paid out, without a mark-up; the card takes 2.9 % and 0.30 a payment.
struct FeeJob : pricing::PriceJob {
    explicit FeeJob(std::int64_t quantity = 1, std::int64_t each = 10'000)
        : PriceJob(quantity, each) {
        rules().cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    }

    base::Result<PricedOrder> askedBy(std::int64_t version) const {
        layout::FitMemo fits;
        return pricing::priceOrder(order, book, fits, version);
    }
    PricedOrder priceBy(std::int64_t version) const {
        const auto result = askedBy(version);
        EXPECT_TRUE(result.has_value());
        return result.value_or(PricedOrder{});
    }
};

// 10 micro-units over three lines are 4, 3 and 3.
TEST(CardFee, sharesItsFixedSumOut) {
    FeeJob job;
    job.order.lines.resize(3, job.first());
    job.rules().cardFee = {true, {}, Money::fromMicros(10)};
    EXPECT_EQ(pricing::cardFeeShare(job.order, 0, job.rules()), Money::fromMicros(4));
    EXPECT_EQ(pricing::cardFeeShare(job.order, 1, job.rules()), Money::fromMicros(3));
    EXPECT_EQ(pricing::cardFeeShare(job.order, 2, job.rules()), Money::fromMicros(3));
    job.rules().cardFee.fixed = Money::fromMicros(11);
    EXPECT_EQ(pricing::cardFeeShare(job.order, 1, job.rules()), Money::fromMicros(4));
    EXPECT_EQ(pricing::cardFeeShare(job.order, 2, job.rules()), Money::fromMicros(3));
    job.rules().cardFee.charged = false;
    EXPECT_EQ(pricing::cardFeeShare(job.order, 0, job.rules()), Money{});
}

// (100 + 0.30) ÷ (1 − 0.029 × 1.0725) = 100.30 ÷ 0.9688975 = 103.5198; the tax on 103.52 is 7.51, and of 111.03 the
// card takes 3.21987 + 0.30.
TEST(CardFee, isTakenOfTheTaxToo) {
    FeeJob job;
    job.rules().tax.rate = Rate::fromPpm(72'500);
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, cents(10'352));
    EXPECT_EQ(priced.total, cents(11'103));
    for (const auto& earned : {priced.earnings, priced.lines[0].earnings}) {
        EXPECT_EQ(earned.net, cents(10'352));
        EXPECT_EQ(earned.cost, cents(10'000));
        EXPECT_EQ(earned.cardFee, cents(352));
        EXPECT_EQ(earned.profit, Money{});
        EXPECT_EQ(earned.markUp, Rate{});
        EXPECT_EQ(earned.margin, Rate{});
        EXPECT_EQ(earned.coverage, PriceCoverage::Pays);
        EXPECT_EQ(earned.paidOut, cents(10'000));
        EXPECT_EQ(earned.floor, Money::fromMicros(103'519'722)); // 100.30 ÷ 0.9688975
    }
}

// With the tax inside 103.5198 × 1.0725 = 111.0249 is asked; 7.50 of 111.02 is tax, 3.51958 the card's. A line without
// tax asks 100.30 ÷ 0.971 = 103.2956 and leaves the card 3.2957.
TEST(CardFee, isInAPriceThatHoldsTheTax) {
    FeeJob job;
    job.rules().tax.rate = Rate::fromPpm(72'500);
    job.rules().tax.inclusive = true;
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, cents(11'102));
    EXPECT_EQ(priced.tax, cents(750));
    EXPECT_EQ(priced.earnings.net, cents(10'352));
    EXPECT_EQ(priced.earnings.cardFee, cents(352));
    EXPECT_EQ(priced.earnings.profit, Money{});
    job.first().taxable = false;
    EXPECT_EQ(job.price().lines[0].each, cents(10'330));
    EXPECT_EQ(job.price().earnings.cardFee, cents(330));
}

// 10 × 10.00 at a mark-up of 50 %, a fifth and 8.00 for the card: (150 + 8) ÷ 0.8 = 197.50, of which the card takes
// 39.50 + 8; 50.00 is left, half the cost, 25.3165 % of the price. The mark-up counted the fee before rules 3:
// 108 ÷ 0.8 × 1.5 = 202.50.
TEST(CardFee, isNotMarkedUp) {
    FeeJob job(10, 1'000);
    job.rules().cardFee = {true, Rate::fromPercent(20), cents(800)};
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, cents(1'975));
    EXPECT_EQ(priced.earnings.cardFee, cents(4'750));
    EXPECT_EQ(priced.earnings.profit, cents(5'000));
    EXPECT_EQ(priced.earnings.markUp, Rate::fromPercent(50));
    EXPECT_EQ(priced.earnings.margin, Rate::fromPpm(253'165));
    for (const std::int64_t rules : {1, 2}) {
        const auto before = job.priceBy(rules);
        EXPECT_EQ(before.lines[0].each, cents(2'025));
        EXPECT_EQ(before.earnings.cost, cents(13'500));
        EXPECT_EQ(before.earnings.cardFee, Money{});
        EXPECT_EQ(before.earnings.profit, cents(6'750));
        EXPECT_EQ(before.earnings.floor, cents(13'500));
    }
}

// An hour of art at 36.00 as a line of its own: 15.00 ÷ 0.8 = 18.75 each, 54.00 ÷ 0.8 = 67.50 for it.
TEST(CardFee, isTakenOfTheSetUpToo) {
    FeeJob job(10, 1'000);
    job.rules().cardFee = {true, Rate::fromPercent(20), {}};
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.rules().setUp = catalogue::SetUpCharge::OwnLine;
    job.book.shop.rates.labourPerHour = cents(3'600);
    job.book.bench.of(catalogue::Step::Art).perJob = units::Duration::fromMinutes(60);
    const auto line = job.price().lines[0];
    EXPECT_EQ(line.each, cents(1'875));
    EXPECT_EQ(line.setUp, cents(6'750));
    EXPECT_EQ(line.earnings.profit, cents(6'800)); // 255 − 51 − 136: half of 136
}

// Each of two lines carries half the 0.30: 100.15 ÷ 0.971 = 103.1411; of 206.28 the card takes 5.98212 + 0.30.
TEST(CardFee, hasOneFixedSumAnOrder) {
    FeeJob job;
    job.order.lines.push_back(job.line);
    const auto priced = job.price();
    for (const auto& line : priced.lines) {
        EXPECT_EQ(line.each, cents(10'314));
        EXPECT_EQ(line.earnings.cardFee, cents(314));
    }
    EXPECT_EQ(priced.earnings.cardFee, cents(628));
    EXPECT_EQ(priced.earnings.profit, Money{});
}

// A deposit is a payment of its own: 100.60 ÷ 0.971 = 103.6045; of 103.60 the card takes 3.0044 + 0.60. All of it
// beforehand is one payment: 103.2956.
TEST(CardFee, hasAFixedSumForEachPayment) {
    FeeJob job;
    job.rules().depositRate = Rate::fromPercent(50);
    EXPECT_EQ(job.price().lines[0].each, cents(10'360));
    EXPECT_EQ(job.price().earnings.cardFee, cents(360));
    job.rules().depositRate = Rate::fromPercent(100);
    EXPECT_EQ(job.price().lines[0].each, cents(10'330));
    EXPECT_EQ(job.price().earnings.cardFee, cents(330));
    // Before rules 3 one payment was reckoned with.
    job.rules().depositRate = Rate::fromPercent(50);
    EXPECT_EQ(job.priceBy(2).lines[0].each, cents(10'330));
}

// 103.00 typed: of 103.00 the card takes 2.987 + 0.30, and 99.71 does not pay the 100.00. 130.00 less 20 % is 104.00,
// of which it takes 3.316; less 25 % is 97.50, of which it takes 3.1275.
TEST(CardFee, isTakenOfATypedPriceAndAfterTheDiscount) {
    FeeJob job;
    job.first().overrideEach = cents(10'300);
    EXPECT_EQ(job.price().earnings.cardFee, cents(329));
    EXPECT_EQ(job.price().earnings.profit, cents(-29));
    EXPECT_EQ(job.price().earnings.coverage, PriceCoverage::BelowFloor);
    job.first().overrideEach = cents(13'000);
    job.order.discount.share = Rate::fromPercent(20);
    EXPECT_EQ(job.price().earnings.cardFee, cents(332));
    EXPECT_EQ(job.price().earnings.profit, cents(68));
    EXPECT_EQ(job.price().earnings.coverage, PriceCoverage::Pays);
    job.order.discount.share = Rate::fromPercent(25);
    EXPECT_EQ(job.price().earnings.cardFee, cents(313));
    EXPECT_EQ(job.price().earnings.coverage, PriceCoverage::BelowFloor);
}

// An hour at 20.00 besides the 100.00: the price must leave 120.00 to pay. 123.89 does: 3.59281 + 0.30 = 3.89 for the
// card. 123.88 leaves 119.99.
TEST(CardFee, countsForWhetherThePricePays) {
    FeeJob job;
    job.book.shop.rates.labourPerHour = cents(2'000);
    job.book.bench.of(catalogue::Step::Brush).perPiece = units::Duration::fromMinutes(60);
    job.first().overrideEach = cents(12'389);
    EXPECT_EQ(job.price().earnings.coverage, PriceCoverage::Pays);
    EXPECT_EQ(job.price().earnings.perBenchHour, cents(2'000));
    job.first().overrideEach = cents(12'388);
    EXPECT_EQ(job.price().earnings.coverage, PriceCoverage::BelowCost);
    EXPECT_EQ(job.price().earnings.perBenchHour, cents(1'999));
}

TEST(CardFee, isNothingOfNothing) {
    FeeJob job;
    job.order.discount.share = Rate::fromPercent(100);
    EXPECT_EQ(job.price().total, Money{});
    EXPECT_EQ(job.price().earnings.cardFee, Money{});
    job.rules().cardFee.charged = false;
    job.order.discount.share.reset();
    EXPECT_EQ(job.price().lines[0].each, cents(10'000));
    EXPECT_EQ(job.price().earnings.cardFee, Money{});
    EXPECT_EQ(job.price().earnings.floor, cents(10'000));
}

// Half of a price and of a tax as high again is all of the price.
TEST(CardFee, mustLeaveSomething) {
    FeeJob job;
    job.rules().tax.rate = Rate::fromPercent(100);
    job.rules().cardFee.rate = Rate::fromPpm(499'999);
    EXPECT_TRUE(job.asked());
    job.rules().cardFee.rate = Rate::fromPercent(50);
    ASSERT_FALSE(job.asked());
    EXPECT_EQ(job.asked().error().code, base::Code::OutOfRange);
    EXPECT_EQ(describe(job.asked().error().message()), "CardTakesAll");
    EXPECT_TRUE(job.askedBy(2));
    job.rules().cardFee.charged = false;
    EXPECT_TRUE(job.asked());
}

} // namespace
