// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"

#include <vector>

namespace sp::pricing {

/// What more or fewer pieces of a line would cost.
struct LadderPrice {
    units::Count quantity;
    units::Money each;
    units::Money setUp;     ///< as a line of its own
    units::Money total;     ///< each × quantity + setUp
    bool isOrdered = false; ///< the quantity of the line itself

    friend bool operator==(const LadderPrice&, const LadderPrice&) = default;
};

/// Line `line` (from 0) of a priced order for each of the shop's ladder quantities and for its own, ascending. At its
/// own it is what the line asks; at others a typed price does not stand, and sizes of a blank, of which nobody has said
/// how many, are left out. `total` is without what the sizes add. Errors: as priceLine.
base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::Order& order, std::size_t line,
                                                 const catalogue::PriceBook& book, bool exempt, layout::FitMemo& fits);

} // namespace sp::pricing
