// SPDX-License-Identifier: MIT
#include "core/pricing/card_fee.h"

#include "core/units/apportion.h"

namespace sp::pricing {

using units::Fraction;
using units::Money;
using units::Rate;

std::int64_t paymentsExpected(const catalogue::PriceRules& rules) {
    return rules.depositRate > Rate{} && rules.depositRate < Rate::fromPercent(100) ? 2 : 1;
}

Money cardFeeShare(const catalogue::Order& order, std::size_t line, const catalogue::PriceRules& rules,
                   std::int64_t version) {
    if (!rules.cardFee.charged) return {};
    const auto payments = units::Count::of(version < 3 ? 1 : paymentsExpected(rules));
    return units::evenShare(units::allOf(rules.cardFee.fixed, payments), static_cast<std::int64_t>(line),
                            static_cast<std::int64_t>(order.lines.size()));
}

Fraction keptOfPrice(const catalogue::PriceRules& rules, Rate tax) {
    if (!rules.cardFee.charged) return Fraction::of(1);
    const Fraction paid = Fraction::ratio(units::kPpm + tax.ppm(), units::kPpm);
    return Fraction::of(1) - paid * Fraction::ratio(rules.cardFee.rate.ppm(), units::kPpm);
}

Money cardFeeOn(Money total, std::int64_t payments, const catalogue::PriceRules& rules,
                const units::Currency& currency) {
    if (!rules.cardFee.charged) return {};
    const auto& fee = rules.cardFee;
    return toMinor(total.exact() * Fraction::ratio(fee.rate.ppm(), units::kPpm) +
                       fee.fixed.exact() * Fraction::of(payments),
                   currency);
}

} // namespace sp::pricing
