// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_model.h"

#include <cstdint>
#include <vector>

namespace sp::supply {

struct SearchResult {
    std::vector<std::int64_t> counts; ///< by model pack; empty when no plan was found in time
    std::int64_t cost = kNever;       ///< granules, goods and shipping, with what was bought ahead
    std::int64_t bound = 0;           ///< granules; <= the cost of every plan
};

/// The search behind planPurchase. The model must be coverable.
SearchResult searchPurchase(const Model& model, const OutOfTime& outOfTime);

} // namespace sp::supply
