// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/cost_sheet.h"
#include "core/units/count.h"
#include "core/units/currency.h"

#include <vector>

namespace sp::costing {

/// What one piece costs the shop: total ÷ pieces, half to even to a micro-unit. `pieces` 1 or more.
units::Money costEach(const LineCost& cost, units::Count pieces);

/// What a person reads of a cost sheet, for one of so many pieces, node by node as the sheet has them: the job is its
/// total ÷ pieces, rounded to the minor unit, halves away from zero; the parts of every node are rounded so that they
/// add up to what is read of it (units::apportion). With one piece it is the whole job as it is read. Throws
/// base::Overflow.
std::vector<units::Money> shownForOneOf(const CostSheet& sheet, units::Count pieces, const units::Currency& currency);

} // namespace sp::costing
