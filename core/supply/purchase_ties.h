// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_search.h"

namespace sp::supply {

/// Of all plans that cost as much as `found`, a cheapest plan of the whole model (not reduced), the one that the
/// contract of planPurchase takes: the worth of what is left, then fewer suppliers, then fewer packs, then more of what
/// is listed first. All of them are gone through in so many simple steps: where there are too many, where what is
/// needed is too much, or where a pack costs nothing, the best of those that were seen is the answer, at worst `found`.
SearchResult bestOfEqual(const Model& model, SearchResult found, std::int64_t steps);

inline constexpr std::int64_t kTieSteps = 3'000'000; ///< about ten milliseconds

} // namespace sp::supply
