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
    units::Money total;     ///< each × quantity + surcharges of places + setUp
    bool isOrdered = false; ///< the quantity of the line itself

    friend bool operator==(const LadderPrice&, const LadderPrice&) = default;
};

/// Line `line` (from 0) of a priced order for each of the shop's ladder quantities and for its own, ascending. Its own
/// quantity has the line's price; for others a typed price does not apply, and surcharges of sizes are left out,
/// because it is not known how many of each there would be. `total` is without surcharges of sizes, and with those of
/// places. A charge has its own quantity alone, and what is at no charge has no prices. Errors: as priceLine.
base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::Order& order, std::size_t line,
                                                 const catalogue::PriceBook& book, bool exempt, layout::FitMemo& fits,
                                                 std::int64_t rules = kRulesVersion);

/// More pieces of a line that come to less than those ordered, because a higher step of the shop's mark-ups begins
/// there.
struct MoreForLess {
    units::Count quantity;
    units::Money charged; ///< for so many, surcharges and set-up counted in
    units::Money ordered; ///< for those ordered, likewise

    friend bool operator==(const MoreForLess&, const MoreForLess&) = default;
};

/// The quantity that comes to the least of those at which a higher step begins, if that is less than line `line` (from
/// 0) of a priced order comes to; of equal ones the one with more pieces. The pieces more are of the plain size.
/// Nothing where the price is typed, and where less for the line is no less for the order: below the smallest order,
/// and of an order that is given away.
std::optional<MoreForLess> moreForLess(const catalogue::Order& order, const PricedOrder& priced, std::size_t line,
                                       const catalogue::PriceBook& book, layout::FitMemo& fits);

} // namespace sp::pricing
