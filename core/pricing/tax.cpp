// SPDX-License-Identifier: MIT
#include "core/pricing/tax.h"

#include "core/units/apportion.h"

namespace sp::pricing {

using units::Fraction;
using units::Money;

Money taxOn(std::span<const Money> taxable, const catalogue::TaxRule& rule, const units::Currency& currency) {
    const auto ppm = rule.rate.ppm();
    const Fraction share = Fraction::ratio(ppm, rule.inclusive ? units::kPpm + ppm : units::kPpm);
    Money sum;
    for (const auto amount : taxable)
        sum += rule.rounding == catalogue::TaxRounding::PerLine ? toMinor(amount.exact() * share, currency) : amount;
    return rule.rounding == catalogue::TaxRounding::PerLine ? sum : toMinor(sum.exact() * share, currency);
}

} // namespace sp::pricing
