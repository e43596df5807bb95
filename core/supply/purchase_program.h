// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase.h"

#include <string>
#include <string_view>

namespace sp::supply {

// A purchase as a mixed integer programme for a solver that is not ours. Nothing is run here: whoever asks hands the
// text over and the answer back.

/// The programme in the LP format that solvers read (from memory): packs by price, with whole numbers in granules of
/// money and units of material throughout. Errors as planPurchase; nothing in it is a name from the problem.
base::Result<std::string> purchaseProgram(const PurchaseProblem& problem);

/// What the solver found (the solution file of COIN-OR's cbc: a line that says how it ended, then a line a variable)
/// put in place of `plan` where it is cheaper, and the proof where it ended with one. Counts are rounded and the plan
/// is priced and checked here; an answer that does not add up, that claims more than it found or contradicts a cheaper
/// plan leaves everything as it was. `plan` is one of planPurchase for that problem.
void takeSolution(const PurchaseProblem& problem, std::string_view solution, PurchasePlan& plan);

} // namespace sp::supply
