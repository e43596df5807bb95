// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/guillotine.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace sp::layout {

/// So much may lie in one bin: the sum of weights x counts, by kind, is never above `most`, whichever way the boxes are
/// turned. Exact integers, all 0 or more, below 2^60.
struct CountLimit {
    std::vector<std::int64_t> weights;
    std::int64_t most = 0;

    /// weights x counts / most: more than 1 and the counts do not fit one bin; of all boxes, so many bins at least.
    double share(const std::vector<std::int64_t>& counts) const;
    bool allows(const std::vector<std::int64_t>& counts) const;
    /// The fewest bins.
    std::int64_t bins(const std::vector<std::int64_t>& counts) const;
};

/// The limit of this form that the counts strain most: a line across the bin passes boxes side by side, so it gives
/// the sides prices of which no line passes more than 1, along and across at once (bars of thickness 0 laid from end
/// to end: G. Scheithauer's bar relaxation; G. Belov, V. Kartak, H. Rohling, G. Scheithauer, "One-dimensional
/// relaxations and LP bounds for orthogonal packing" (2009), from memory). The prices come of a linear programme and
/// are rounded; what a line passes is counted exactly afterwards, so the limit holds. Nothing when `steps`, which are
/// lowered by the work done, run out.
std::optional<CountLimit> barLimit(const std::vector<BoxKind>& kinds, std::int64_t width, std::int64_t height,
                                   bool mayTurn, const std::vector<std::int64_t>& counts, std::int64_t& steps);

} // namespace sp::layout
