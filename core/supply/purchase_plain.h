// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_search.h"

namespace sp::supply {

/// A plan that can be carried out and a bound that is true, for a problem too large for the search to find either in
/// its time: material by material the pack that adds least for each unit still needed, orders below a supplier's
/// minimum filled up, then suppliers left out one by one where that is cheaper. `counts` is empty when even that finds
/// none. The work is about packs x materials x suppliers used.
SearchResult plainPurchase(const Model& model);

} // namespace sp::supply
