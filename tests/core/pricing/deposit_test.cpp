// SPDX-License-Identifier: MIT
#include "core/pricing/deposit.h"
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using sample::cents;
using units::Currency;
using units::Money;
using units::Rate;

namespace {

// By hand: half of 407.33 is 203.665, up to the next 5 is 205.00; half of 3.00 up to 5.00 is more than there is to pay.
TEST(Deposit, isRoundedUpToTheStepButNeverAboveTheTotal) {
    catalogue::PriceRules rules;
    rules.depositRate = Rate::fromPercent(50);
    rules.depositStep = cents(500);
    EXPECT_EQ(pricing::depositOn(cents(40733), rules, Currency{}), cents(20500));
    EXPECT_EQ(pricing::depositOn(cents(300), rules, Currency{}), cents(300));
    rules.depositRate = {};
    EXPECT_EQ(pricing::depositOn(cents(40733), rules, Currency{}), Money{});
}

// By hand: a third of 10.00 is 3.3333…, up to the cent 3.34; up to the yen 4.
TEST(Deposit, goesUpToTheMinorUnitWithoutAStep) {
    catalogue::PriceRules rules;
    rules.depositRate = Rate::fromPpm(333'333);
    rules.depositStep = {};
    EXPECT_EQ(pricing::depositOn(cents(1'000), rules, Currency{}), cents(334));
    EXPECT_EQ(pricing::depositOn(cents(1'000), rules, *Currency::parse("JPY")), cents(400));
}

// Half of 107.25 is 53.625: up to the next 5.00 is 55.00, to the cent 53.63, and the balance is the rest.
TEST(Deposit, isOfTheTotalAndTheBalanceIsTheRest) {
    pricing::PriceJob job;
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

} // namespace
