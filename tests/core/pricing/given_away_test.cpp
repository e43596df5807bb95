// SPDX-License-Identifier: MIT
//
// Work that is given away: done again, a sample, a gift. Figures by hand, working beside them; the rule is common
// practice, no source, and the tax on it is the shop's to set.
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using pricing::PriceCoverage;
using sample::cents;
using units::Count;
using units::Money;
using units::Rate;

namespace {

/// 10 hoodies and 20 more, 10.00 each in cost, half as much again in price: 150.00 and 300.00.
Job twoLines() {
    Job job;
    job.rules().ladder = {{Count::of(1), Rate::fromPercent(50)}};
    job.order.lines.push_back(job.first());
    job.order.lines[1].quantity = Count::of(20);
    return job;
}

// The first line is free: 300.00 are asked, 100.00 + 200.00 spent, nothing left.
TEST(GivenAway, hasNoPriceAndItsCostCounts) {
    auto job = twoLines();
    job.first().atNoCharge = true;
    job.first().overrideEach = cents(2000); // stays typed, and has no effect
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, Money{});
    EXPECT_EQ(priced.lines[0].charged, Money{});
    EXPECT_EQ(priced.lines[0].earnings.net, Money{});
    EXPECT_EQ(priced.lines[0].earnings.cost, cents(10'000));
    EXPECT_EQ(priced.lines[0].earnings.profit, cents(-10'000));
    EXPECT_EQ(priced.lines[0].earnings.coverage, PriceCoverage::BelowFloor);
    EXPECT_EQ(priced.total, cents(30'000));
    EXPECT_EQ(priced.earnings.cost, cents(30'000));
    EXPECT_EQ(priced.earnings.profit, Money{});
    EXPECT_EQ(priced.earnings.coverage, PriceCoverage::Pays);
}

TEST(GivenAway, hasNeitherSurchargesNorSetUpNorRush) {
    auto job = twoLines();
    job.sizesCost(100, 275);
    job.first().sizes = {{"2XL", Count::of(3)}};
    job.setUpCosts(3600);
    job.rules().setUp = catalogue::SetUpCharge::OwnLine;
    job.rules().rush = {{7, Rate::fromPercent(50)}};
    job.order.wantedBy = job.order.quotedOn;
    job.order.atNoCharge = true;
    const auto priced = job.price();
    EXPECT_TRUE(priced.lines[0].sizes.empty());
    EXPECT_EQ(priced.lines[0].setUp, Money{});
    EXPECT_EQ(priced.rush, Money{});
    EXPECT_EQ(priced.total, Money{});
    EXPECT_GT(priced.earnings.cost, cents(30'000));
}

// The smallest order, 400.00, tops up what is paid for: 100.00 on 300.00. Where nothing is, nothing is asked, whatever
// the discount says.
TEST(GivenAway, isNoOrderOfTheSmallestSize) {
    auto job = twoLines();
    job.rules().minimumOrder = cents(40'000);
    job.first().atNoCharge = true;
    EXPECT_EQ(job.price().minimumOrderCharge, cents(10'000));
    EXPECT_EQ(job.price().lines[0].adjusted, Money{}) << "it is not topped up itself";
    job.order.discount.amount = cents(2000);
    job.order.atNoCharge = true;
    EXPECT_EQ(job.price().minimumOrderCharge, Money{});
    EXPECT_EQ(job.price().discount, Money{});
    EXPECT_EQ(job.price().total, Money{});
    EXPECT_EQ(job.price().deposit, Money{});
}

// 10 % of 300.00 are asked. Where the shop owes it, 4 % of the 100.00 that the free line costs are its own.
TEST(GivenAway, isTaxedAsTheShopSets) {
    auto job = twoLines();
    job.first().atNoCharge = true;
    job.first().taxRate = "Reduced";
    job.rules().tax = {
        "Tax", Rate::fromPercent(10), false, catalogue::TaxRounding::PerInvoice, {{"Reduced", Rate::fromPercent(4)}}};
    EXPECT_EQ(job.price().tax, cents(3000));
    EXPECT_EQ(job.price().taxes.size(), 1U) << "nothing of the free line is taxed";
    EXPECT_EQ(job.price().earnings.ownTax, Money{});
    job.rules().tax.onGifts = catalogue::TaxOnGifts::OnCost;
    const auto priced = job.price();
    EXPECT_EQ(priced.tax, cents(3000));
    EXPECT_EQ(priced.lines[0].earnings.ownTax, cents(400));
    EXPECT_EQ(priced.lines[0].earnings.cost, cents(10'400));
    EXPECT_EQ(priced.earnings.ownTax, cents(400));
    EXPECT_EQ(priced.earnings.paidOut, cents(30'400));
    EXPECT_EQ(priced.earnings.profit, cents(-400));
    job.first().taxable = false;
    EXPECT_EQ(job.price().earnings.ownTax, Money{});
}

} // namespace
