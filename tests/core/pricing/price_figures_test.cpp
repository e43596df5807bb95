// SPDX-License-Identifier: MIT
//
// The steps from cost to price, each with the figure worked by hand beside it where no source is named, and the edges
// between which a rule changes. All prices are invented.
#include "core/pricing/ladder.h"
#include "core/pricing/mark_up.h"
#include "core/pricing/price_order.h"
#include "core/pricing/rounding.h"
#include "core/pricing/tax.h"
#include "core/units/apportion.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

using namespace sp;
using catalogue::RoundingKind;
using catalogue::SetUpCharge;
using catalogue::TaxRounding;
using pricing::PriceCoverage;
using pricing::PricedOrder;
using pricing::TaxStanding;
using sample::cents;
using sample::idOf;
using units::Count;
using units::Duration;
using units::Money;
using units::Rate;

namespace {

/// An order of hoodies that cost 10.00 each and nothing else.
struct Job : sample::PlainJob {
    catalogue::Order order;

    explicit Job(std::int64_t quantity = 10, std::int64_t each = 1000)
        : PlainJob(quantity, cents(each))
        , order(sample::orderOf({line})) {}

    catalogue::OrderLine& first() { return order.lines.front(); }
    catalogue::PriceRules& rules() { return book.shop.rules; }
    /// Art of one hour at `perHour`, once.
    void setUpCosts(std::int64_t perHour) {
        book.shop.rates.labourPerHour = cents(perHour);
        book.bench.of(catalogue::Step::Art).perJob = Duration::fromMinutes(60);
    }
    void sizesCost(std::int64_t extra, std::int64_t surcharge) {
        book.materials[idOf("Hoodie")].material.sizes = {{"M", {}, {}}, {"2XL", cents(extra), cents(surcharge)}};
    }
    base::Result<PricedOrder> asked() const {
        layout::FitMemo fits;
        return pricing::priceOrder(order, book, fits);
    }
    PricedOrder price() const {
        auto result = asked();
        EXPECT_TRUE(result.has_value()) << (result ? "" : describe(result.error()));
        return result.value_or(PricedOrder{});
    }
    pricing::PricedLine line0() const {
        const auto priced = price();
        return priced.lines.empty() ? pricing::PricedLine{} : priced.lines.front();
    }
};

// Cost 10.00: without a mark-up below the first step, 95 % from 5 to 23, 65 % from 24 on.
TEST(PriceFigures, climbTheLadder) {
    for (const auto& [pieces, each] : {std::pair{4, 1000}, {5, 1950}, {23, 1950}, {24, 1650}, {25, 1650}}) {
        Job job(pieces);
        job.rules().ladder = {{Count::of(5), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
        EXPECT_EQ(job.line0().each, cents(each)) << pieces;
        EXPECT_EQ(job.line0().goods, cents(each * pieces)) << pieces;
    }
}

// 10 × 10.00 and an hour of art at 36.00, at 50 %: as a line of its own 15.00 each and 54.00; spread
// (100 + 36) × 1.5 / 10 = 20.40 each.
TEST(PriceFigures, chargeTheSetUpAloneOrSpread) {
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
TEST(PriceFigures, ofATypedPrice) {
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
TEST(PriceFigures, ofSizes) {
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
    EXPECT_EQ(line.sizes[0], (pricing::SizeCharge{"2XL", Count::of(4), cents(275), cents(1100)}));
    EXPECT_EQ(line.charged, cents(15'000 + 1100));
    EXPECT_EQ(line.cost.total, cents(10'800)) << "the larger blanks still cost what they cost";
    EXPECT_EQ(line.earnings.profit, cents(16'100 - 10'800));
    job.sizesCost(0, 275); // costs no more and is charged for all the same
    EXPECT_EQ(job.line0().charged, cents(15'000 + 1100));
    job.first().sizes = {{"2XL", Count::of(0)}};
    EXPECT_TRUE(job.line0().sizes.empty());
}

// The sizes of a blank are not asked for on the customer's own garment, nor is the blank.
TEST(PriceFigures, ofACustomersGarmentHaveNoBlank) {
    Job job;
    job.first().customersGarment = true;
    EXPECT_EQ(job.line0().charged, Money{});
    EXPECT_EQ(job.line0().cost.total, Money{});
}

// 100.00 of goods, 60 % within 2 days, 20 % within 7: on the day itself, at both edges and one day past them.
TEST(PriceFigures, chargeRushByTheDays) {
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
TEST(PriceFigures, chargeRushOnAllThatIsCharged) {
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
TEST(PriceFigures, takeTheDiscountOff) {
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

TEST(PriceFigures, refuseADiscountBeyondTheOrder) {
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
TEST(PriceFigures, topUpToTheMinimum) {
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

// Two lines of 100.00 and 200.00, the first free of tax, 10 % off: 180 of the 270 are taxed, at 7.5 % 13.50.
TEST(PriceFigures, taxWhatIsTaxable) {
    Job job;
    job.order.lines.push_back(job.first());
    job.order.lines[1].quantity = Count::of(20);
    job.first().taxable = false;
    job.rules().tax.rate = Rate::fromPpm(75'000);
    job.order.discount.share = Rate::fromPercent(10);
    const auto priced = job.price();
    EXPECT_EQ(priced.subtotal, cents(27'000));
    EXPECT_EQ(priced.tax, cents(1350));
    EXPECT_EQ(priced.total, cents(28'350));
    EXPECT_FALSE(priced.taxIncluded);
    EXPECT_EQ(priced.earnings.net, cents(27'000));
    EXPECT_EQ(priced.earnings.cost, cents(30'000));
    EXPECT_EQ(priced.earnings.profit, cents(-3'000));
}

// What comes on top is taxed by the share of the lines: a top-up of 30.00 on 100.00 untaxed and 200.00 taxed puts 20.00
// on the taxed one: 220.00 at 10 %. Rush of 30 % the same: 200 + 60 at 10 %.
TEST(PriceFigures, taxTheTopUpAndTheRushByTheLines) {
    Job job;
    job.order.lines.push_back(job.first());
    job.order.lines[1].quantity = Count::of(20);
    job.first().taxable = false;
    job.rules().tax.rate = Rate::fromPercent(10);
    job.rules().minimumOrder = cents(33'000);
    EXPECT_EQ(job.price().tax, cents(2200));
    job.rules().rush = {{7, Rate::fromPercent(30)}};
    job.order.wantedBy = job.order.quotedOn;
    EXPECT_EQ(job.price().minimumOrderCharge, Money{});
    EXPECT_EQ(job.price().tax, cents(2600));
}

// Three lines of 1.25 at 6 %: 0.08 each or 0.225 together (computed; the seller may choose: R.I. Gen. Laws
// 44-18.1-25).
TEST(PriceFigures, taxPerLineOrPerInvoice) {
    Job job(1, 125);
    job.order.lines.resize(3, job.first());
    job.rules().tax.rate = Rate::fromPercent(6);
    EXPECT_EQ(job.price().tax, cents(23));
    job.rules().tax.rounding = TaxRounding::PerLine;
    EXPECT_EQ(job.price().tax, cents(24));
}

// Prices that hold the tax: 10.00 at 50 % and 20 % tax is asked as 18.00; of 180.00 a sixth is tax, 30.00 (computed:
// 0.20 / 1.20).
TEST(PriceFigures, holdTheTaxWhereTheShopAsksSo) {
    Job job;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, cents(1800));
    EXPECT_EQ(priced.tax, cents(3000));
    EXPECT_EQ(priced.subtotal, cents(18'000));
    EXPECT_EQ(priced.total, cents(18'000));
    EXPECT_TRUE(priced.taxIncluded);
    EXPECT_EQ(priced.earnings.net, cents(15'000));
    EXPECT_EQ(priced.lines[0].earnings.net, cents(15'000));
    EXPECT_EQ(priced.lines[0].earnings.profit, cents(5000));
    job.first().taxable = false; // the line holds none
    EXPECT_EQ(job.line0().each, cents(1500));
    EXPECT_EQ(job.line0().earnings.net, cents(15'000));
    EXPECT_EQ(job.price().tax, Money{});
    EXPECT_EQ(job.price().total, cents(15'000));
}

// The set-up of its own line holds it too: 36.00 at 50 % and 20 % tax.
TEST(PriceFigures, holdTheTaxInTheSetUpToo) {
    Job job;
    job.setUpCosts(3600);
    job.rules().setUp = SetUpCharge::OwnLine;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    EXPECT_EQ(job.line0().setUp, cents(6480));
}

/// A customer whose certificate was issued and expires on these days.
void give(Job& job, const char* issued, const char* expires) {
    job.book.customer = catalogue::Customer{};
    job.book.customer->certificate = catalogue::Certificate{"1", "Westmark", sample::day(issued), {}};
    if (expires != nullptr) job.book.customer->certificate->expiresOn = sample::day(expires);
    job.order.asksExemption = true;
}

// Quoted on 25 November 2026; in force from the day it was issued to the day it expires, both included.
TEST(PriceFigures, exemptOnTheDaysOfTheCertificate) {
    struct Row {
        const char* issued;
        const char* expires;
        bool holds;
    };
    for (const Row& row :
         {Row{"2026-11-25", nullptr, true}, Row{"2026-11-26", nullptr, false}, Row{"2026-01-01", "2026-11-25", true},
          Row{"2026-01-01", "2026-11-24", false}, Row{"2026-11-25", "2026-11-25", true}}) {
        Job job;
        job.rules().tax.rate = Rate::fromPercent(10);
        give(job, row.issued, row.expires);
        EXPECT_EQ(job.price().taxStanding, row.holds ? TaxStanding::Exempt : TaxStanding::ExemptionMissing);
        EXPECT_EQ(job.price().tax, row.holds ? Money{} : cents(1000)) << row.issued;
        job.order.asksExemption = false; // not asked for, not granted
        EXPECT_EQ(job.price().taxStanding, TaxStanding::Charged);
        EXPECT_EQ(job.price().tax, cents(1000));
    }
    Job none;
    none.order.asksExemption = true;
    EXPECT_EQ(none.price().taxStanding, TaxStanding::ExemptionMissing);
    none.book.customer = catalogue::Customer{};
    EXPECT_EQ(none.price().taxStanding, TaxStanding::ExemptionMissing);
}

// Where prices hold the tax an exempt customer is asked 10.00 × 1.5 without it.
TEST(PriceFigures, ofAnExemptCustomerHoldNoTax) {
    Job job;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    give(job, "2026-01-01", nullptr);
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, cents(1500));
    EXPECT_EQ(priced.total, cents(15'000));
    EXPECT_FALSE(priced.taxIncluded);
    EXPECT_EQ(priced.tax, Money{});
    EXPECT_EQ(priced.earnings.net, cents(15'000));
    EXPECT_EQ(priced.lines[0].earnings.net, cents(15'000));
}

// Half of 107.25 is 53.625: up to the next 5.00 is 55.00, to the cent 53.63, and the balance is the rest.
TEST(PriceFigures, roundTheDepositUpToItsStep) {
    Job job;
    job.rules().tax.rate = Rate::fromPpm(72'500);
    job.rules().depositRate = Rate::fromPercent(50);
    job.rules().depositStep = cents(500);
    EXPECT_EQ(job.price().total, cents(10'725));
    EXPECT_EQ(job.price().deposit, cents(5500));
    EXPECT_EQ(job.price().balance, cents(5225));
    job.rules().depositStep = {};
    EXPECT_EQ(job.price().deposit, cents(5363));
    job.rules().depositRate = Rate::fromPercent(100);
    job.rules().depositStep = cents(1000); // never more than there is to pay
    EXPECT_EQ(job.price().deposit, cents(10'725));
    EXPECT_EQ(job.price().balance, Money{});
}

// 10 × 10.00 with an hour of art at 36.00, asked at 20.00: 200 less 136 leaves 64, which is 47.0588 % of the cost and
// 32 % of the price; with the own 36 it is 100 for the hour at the bench.
TEST(PriceFigures, sayWhatIsEarned) {
    Job job;
    job.setUpCosts(3600);
    job.first().overrideEach = cents(2000);
    for (const auto& earnings : {job.line0().earnings, job.price().earnings}) {
        EXPECT_EQ(earnings.net, cents(20'000));
        EXPECT_EQ(earnings.cost, cents(13'600));
        EXPECT_EQ(earnings.profit, cents(6'400));
        EXPECT_EQ(earnings.markUp, Rate::fromPpm(470'588));
        EXPECT_EQ(earnings.margin, Rate::fromPpm(320'000));
        EXPECT_EQ(earnings.perBenchHour, cents(10'000));
    }
    // A second line the same: costs, labour and hours add up; 10 % off leaves 360 for 272.
    job.order.lines.push_back(job.first());
    job.order.discount.share = Rate::fromPercent(10);
    const auto both = job.price().earnings;
    EXPECT_EQ(both.net, cents(36'000));
    EXPECT_EQ(both.cost, cents(27'200));
    EXPECT_EQ(both.profit, cents(8'800));
    EXPECT_EQ(both.perBenchHour, cents(8'000)); // (88 + 72) / 2
}

// Of 10 pieces at 20 % spoiled two and a half are made besides: an hour of brushing at 36.00 for the good ones is a
// quarter of an hour and 9.00 more for those. The half hour of packing is not spent on them. Cost 100 + 36 + 18 and
// 25 + 13.50 of spoilage are 192.50; asked at 21.50 it leaves 22.50, and with the own 36 + 18 + 9 it is 85.50 for
// 1 h 45 min.
TEST(PriceFigures, countTheHoursOfSpoiledPieces) {
    Job job;
    auto& rates = job.book.shop.rates;
    rates.labourPerHour = cents(3600);
    rates.spoilage = Rate::fromPercent(20);
    job.book.bench.of(catalogue::Step::Brush).perPiece = Duration::fromMinutes(6);
    job.book.bench.of(catalogue::Step::Pack).perPiece = Duration::fromMinutes(3);
    job.first().overrideEach = cents(2150);
    for (const auto& earnings : {job.line0().earnings, job.price().earnings}) {
        EXPECT_EQ(earnings.cost, cents(19'250));
        EXPECT_EQ(earnings.profit, cents(2'250));
        EXPECT_EQ(earnings.perBenchHour, Money::fromMicros(48'857'143)); // 85.50 ÷ 1.75
    }
}

TEST(PriceFigures, sayNothingOfWhatIsNot) {
    Job job(10, 0);
    const auto line = job.line0(); // no cost, no price, no time
    EXPECT_FALSE(line.earnings.markUp.has_value());
    EXPECT_FALSE(line.earnings.margin.has_value());
    EXPECT_FALSE(line.earnings.perBenchHour.has_value());
}

// Paid out are 10.00 a piece, the full cost is 13.60 with an hour of own work: at the edge it still pays.
TEST(PriceFigures, sayWhetherTheyCoverTheCost) {
    Job job;
    job.setUpCosts(3600);
    for (const auto& [each, coverage] : {std::pair{1361, PriceCoverage::Pays},
                                         {1360, PriceCoverage::Pays},
                                         {1359, PriceCoverage::BelowCost},
                                         {1000, PriceCoverage::BelowCost},
                                         {999, PriceCoverage::BelowFloor},
                                         {0, PriceCoverage::BelowFloor}}) {
        job.first().overrideEach = cents(each);
        EXPECT_EQ(job.line0().earnings.coverage, coverage) << each;
    }
    // With the tax inside, 20 % of 16.32 leaves 13.60.
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    for (const auto& [each, coverage] : {std::pair{1632, PriceCoverage::Pays},
                                         {1631, PriceCoverage::BelowCost},
                                         {1200, PriceCoverage::BelowCost},
                                         {1199, PriceCoverage::BelowFloor}}) {
        job.first().overrideEach = cents(each);
        EXPECT_EQ(job.line0().earnings.coverage, coverage) << each;
    }
}

// Two lines that cost 100.00 and 200.00 at 50 %, 150.00 and 300.00, with half off: of 225.00 the lines keep 75.00 and
// 150.00, which is 25 % less than they cost and does not cover what is paid out.
TEST(PriceFigures, loseWhatTheDiscountTakes) {
    Job job;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.order.lines.push_back(job.first());
    job.order.lines[1].quantity = Count::of(20);
    EXPECT_EQ(job.line0().earnings.profit, cents(5000));
    job.order.discount.share = Rate::fromPercent(50);
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].charged, cents(15'000)) << "what is asked before the discount stays";
    EXPECT_EQ(priced.lines[0].adjusted, cents(-7500));
    EXPECT_EQ(priced.lines[0].earnings.net, cents(7500));
    EXPECT_EQ(priced.lines[0].earnings.profit, cents(-2500));
    EXPECT_EQ(priced.lines[0].earnings.markUp, Rate::fromPercent(-25));
    EXPECT_EQ(priced.lines[0].earnings.margin, Rate::fromPpm(-333'333));
    EXPECT_EQ(priced.lines[1].earnings.net, cents(15'000));
    for (const auto& earnings : {priced.lines[0].earnings, priced.lines[1].earnings, priced.earnings})
        EXPECT_EQ(earnings.coverage, PriceCoverage::BelowFloor);
}

// A line that pays and one that does not make an order that does or does not: 10.00 each is paid out for 10 and for
// 1, and asked is 11.00 for each of the 10 and 5.00, then 2.00 and at last nothing for the one: 115, 112 and 110 stand
// against 110 for 11 pieces; at 10.99 it is below.
TEST(PriceFigures, payByTheLineAndByTheOrder) {
    Job job;
    job.order.lines.push_back(job.first());
    job.order.lines[1].quantity = Count::of(1);
    for (const auto& [each, one, coverage] : {std::tuple{1100, 500, PriceCoverage::Pays},
                                              {1100, 200, PriceCoverage::Pays},
                                              {1100, 0, PriceCoverage::Pays},
                                              {1099, 0, PriceCoverage::BelowFloor}}) {
        job.first().overrideEach = cents(each);
        job.order.lines[1].overrideEach = cents(one);
        EXPECT_EQ(job.price().lines[0].earnings.coverage, PriceCoverage::Pays);
        EXPECT_EQ(job.price().lines[1].earnings.coverage, PriceCoverage::BelowFloor);
        EXPECT_EQ(job.price().earnings.coverage, coverage) << each << ", " << one;
    }
}

// Rush and minimum are earned too. 10 × 10.00 at cost, wanted the same day for 30 % more: 130.00, 30 % on the cost. A
// smallest order of 150.00 adds the 20.00 that are left.
TEST(PriceFigures, earnTheRushAndTheMinimum) {
    Job job;
    job.rules().rush = {{7, Rate::fromPercent(30)}};
    job.order.wantedBy = job.order.quotedOn;
    EXPECT_EQ(job.line0().earnings.markUp, Rate::fromPercent(30));
    job.rules().minimumOrder = cents(15'000);
    EXPECT_EQ(job.line0().adjusted, cents(5000));
    EXPECT_EQ(job.line0().earnings.profit, cents(5000));
    EXPECT_EQ(job.line0().earnings, job.price().earnings);
}

// With the tax inside, 20 % of 180.00 less a third off is 120.00, of which 20.00 is tax. Beside it an untaxed line of
// 150.00 keeps all of its 100.00.
TEST(PriceFigures, keepNoTaxOfWhatIsLeft) {
    Job job;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.rules().tax.rate = Rate::fromPercent(20);
    job.rules().tax.inclusive = true;
    job.order.lines.push_back(job.first());
    job.order.lines[1].taxable = false;
    job.order.discount.amount = cents(11'000); // of 330.00
    const auto priced = job.price();
    EXPECT_EQ(priced.tax, cents(2000));
    EXPECT_EQ(priced.lines[0].earnings.net, cents(10'000));
    EXPECT_EQ(priced.lines[0].earnings.coverage, PriceCoverage::Pays);
    EXPECT_EQ(priced.lines[1].earnings.net, cents(10'000));
    EXPECT_EQ(priced.earnings.net, cents(20'000));
}

std::optional<pricing::MoreForLess> offerFor(const Job& job) {
    layout::FitMemo fits;
    return pricing::moreForLess(job.order, job.price(), 0, job.book, fits);
}

// Cost 10.00; 95 % below 24, 65 % from 24, 60 % from 48, 30 % from 96. 24 × 16.50 is 396.00: as much as 20.3 at 19.50,
// so 21 is the first that comes to more, 409.50. 96 × 13.00 is 1,248.00, 78 × 16.00 the same; 79 come to 1,264.00.
TEST(PriceFigures, offerMoreWhereItCostsLess) {
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
TEST(PriceFigures, offerThePiecesThatCostTheLeast) {
    Job job(20);
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(100)},
                          {Count::of(24), Rate::fromPercent(60)},
                          {Count::of(30), Rate::fromPercent(28)},
                          {Count::of(40), Rate{}}};
    EXPECT_EQ(offerFor(job)->quantity, Count::of(30));
}

// What is asked does not go by the ladder: a typed price; up to the smallest order more pieces cost no less, nor do
// they where nothing is paid. Surcharges and set-up are counted: 2 of the 23 are 2XL at 2.75 more, and art is an hour
// at 36.00, asked at 95 and at 65 %: 23 × 19.50 + 5.50 + 70.20 = 524.20, 24 × 16.50 + 5.50 + 59.40 = 460.90.
TEST(PriceFigures, offerNothingWhereTheOrderCostsNoLess) {
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

// 10 micro-units over three lines are 4, 3 and 3.
TEST(PriceFigures, shareTheFixedCardFeeOut) {
    Job job;
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

// To keep 100.00 at 2.9 % and 0.30: 103.295572 (computed), and in the cost sheet of each of two lines half the 0.30.
TEST(PriceFigures, chargeTheCardFeeOnce) {
    Job job(1, 10'000);
    job.rules().cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    EXPECT_EQ(job.line0().cost.total.micros(), 103'295'572);
    EXPECT_EQ(job.line0().each, cents(10'330));
    job.order.lines.push_back(job.first());
    EXPECT_EQ(job.price().lines[1].cost.total.micros(), 103'141'092); // (100 + 0.15) ÷ 0.971
    layout::FitMemo fits;
    const auto sheet = pricing::costSheetOf(job.order, 1, job.book, fits);
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(sheet->total.micros(), 103'141'092);
}

struct RuleRow {
    const char* name;
    std::function<void(catalogue::PriceRules&)> set;
    bool isTaken;
    const char* says;
};

void PrintTo(const RuleRow& row, std::ostream* out) { *out << row.name; }

class PriceRuleRange : public testing::TestWithParam<RuleRow> {};

TEST_P(PriceRuleRange, isKept) {
    Job job;
    GetParam().set(job.rules());
    const auto result = job.asked();
    EXPECT_EQ(result.has_value(), GetParam().isTaken);
    if (result) return;
    EXPECT_EQ(result.error().code, base::Code::OutOfRange);
    EXPECT_EQ(describe(result.error().message()), GetParam().says);
}

using Rules = catalogue::PriceRules;

void markUpBy(Rules& rules, std::int64_t ppm) {
    rules.ladder = {{Count::of(1), Rate{}}, {Count::of(24), Rate::fromPpm(ppm)}};
}

INSTANTIATE_TEST_SUITE_P(
    Edges, PriceRuleRange,
    testing::Values(
        RuleRow{"no tax", [](Rules& r) { r.tax.rate = {}; }, true, ""},
        RuleRow{"all of it", [](Rules& r) { r.tax.rate = Rate::fromPercent(100); }, true, ""},
        RuleRow{"more tax than all", [](Rules& r) { r.tax.rate = Rate::fromPpm(1'000'001); }, false, "TaxOutOfRange"},
        RuleRow{"less tax than none", [](Rules& r) { r.tax.rate = Rate::fromPpm(-1); }, false, "TaxOutOfRange"},
        RuleRow{"a deposit of all", [](Rules& r) { r.depositRate = Rate::fromPercent(100); }, true, ""},
        RuleRow{"a deposit of more", [](Rules& r) { r.depositRate = Rate::fromPpm(1'000'001); }, false,
                "DepositOutOfRange"},
        RuleRow{"a deposit below nothing", [](Rules& r) { r.depositRate = Rate::fromPpm(-1); }, false,
                "DepositOutOfRange"},
        RuleRow{"a mark-up below nothing", [](Rules& r) { markUpBy(r, -1'000'001); }, false, "MarkUpOutOfRange(24)"},
        RuleRow{"a mark-up down to nothing", [](Rules& r) { markUpBy(r, -1'000'000); }, true, ""},
        RuleRow{"a mark-up of 10,000 %", [](Rules& r) { markUpBy(r, 100'000'000); }, true, ""},
        RuleRow{"a mark-up beyond 10,000 %", [](Rules& r) { markUpBy(r, 100'000'001); }, false, "MarkUpOutOfRange(24)"},
        RuleRow{"ending 0",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, 0};
                },
                true, ""},
        RuleRow{"ending 99",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, 99};
                },
                true, ""},
        RuleRow{"ending 100",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, 100};
                },
                false, "PriceEndingOutOfRange"},
        RuleRow{"ending below 0",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, -1};
                },
                false, "PriceEndingOutOfRange"},
        RuleRow{"an ending that is not used",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Up, 1, 100};
                },
                true, ""}));

// 1,000,000,000 is the most, for a line and for an order.
TEST(PriceFigures, endAtAThousandMillion) {
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

TEST(PriceFigures, namesTheLineItCannotCost) {
    Job job;
    job.order.lines.push_back(job.first());
    job.order.lines[1].title = "Anchor";
    job.order.lines[1].quantity = {};
    EXPECT_THAT(describe(job.asked().error()), testing::HasSubstr("Anchor"));
}

TEST(PriceFigures, takeADayThatIsToday) {
    Job job;
    job.order.wantedBy = job.order.quotedOn;
    EXPECT_TRUE(job.asked().has_value());
    job.order.wantedBy = job.order.quotedOn.plusDays(-1);
    EXPECT_EQ(job.asked().error().code, base::Code::OutOfRange);
}

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

struct RoundRow {
    const char* name;
    catalogue::Rounding rule;
    std::int64_t micros;
    std::int64_t rounded; ///< cents
};

void PrintTo(const RoundRow& row, std::ostream* out) { *out << row.name; }

class RoundEdge : public testing::TestWithParam<RoundRow> {};

TEST_P(RoundEdge, isTheOneWorkedByHand) {
    const auto& row = GetParam();
    EXPECT_EQ(pricing::roundPrice(units::Fraction::of(row.micros), row.rule, {}), cents(row.rounded));
}

// Halves go away from zero: 2.5 to 3, -4.5 to -5, 7.5 to 8, -1.1 to -1 (docs.cangjie-lang.cn, table of RoundingMode).
INSTANTIATE_TEST_SUITE_P(
    Edges, RoundEdge,
    testing::Values(RoundRow{"2.5", {RoundingKind::Nearest, 1, 0}, 25'000, 3},
                    RoundRow{"-4.5", {RoundingKind::Nearest, 1, 0}, -45'000, -5},
                    RoundRow{"7.5", {RoundingKind::Nearest, 1, 0}, 75'000, 8},
                    RoundRow{"-1.1", {RoundingKind::Nearest, 1, 0}, -11'000, -1},
                    RoundRow{"-1.4 to the five", {RoundingKind::Nearest, 5, 0}, -14'000, 0},
                    RoundRow{"-2.5 to the five", {RoundingKind::Nearest, 5, 0}, -25'000, -5},
                    RoundRow{"12.5 to the quarter", {RoundingKind::Nearest, 25, 0}, 125'000, 25},
                    RoundRow{"just below", {RoundingKind::Nearest, 25, 0}, 124'999, 0},
                    RoundRow{"a step of none is the cent", {RoundingKind::Nearest, 0, 0}, 15'000, 2},
                    RoundRow{"… upwards too", {RoundingKind::Up, 0, 0}, 10'001, 2},
                    RoundRow{"-1.1 up", {RoundingKind::Up, 1, 0}, -11'000, -1},
                    RoundRow{"-26 up to the quarter", {RoundingKind::Up, 25, 0}, -260'000, -25},
                    RoundRow{"nothing up", {RoundingKind::Up, 25, 0}, 0, 0},
                    RoundRow{"ending .95 from 95", {RoundingKind::Ending, 1, 95}, 950'000, 95},
                    RoundRow{"ending .95 from 96", {RoundingKind::Ending, 1, 95}, 960'000, 195},
                    RoundRow{"ending .95 from 1", {RoundingKind::Ending, 1, 95}, 10'000, 95},
                    RoundRow{"ending .00 from 1.00", {RoundingKind::Ending, 1, 0}, 1'000'000, 100},
                    RoundRow{"ending .00 from just above", {RoundingKind::Ending, 1, 0}, 1'000'001, 200},
                    RoundRow{"ending .00 from nothing", {RoundingKind::Ending, 1, 0}, 0, 0},
                    RoundRow{"ending .95 from below nothing", {RoundingKind::Ending, 1, 95}, -3'000'000, 95}));

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
        EXPECT_EQ(units::toMinor(units::Fraction::of(micros), {}), cents(expected)) << micros;
}

TEST(UpToStep, staysAtAMultipleAndClimbsFromAnyMore) {
    EXPECT_EQ(pricing::upToStep(cents(500), cents(500), {}), cents(500));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(5'000'001), cents(500), {}), cents(1000));
    EXPECT_EQ(pricing::upToStep(Money{}, cents(500), {}), Money{});
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(10'001), Money{}, {}), cents(2));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(10'001), cents(-5), {}), cents(2));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(3), Money::fromMicros(2), {}), Money::fromMicros(4));
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

} // namespace
