// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/region.h"

namespace sp::artwork {

/// Stones set along edges.
struct OutlineRun {
    std::vector<Point> centres;
    std::size_t pieces = 0; ///< stretches between corners, and rings without one
    double length = 0;      ///< millimetres of edge
};

/// Sets centres along the rings: one on every corner (a turn of more than 35 degrees), the stretches between
/// divided evenly into round(length / pitch) steps, rings without a corner likewise (common practice, no
/// source). A stretch gets fewer where they would come nearer than `apart` to their neighbours, and a place nearer
/// than that to one already taken is left free, the longest stretches first. 0 < apart <= pitch, millimetres.
OutlineRun runAlong(const Rings& rings, double pitch, double apart);

/// The same along lines, as a row of stones: a closed one as above, an open one with a stone on each end as well, so
/// that one without corners takes round(length / pitch) + 1.
OutlineRun runAlongLines(std::span<const Line> lines, double pitch, double apart);

} // namespace sp::artwork
