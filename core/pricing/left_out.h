// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"

#include <vector>

namespace sp::catalogue::fields {
struct Field;
}

namespace sp::pricing {

/// Something an order needs that its price holds nothing for, and where that is mended.
struct LeftOut {
    base::Message what; ///< Note::NoTape and so on
    const catalogue::fields::Field* field = nullptr;
    base::Id material; ///< whose field it is; none for one of the shop's or the bench's
};

/// What is not in the price of an order, in the order in which a shop sets it up: tape and template of which none is
/// chosen, an hour, a month, a machine that costs nothing, work without time, and each material that costs nothing
/// (without any price an order is not priced at all). What the shop means so is not named. `priced` is what `order`
/// comes to with `book`.
std::vector<LeftOut> leftOutOf(const catalogue::Order& order, const catalogue::PriceBook& book,
                               const PricedOrder& priced);

} // namespace sp::pricing
