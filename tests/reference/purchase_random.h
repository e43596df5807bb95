// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase.h"

#include <cstdint>

namespace sp::reference {

/// How a made-up purchase problem is drawn. Invented prices; shapes as in the trade (packs of 1 to 100 gross, common
/// practice, no source).
struct PurchaseShape {
    int materials = 3;
    int suppliers = 2;
    int packSizes = 3;     ///< of the six: 1, 2, 5, 10, 50, 100 gross
    int kits = 1;          ///< packs that give two to four materials
    double offered = 0.75; ///< chance that a supplier has a material in a size
    bool wild = false;     ///< odd counts, limits, breaks that do not pay, needs that shelf covers
};

/// The same seed and shape always give the same problem (own arithmetic on a 64-bit generator).
supply::PurchaseProblem randomPurchase(const PurchaseShape& shape, std::uint64_t seed);

} // namespace sp::reference
