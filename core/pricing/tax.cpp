// SPDX-License-Identifier: MIT
#include "core/pricing/tax.h"

#include "core/units/apportion.h"

namespace sp::pricing {

using units::Fraction;
using units::Money;

std::optional<std::size_t> findRate(const catalogue::TaxRule& rule, std::string_view name) {
    if (name.empty() || name == rule.name) return 0;
    for (std::size_t i = 0; i < rule.others.size(); ++i)
        if (rule.others[i].name == name) return i + 1;
    return std::nullopt;
}

units::Rate rateOn(const catalogue::OrderLine& line, const catalogue::TaxRule& rule, bool exempt) {
    if (!line.taxable || exempt) return {};
    const auto number = findRate(rule, line.taxRate);
    return number ? rateAt(rule, *number) : units::Rate{};
}

Money taxOn(std::span<const Money> taxable, const catalogue::TaxRule& rule, units::Rate rate,
            const units::Currency& currency) {
    const auto ppm = rate.ppm();
    const Fraction share = Fraction::ratio(ppm, rule.inclusive ? units::kPpm + ppm : units::kPpm);
    Money sum;
    for (const auto amount : taxable)
        sum += rule.rounding == catalogue::TaxRounding::PerLine ? toMinor(amount.exact() * share, currency) : amount;
    return rule.rounding == catalogue::TaxRounding::PerLine ? sum : toMinor(sum.exact() * share, currency);
}

} // namespace sp::pricing
