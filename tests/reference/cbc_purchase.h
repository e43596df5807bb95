// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::reference {

/// Answers of the solver CBC (Debian's coinor-cbc, the `cbc` command) to purchase problems put as mixed integer
/// programs: one binary for each price of each pack, one for each order and one for its free shipping.
struct CbcAnswer {
    std::optional<double> cost;  ///< none: infeasible, or no answer
    bool isAnswered = true;      ///< false: it stopped with a fault of its own, or passed a minute
    double seconds = 0;          ///< wall time of the solver process
    double processorSeconds = 0; ///< its processor time
};
/// Solves in the folder given, which keeps the model of the last problem. Debian 12's CBC aborts on some models with
/// a failed assertion of its simplex pricing; those are tried once more with another pricing. Its preprocessing loses
/// the optimum of some others (3 in 1,000 of ten materials and three kits); `plainly` leaves it out, at many times the
/// cost.
CbcAnswer solveWithCbc(const supply::PurchaseProblem& problem, const std::string& folder, bool plainly = false);

/// True when the command is there.
bool hasCbc();

} // namespace sp::reference
