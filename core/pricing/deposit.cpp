// SPDX-License-Identifier: MIT
#include "core/pricing/deposit.h"

#include "core/pricing/rounding.h"

#include <algorithm>

namespace sp::pricing {

using units::Fraction;
using units::Money;

Money depositOn(Money total, const catalogue::PriceRules& rules, const units::Currency& currency) {
    const Money share = Money::fromExact(total.exact() * Fraction::ratio(rules.depositRate.ppm(), units::kPpm));
    return std::min(total, upToStep(share, rules.depositStep, currency));
}

} // namespace sp::pricing
