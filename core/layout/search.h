// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/pattern.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace sp::layout {

/// A count, a bound that no layout exceeds, and the first kMaxPositions places.
struct Answer {
    std::int64_t count = 0;
    std::int64_t bound = 0;
    std::vector<Spot> spots;
};

/// How far other side lengths are tried for the bound of a whole sheet.
inline constexpr Tick kRootSide = 100;

/// The best of every layout the searches know, `lShapeWork` cuts at most on the L-shaped ones; nothing when
/// the sheet has more than kMaxSums sums. The piece's sides differ and are coprime.
std::optional<Answer> search(const Problem& problem, std::int64_t lShapeWork);

} // namespace sp::layout
