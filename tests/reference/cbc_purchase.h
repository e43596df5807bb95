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
    std::optional<double> cost; ///< none: infeasible
    double seconds = 0;          ///< wall time of the solver process
    double processorSeconds = 0; ///< its processor time
};
/// Solves in the folder given, which keeps the model of the last problem. Throws std::runtime_error when the command
/// cannot be run or does not finish with a proven answer.
CbcAnswer solveWithCbc(const supply::PurchaseProblem& problem, const std::string& folder);

/// True when the command is there.
bool hasCbc();

} // namespace sp::reference
