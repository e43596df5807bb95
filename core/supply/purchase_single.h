// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_search.h"

#include <optional>

namespace sp::supply {

struct SinglePurchase {
    SearchResult found;                   ///< `counts` is empty when there is no plan
    std::optional<std::size_t> unreached; ///< then the pack with which its supplier's minimum is not reached
};

/// The cheapest plan, with its proof, where no material can be had in two ways: each is given by one pack that gives
/// nothing else needed. What is left to choose is how many more than enough, for a later price, a supplier's minimum or
/// free shipping, and that is worked out in closed form, whatever the numbers. None when there is a choice of packs, or
/// when several packs of a supplier could share in reaching one of its sums. The model must be coverable and whole, not
/// reduced.
std::optional<SinglePurchase> singlePurchase(const Model& model);

} // namespace sp::supply
