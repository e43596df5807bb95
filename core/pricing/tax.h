// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/shop.h"
#include "core/units/currency.h"
#include "core/units/money.h"

#include <span>

namespace sp::pricing {

/// The tax on taxable amounts (whole minor units): the exact product rounded once, half up, on their sum or on each
/// of them, as `rule.rounding` says. For an inclusive rule it is the part of the amounts that is tax. Throws
/// base::Overflow.
/// Source: the uniform rule of the US Streamlined agreement, section 324, as in R.I. Gen. Laws 44-18.1-25; which of
/// the two ways a shop may use is for the shop to confirm with its tax authority.
units::Money taxOn(std::span<const units::Money> taxable, const catalogue::TaxRule& rule,
                   const units::Currency& currency);

} // namespace sp::pricing
