// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"

#include <cstddef>
#include <span>
#include <vector>

namespace sp::needs {

/// A packing material that goes once with an order.
struct OrderPacking {
    base::Id material;
    units::Count amount;            ///< the most that a line names of it
    std::vector<std::size_t> lines; ///< that name it, ascending

    friend bool operator==(const OrderPacking&, const OrderPacking&) = default;
};

/// All of it for these lines, in the order in which they name it. The lines go in one box: the order takes as much of a
/// material as the line that names most of it, not the sum.
std::vector<OrderPacking> orderPackingOf(std::span<const catalogue::OrderLine> lines,
                                         const std::vector<catalogue::PackingUse>& ofShop);

} // namespace sp::needs
