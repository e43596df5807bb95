// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/shop.h"
#include "core/units/currency.h"
#include "core/units/money.h"

namespace sp::pricing {

/// The deposit on a total of 0 or more: total × deposit rate, half to even to a micro-unit, then up to the shop's step
/// (to the minor unit where it has none), never more than the total. Throws base::Overflow.
units::Money depositOn(units::Money total, const catalogue::PriceRules& rules, const units::Currency& currency);

} // namespace sp::pricing
