// SPDX-License-Identifier: MIT
// The tax of an order: on what, of whom, on top or inside, each with the figure worked by hand where no source is
// named.
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using catalogue::SetUpCharge;
using catalogue::TaxRounding;
using pricing::TaxStanding;
using sample::cents;
using units::Count;
using units::Money;
using units::Rate;

namespace {

// Two lines of 100.00 and 200.00, the first free of tax, 10 % off: 180 of the 270 are taxed, at 7.5 % 13.50.
TEST(TaxedPrices, taxWhatIsTaxable) {
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
TEST(TaxedPrices, taxTheTopUpAndTheRushByTheLines) {
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
TEST(TaxedPrices, taxPerLineOrPerInvoice) {
    Job job(1, 125);
    job.order.lines.resize(3, job.first());
    job.rules().tax.rate = Rate::fromPercent(6);
    EXPECT_EQ(job.price().tax, cents(23));
    job.rules().tax.rounding = TaxRounding::PerLine;
    EXPECT_EQ(job.price().tax, cents(24));
}

// Prices that hold the tax: 10.00 at 50 % and 20 % tax is asked as 18.00; of 180.00 a sixth is tax, 30.00 (computed:
// 0.20 / 1.20).
TEST(TaxedPrices, holdTheTaxWhereTheShopAsksSo) {
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
TEST(TaxedPrices, holdTheTaxInTheSetUpToo) {
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
TEST(TaxedPrices, exemptOnTheDaysOfTheCertificate) {
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
TEST(TaxedPrices, ofAnExemptCustomerHoldNoTax) {
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

/// Two lines of 100.00 and 200.00 at 10 %, and 4 % for the second.
Job atTwoRates() {
    Job job;
    job.order.lines.push_back(job.first());
    job.order.lines[1].quantity = Count::of(20);
    job.order.lines[1].taxRate = "Reduced";
    job.rules().tax = {"Tax",
                       Rate::fromPercent(10),
                       false,
                       TaxRounding::PerInvoice,
                       {{"Nothing", {}}, {"Reduced", Rate::fromPercent(4)}}};
    return job;
}

// 100.00 at 10 % are 10.00, 200.00 at 4 % 8.00. After a discount of 30.00, shared 10.00 and 20.00: 9.00 and 7.20.
TEST(TaxRates, areThoseTheLinesName) {
    auto job = atTwoRates();
    EXPECT_EQ(job.price().taxes,
              (std::vector<pricing::TaxAmount>{{"Tax", Rate::fromPercent(10), cents(10'000), cents(1000)},
                                               {"Reduced", Rate::fromPercent(4), cents(20'000), cents(800)}}));
    EXPECT_EQ(job.price().tax, cents(1800));
    EXPECT_EQ(job.price().total, cents(31'800));
    job.order.discount.amount = cents(3000);
    EXPECT_EQ(job.price().taxes[0].tax, cents(900));
    EXPECT_EQ(job.price().taxes[1].tax, cents(720));
    job.first().taxRate = "Tax"; // the usual one by its name
    EXPECT_EQ(job.price().tax, cents(1620));
    job.first().taxRate = "Nothing";
    EXPECT_EQ(job.price().tax, cents(720));
    EXPECT_EQ(job.price().taxes[0].name, "Nothing") << "in the order of the shop's rates";
    job.first().taxable = false;
    EXPECT_EQ(job.price().taxes.size(), 1U);
}

// Once a rate: two of three lines of 1.25 at 6 % are 0.15, one at 3 % 0.0375; line by line 0.08 + 0.08 + 0.04.
TEST(TaxRates, areRoundedOnceARateOrLineByLine) {
    Job job(1, 125);
    job.order.lines.resize(3, job.first());
    job.order.lines[1].taxRate = "Half";
    job.rules().tax = {"Tax", Rate::fromPercent(6), false, TaxRounding::PerInvoice, {{"Half", Rate::fromPercent(3)}}};
    EXPECT_EQ(job.price().taxes[0].tax, cents(15));
    EXPECT_EQ(job.price().taxes[1].tax, cents(4));
    EXPECT_EQ(job.price().tax, cents(19));
    job.rules().tax.rounding = TaxRounding::PerLine;
    EXPECT_EQ(job.price().taxes[0].tax, cents(16));
    EXPECT_EQ(job.price().tax, cents(20));
}

// Inside: 10.00 × 1.10 = 11.00 and 10.00 × 1.04 = 10.40; of 110.00 are 10.00 tax, of 208.00 8.00, and 100.00 and 200.00
// are left of the lines.
TEST(TaxRates, areInsideThePriceOfEachLine) {
    auto job = atTwoRates();
    job.rules().tax.inclusive = true;
    const auto priced = job.price();
    EXPECT_EQ(priced.lines[0].each, cents(1100));
    EXPECT_EQ(priced.lines[1].each, cents(1040));
    EXPECT_EQ(priced.total, cents(31'800));
    EXPECT_EQ(priced.tax, cents(1800));
    EXPECT_EQ(priced.lines[0].earnings.net, cents(10'000));
    EXPECT_EQ(priced.lines[1].earnings.net, cents(20'000));
    // What an exempt customer is asked of a typed 10.40 is 10.40 ÷ 1.04.
    job.order.lines[1].overrideEach = cents(1040);
    give(job, "2026-01-01", nullptr);
    EXPECT_EQ(job.price().lines[1].each, cents(1000));
    EXPECT_EQ(job.price().lines[1].typedWithTax, cents(1040));
    EXPECT_EQ(job.price().lines[0].each, cents(1000));
    EXPECT_TRUE(job.price().taxes.empty());
}

TEST(TaxRates, thatAreGoneAreRefusedWithTheLine) {
    auto job = atTwoRates();
    job.order.lines[1].title = "Tee";
    job.rules().tax.others.pop_back();
    EXPECT_EQ(describe(job.asked().error()), "TaxRateGone(Reduced, Tee) of Tee");
}

} // namespace
