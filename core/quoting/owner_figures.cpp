// SPDX-License-Identifier: MIT
#include "core/quoting/owner_figures.h"

#include "core/costing/per_piece.h"
#include "core/units/apportion.h"

namespace sp::quoting {

OwnerFigures ownerFigures(const pricing::PricedLine& line, units::Count pieces) {
    return {costing::costEach(line.cost, pieces), units::eachOf(line.earnings.profit, pieces),
            units::eachOf(line.cost.outOfPocket, pieces), units::eachOf(line.earnings.cardFee, pieces),
            units::eachOf(line.floor, pieces)};
}

} // namespace sp::quoting
