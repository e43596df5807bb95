// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/count.h"

namespace sp::catalogue {

/// What packing is counted by.
enum class PackingPer { Piece, Order };

/// So many of a packing material go with every piece, or once with an order.
struct PackingUse {
    base::Id material;
    units::Count amount = units::Count::of(1); ///< 1 or more
    PackingPer per = PackingPer::Piece;

    friend bool operator==(const PackingUse&, const PackingUse&) = default;
};

} // namespace sp::catalogue
