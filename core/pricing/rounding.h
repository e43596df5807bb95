// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/shop.h"
#include "core/units/currency.h"
#include "core/units/fraction.h"
#include "core/units/money.h"

namespace sp::pricing {

// All of these throw base::Overflow when the result does not fit.

/// Up to the next multiple of `step`; of the minor unit when `step` is not above zero.
units::Money upToStep(units::Money amount, units::Money step, const units::Currency& currency);

/// A piece price by the shop's rule, from the exact figure in micro-units. Ending gives the lowest price with that
/// ending that is not below the figure; endings repeat every 100 minor units.
units::Money roundPrice(const units::Fraction& micros, const catalogue::Rounding& rule,
                        const units::Currency& currency);

} // namespace sp::pricing
