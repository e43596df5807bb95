// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_search.h"

namespace sp::supply {

/// The answer that buys what was found, everything exact and from the problem's own prices; proven where the bound is
/// its cost. Takes the model's warnings.
PurchaseAnswer planned(const PurchaseProblem& problem, Modelled& made, const SearchResult& found);

/// The same where the shelf has everything.
PurchaseAnswer nothingToBuy(const PurchaseProblem& problem, Modelled& made);

} // namespace sp::supply
