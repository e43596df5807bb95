// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_model.h"

#include <cstdint>
#include <vector>

namespace sp::supply {

struct SearchResult {
    std::vector<std::int64_t> counts; ///< by model pack; empty when no plan was found
    std::int64_t cost = kNever;       ///< granules, goods and shipping, with what was bought ahead
    std::int64_t bound = 0;           ///< granules; <= the cost of every plan
};

/// The search behind planPurchase, from a plan known already (`start` by model pack, empty for none). The model must be
/// coverable.
SearchResult searchPurchase(const Model& model, const std::vector<std::int64_t>& start, const PlanEffort& effort);

} // namespace sp::supply
