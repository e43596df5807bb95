// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/rules_version.h"
#include "core/catalogue/shop.h"
#include "core/units/currency.h"
#include "core/units/fraction.h"
#include "core/units/money.h"

#include <cstddef>
#include <cstdint>

namespace sp::pricing {

// What a card takes of all that is paid with it, the tax too: a share, and a fixed sum of each payment. It is a
// deduction from the price; before rules 3 it was a part of the cost, which the mark-up counted. Common practice, no
// source.

/// The payments expected of an order: two where a part of it is asked before work starts.
std::int64_t paymentsExpected(const catalogue::PriceRules& rules);

/// Line `line`'s (from 0) share of the fixed sums, which are due once for an order; the shares add up to them. Zero
/// where no card fee is charged. Throws base::Overflow.
units::Money cardFeeShare(const catalogue::Order& order, std::size_t line, const catalogue::PriceRules& rules,
                          std::int64_t version = catalogue::kRulesVersion);

/// What of a price without tax is left when the card has taken its share of it and of the `tax` on it: 1 − r × (1 + t).
/// Zero or below where it takes all.
units::Fraction keptOfPrice(const catalogue::PriceRules& rules, units::Rate tax);

/// What the card takes of `total` in so many payments, to the minor unit; nothing where no card fee is charged. Throws
/// base::Overflow.
units::Money cardFeeOn(units::Money total, std::int64_t payments, const catalogue::PriceRules& rules,
                       const units::Currency& currency);

} // namespace sp::pricing
