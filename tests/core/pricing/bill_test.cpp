// SPDX-License-Identifier: MIT
//
// What invoices and credit notes charge by rate of tax.
#include "core/pricing/bill.h"
#include "core/pricing/messages.h"
#include "core/pricing/tax_report.h"
#include "tests/support/amounts.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using pricing::BillPart;
using units::Money;
using units::Rate;

using sp::support::cents;

const units::Currency kDollar = *units::Currency::parse("USD");

/// 20.00 without tax and 100.00 at 8.875 %: 8.875 is 8.88 with halves up.
std::vector<BillPart> mixed() {
    return {{{}, {}, cents(2'000), {}}, {"Sales tax", Rate::fromPpm(88'750), cents(10'000), cents(888)}};
}

TEST(BillParts, takeTheTaxOutOfPricesThatHoldIt) {
    // By hand: 119.00 with 19 % in it is 100.00 and 19.00; 10.00 of the 129.00 are not taxed.
    const pricing::TaxAmount tax{"VAT", Rate::fromPercent(19), cents(11'900), cents(1'900)};
    const auto parts = pricing::partsOf(std::vector{tax}, true, cents(12'900));
    ASSERT_EQ(parts.size(), 2U);
    EXPECT_EQ(parts[0], (BillPart{{}, {}, cents(1'000), {}}));
    EXPECT_EQ(parts[1], (BillPart{"VAT", Rate::fromPercent(19), cents(10'000), cents(1'900)}));
}

// By hand: two invoices of 20.00 without tax and 100.00 at 8.875 % (8.88); 64.44 of one are taken back, half of
// 128.88: 10.00, 50.00 and 4.44. A third of 75.00 is a school's, with a certificate. Together 30.00 not taxed, 150.00
// with 13.32 of tax.
TEST(TaxReports, addUpTheBillsAndTakeCreditNotesOff) {
    pricing::TaxReport report;
    report.addInvoice(mixed(), false);
    report.addInvoice(mixed(), false);
    report.addInvoice(std::vector<BillPart>{{{}, {}, cents(7'500), {}}}, true);
    report.addCreditNote(pricing::shareOf(mixed(), cents(6'444), kDollar).value(), false);
    EXPECT_EQ(report.rates, (std::vector<BillPart>{{"Sales tax", Rate::fromPpm(88'750), cents(15'000), cents(1'332)}}));
    EXPECT_EQ(report.untaxed, cents(3'000));
    EXPECT_EQ(report.exempt, cents(7'500));
    EXPECT_EQ(report.taxable(), cents(15'000));
    EXPECT_EQ(report.tax(), cents(1'332));
    EXPECT_EQ(report.total(), cents(26'832));
    EXPECT_EQ(report.invoices, 3);
    EXPECT_EQ(report.creditNotes, 1);
    // What is all taken back is in it no more.
    report.addCreditNote(std::vector<BillPart>{{{}, {}, cents(7'500), {}}}, true);
    EXPECT_TRUE(report.exempt.isZero());
}

TEST(BillParts, standBesideATaxOnTop) {
    const pricing::TaxAmount tax{"Sales tax", Rate::fromPpm(88'750), cents(10'000), cents(888)};
    EXPECT_EQ(pricing::partsOf(std::vector{tax}, false, cents(12'888)), mixed());
    EXPECT_EQ(pricing::partsOf({}, false, cents(500)), (std::vector<BillPart>{{{}, {}, cents(500), {}}}));
    EXPECT_TRUE(pricing::partsOf({}, false, {}).empty());
}

TEST(BillShare, isInProportionToTheCent) {
    // By hand, half of 128.88: running totals 10.00, 60.00, 64.44.
    const auto half = pricing::shareOf(mixed(), cents(6'444), kDollar);
    ASSERT_TRUE(half);
    ASSERT_EQ(half->size(), 2U);
    EXPECT_EQ((*half)[0].net, cents(1'000));
    EXPECT_EQ((*half)[1].net, cents(5'000));
    EXPECT_EQ((*half)[1].tax, cents(444));
    // 10.00 of it: 10 × 20 ÷ 128.88 = 1.5518, 10 × 120 ÷ 128.88 = 9.3110, so 1.55, 7.76 and 0.69.
    const auto ten = pricing::shareOf(mixed(), cents(1'000), kDollar);
    ASSERT_TRUE(ten);
    EXPECT_EQ((*ten)[0].net, cents(155));
    EXPECT_EQ((*ten)[1].net, cents(776));
    EXPECT_EQ((*ten)[1].tax, cents(69));
    EXPECT_EQ(pricing::shareOf(mixed(), cents(12'888), kDollar), mixed()) << "all of it";
}

TEST(BillShare, refusesWhatCannotBeTakenBack) {
    const auto fault = [](Money amount) { return pricing::shareOf(mixed(), amount, kDollar).error().fault; };
    EXPECT_EQ(fault({}), idOf(pricing::Fault::NothingCredited));
    EXPECT_EQ(fault(-cents(1)), idOf(pricing::Fault::NothingCredited));
    EXPECT_EQ(fault(cents(12'889)), idOf(pricing::Fault::CreditBeyond));
    EXPECT_EQ(fault(Money::fromMicros(5'000)), idOf(pricing::Fault::CreditBelowMinor));
    const auto yen = *units::Currency::parse("JPY");
    EXPECT_EQ(pricing::shareOf(mixed(), cents(150), yen).error().fault, idOf(pricing::Fault::CreditBelowMinor));
}

// Laws: whatever is taken back in whichever portions, net and tax of every rate stay at nothing or above, each portion
// is within a cent of its proportion, and in the end all of the bill and no cent more is taken back.
TEST(BillShare, portionsAddUpToTheBill) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    for (int round = 0; round < 500; ++round) {
        std::vector<BillPart> bill;
        for (std::int64_t i = 0, rates = 1 + upTo(3); i < rates; ++i)
            bill.push_back({i == 0 ? std::string() : "Tax " + std::to_string(i), Rate::fromPpm(upTo(300'000)),
                            cents(1 + upTo(50'000)), i == 0 ? Money{} : cents(upTo(9'000))});
        auto left = bill;
        std::vector<BillPart> taken;
        while (!left.empty()) {
            const auto whole = pricing::wholeOf(left);
            const auto most = whole.micros() / 10'000;
            const auto amount = cents(upTo(9) == 0 ? most : 1 + upTo(std::min<std::int64_t>(most - 1, most / 3 + 1)));
            const auto share = pricing::shareOf(left, amount, kDollar);
            ASSERT_TRUE(share);
            ASSERT_EQ(pricing::wholeOf(*share), amount);
            for (const auto& part : *share) {
                const auto of = std::ranges::find(left, part.name, &BillPart::name);
                ASSERT_NE(of, left.end());
                for (const auto& [got, from] : {std::pair(part.net, of->net), std::pair(part.tax, of->tax)}) {
                    const double exact = static_cast<double>(amount.micros()) * static_cast<double>(from.micros()) /
                                         static_cast<double>(whole.micros());
                    ASSERT_LT(std::abs(static_cast<double>(got.micros()) - exact), 10'000.5) << "round " << round;
                }
            }
            pricing::addParts(left, *share, -1);
            pricing::addParts(taken, *share);
            ASSERT_TRUE(pricing::areAllOwed(left)) << "round " << round;
        }
        pricing::addParts(taken, bill, -1);
        ASSERT_TRUE(taken.empty()) << "round " << round;
    }
}

} // namespace
