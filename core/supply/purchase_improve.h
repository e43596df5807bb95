// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_search.h"

#include <cstdint>
#include <vector>

namespace sp::supply {

/// A plan no dearer than the one given (`counts` by model pack, empty for none) and than what a plain buyer would take,
/// bettered by local search: one line changed and the rest bought anew around it, lines and suppliers left out, orders
/// filled up to their minimum or to free shipping. It does about `work` simple steps, draws from a fixed seed, and so
/// always answers the same. `counts` of the result is empty when no plan was found; its bound is 0.
SearchResult improvedPurchase(const Model& model, const std::vector<std::int64_t>& counts, std::int64_t work);

} // namespace sp::supply
