// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_relaxation.h"

#include <cstdint>
#include <functional>
#include <vector>

namespace sp::supply {

/// How far a bound is to be raised.
struct Ascent {
    int steps = 0;                               ///< at the most; fewer where one takes long
    std::int64_t best = kNever;                  ///< granules: the best plan known, which steps aim at
    std::int64_t enough = kNever;                ///< granules: a bound that ends the ascent
    std::function<bool(std::int64_t work)> tick; ///< told of work done; true ends the ascent
};

/// Raises the bound of a relaxation (granules) by steps along the subgradient; leaves the best multipliers and their
/// tables. Never above the cost of a plan in the relaxation's state, whatever the multipliers.
std::int64_t raiseBound(const Market& market, Relaxation& relaxation, Multipliers& multipliers, const Ascent& ascent);

/// Goods prices (0 to 1) and shares as whole multipliers, never rounded up.
Multipliers roundedMultipliers(const std::vector<double>& goods, const std::vector<std::vector<double>>& shares);

/// Roughly how many simple steps one evaluation takes.
std::int64_t workOfRelaxation(const Market& market, const Relaxation& relaxation);

} // namespace sp::supply
