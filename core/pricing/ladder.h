// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"

#include <vector>

namespace sp::pricing {

/// The price of another quantity of a line.
struct LadderPrice {
    units::Count quantity;
    units::Money each;
    units::Money setUp;     ///< as a line of its own
    units::Money total;     ///< each × quantity + setUp
    bool isOrdered = false; ///< the quantity of the line itself

    friend bool operator==(const LadderPrice&, const LadderPrice&) = default;
};

/// Line `line` (from 0) of a priced order for each of the shop's ladder quantities and for its own, ascending. Its own
/// quantity has the line's price; for others a typed price does not apply, and surcharges of sizes are left out,
/// because it is not known how many of each there would be. `total` is without surcharges of sizes. Errors: as
/// priceLine.
base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::Order& order, std::size_t line,
                                                 const catalogue::PriceBook& book, bool exempt, layout::FitMemo& fits,
                                                 std::int64_t rules = kRulesVersion);

} // namespace sp::pricing
