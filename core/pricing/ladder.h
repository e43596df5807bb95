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

/// The line priced for each of the shop's ladder quantities and for its own, ascending. Sizes of a blank are left out,
/// a typed price stands only at the line's own quantity. Errors: as priceLine.
base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                                 bool exempt, layout::FitMemo& fits);

} // namespace sp::pricing
