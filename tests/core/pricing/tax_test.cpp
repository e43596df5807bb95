// SPDX-License-Identifier: MIT
#include "core/pricing/tax.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

using namespace sp;
using catalogue::TaxRounding;
using catalogue::TaxRule;
using sample::cents;
using units::Currency;
using units::Money;
using units::Rate;

namespace {

Money taxOf(std::int64_t amountCents, std::int64_t ppm, bool inclusive = false) {
    const std::vector<Money> one{cents(amountCents)};
    return pricing::taxOn(one, {"Tax", Rate::fromPpm(ppm), inclusive, TaxRounding::PerInvoice}, Rate::fromPpm(ppm),
                          Currency{});
}

struct TaxRow {
    std::int64_t amount;
    std::int64_t ppm;
    std::int64_t tax;
};

void PrintTo(const TaxRow& row, std::ostream* out) { *out << row.amount << " at " << row.ppm << " ppm"; }

class Tax : public testing::TestWithParam<TaxRow> {};

TEST_P(Tax, isThePublishedTax) { EXPECT_EQ(taxOf(GetParam().amount, GetParam().ppm), cents(GetParam().tax)); }

// OpenStax Prealgebra 2e m81307; the two rows 129 and 250 tell half-up apart from binary doubles and from half-even.
INSTANTIATE_TEST_SUITE_P(Prealgebra, Tax,
                         testing::Values(TaxRow{39200, 65'000, 2548}, TaxRow{72400, 62'500, 4525},
                                         TaxRow{25000, 82'000, 2050}, TaxRow{12900, 75'000, 968},
                                         TaxRow{25000, 68'500, 1713}, TaxRow{119900, 51'250, 6145},
                                         TaxRow{8400, 50'000, 420}));
// OpenStax Contemporary Mathematics m00058; Principles of Accounting vol. 1 (50 at 8 %).
INSTANTIATE_TEST_SUITE_P(Contemporary, Tax,
                         testing::Values(TaxRow{3488, 82'500, 288}, TaxRow{42899, 82'500, 3539},
                                         TaxRow{49900, 88'100, 4396}, TaxRow{5000, 80'000, 400}));
// R.I. Gen. Laws 44-18.1-25: carried to the third decimal, up when it is greater than four. 0.03496 goes to 0.03.
INSTANTIATE_TEST_SUITE_P(Statute, Tax,
                         testing::Values(TaxRow{4, 874'000, 3}, TaxRow{100, 34'960, 3}, TaxRow{100, 35'000, 4}));

// OpenStax Contemporary Mathematics m00058: prices that hold the tax.
TEST(InclusiveTax, isThePublishedPart) {
    EXPECT_EQ(taxOf(3656, 57'500, true), cents(3656 - 3457));
    EXPECT_EQ(taxOf(9717, 42'500, true), cents(9717 - 9321));
    EXPECT_EQ(taxOf(46764, 82'500, true), cents(3564));
}

// Computed: three lines of 1.25 at 6 % are 0.08 each, or 0.225 rounded to 0.23 together; both are lawful where the
// seller may choose.
TEST(Tax, perLineAndPerInvoiceDiffer) {
    const std::vector<Money> lines(3, cents(125));
    const TaxRule perLine{"Tax", Rate::fromPercent(6), false, TaxRounding::PerLine};
    const TaxRule perInvoice{"Tax", Rate::fromPercent(6), false, TaxRounding::PerInvoice};
    EXPECT_EQ(pricing::taxOn(lines, perLine, perLine.rate, Currency{}), cents(24));
    EXPECT_EQ(pricing::taxOn(lines, perInvoice, perInvoice.rate, Currency{}), cents(23));
}

} // namespace
