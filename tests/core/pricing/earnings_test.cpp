// SPDX-License-Identifier: MIT
// What the owner earns with a line and an order, and whether it pays; worked by hand.
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using pricing::PriceCoverage;
using sample::cents;
using units::Count;
using units::Duration;
using units::Money;
using units::Rate;

namespace {

// 10 × 10.00 with an hour of art at 36.00, asked at 20.00: 200 less 136 leaves 64, which is 47.0588 % of the cost and
// 32 % of the price; with the own 36 it is 100 for the hour at the bench.
TEST(Earnings, sayWhatIsEarned) {
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
// 25 + 9 of spoilage are 188; asked at 21.50 it leaves 27, and with the own 36 + 18 + 9 it is 90 for 1 h 45 min.
TEST(Earnings, countTheHoursOfSpoiledPieces) {
    Job job;
    auto& rates = job.book.shop.rates;
    rates.labourPerHour = cents(3600);
    rates.spoilage = Rate::fromPercent(20);
    job.book.bench.of(catalogue::Step::Brush).perPiece = Duration::fromMinutes(6);
    job.book.bench.of(catalogue::Step::Pack).perPiece = Duration::fromMinutes(3);
    job.first().overrideEach = cents(2150);
    for (const auto& earnings : {job.line0().earnings, job.price().earnings}) {
        EXPECT_EQ(earnings.cost, cents(18'800));
        EXPECT_EQ(earnings.profit, cents(2'700));
        EXPECT_EQ(earnings.perBenchHour, Money::fromMicros(51'428'571)); // 90 ÷ 1.75
    }
}

TEST(Earnings, sayNothingOfWhatIsNot) {
    Job job(10, 0);
    const auto line = job.line0(); // no cost, no price, no time
    EXPECT_FALSE(line.earnings.markUp.has_value());
    EXPECT_FALSE(line.earnings.margin.has_value());
    EXPECT_FALSE(line.earnings.perBenchHour.has_value());
}

// Paid out are 10.00 a piece, the full cost is 13.60 with an hour of own work: at the edge it still pays.
TEST(Earnings, sayWhetherTheyCoverTheCost) {
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
TEST(Earnings, loseWhatTheDiscountTakes) {
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
TEST(Earnings, payByTheLineAndByTheOrder) {
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
TEST(Earnings, earnTheRushAndTheMinimum) {
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
TEST(Earnings, keepNoTaxOfWhatIsLeft) {
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

} // namespace
