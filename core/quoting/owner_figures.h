// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"
#include "core/units/count.h"
#include "core/units/money.h"

namespace sp::quoting {

/// What the owner reads of a line for one of its pieces; each is the line's figure ÷ pieces, half to even to a
/// micro-unit.
struct OwnerFigures {
    units::Money costEach;
    units::Money profitEach; ///< what the price leaves, without tax; below zero for a loss
    units::Money paidOutEach;
    units::Money cardFeeEach; ///< what the card takes
    units::Money floorEach;   ///< the price without tax that leaves what is paid out, after its card fee
};

/// `pieces` 1 or more: those the line was priced for.
OwnerFigures ownerFigures(const pricing::PricedLine& line, units::Count pieces);

} // namespace sp::quoting
