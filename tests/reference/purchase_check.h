// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase.h"

#include <string>

namespace sp::reference {

/// What is wrong with a plan, or nothing: buys it pack by pack and adds up, knowing nothing of how it was found.
std::string faultOf(const supply::PurchasePlan& plan, const supply::PurchaseProblem& problem);

} // namespace sp::reference
