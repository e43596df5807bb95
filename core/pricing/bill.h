// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/pricing/price_order.h"
#include "core/units/currency.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <span>
#include <string>
#include <vector>

namespace sp::pricing {

/// What a bill charges at one rate of tax, in whole minor units; of what is not taxed the name is empty and the tax 0.
struct BillPart {
    std::string name; ///< of the rate, as printed
    units::Rate rate;
    units::Money net; ///< without the tax
    units::Money tax;

    units::Money whole() const { return net + tax; }

    friend bool operator==(const BillPart&, const BillPart&) = default;
};

/// The parts of an order that comes to `total`, the untaxed one first where there is one. They add up to the total,
/// whatever the taxes say; `included` as PricedOrder::taxIncluded.
std::vector<BillPart> partsOf(std::span<const TaxAmount> taxes, bool included, units::Money total);

units::Money wholeOf(std::span<const BillPart> parts);
units::Money taxOf(std::span<const BillPart> parts);

/// Adds `more` to `parts`, rate by rate; `sign` −1 takes it off. Parts of nothing fall out.
void addParts(std::vector<BillPart>& parts, std::span<const BillPart> more, int sign = 1);

/// Whether none of the parts is below nothing.
bool areAllOwed(std::span<const BillPart> parts);

/// So much of what is left of a bill: net and tax of every rate in proportion, in whole minor units that add up to
/// `amount`, none beyond what is left of it, and all of it where `amount` is the whole. `left` has no part below
/// nothing.
/// Errors: Invalid for nothing or less; for more than `left` comes to; for a part of a minor unit.
base::Result<std::vector<BillPart>> shareOf(std::span<const BillPart> left, units::Money amount,
                                            const units::Currency& currency);

} // namespace sp::pricing
