// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/region.h"

namespace sp::artwork {

/// Places in rows, square or staggered (each row half a pitch on, as honeycomb), no two nearer than the
/// pitch.
struct LatticeFill {
    std::vector<Point> centres;
    bool staggered = false;
    double degrees = 0;        ///< how the rows are turned
    std::size_t plainGrid = 0; ///< what upright square rows from the corner give
};

/// Fills `region` (rings as `regionOf` and `insetBy` give them) with centres at `pitch` millimetres (> 0):
/// the fullest of square and staggered rows, turned by steps of 15 degrees, set at the edges and through the middle,
/// from there shifted by sixteenths of the pitch (quarters where the region has very many corners). Places within a
/// micrometre of the edge count as inside. The best lattice, not the best packing: those of small circles
/// hold up to a fifth more (algorithms by hand do too). At most `most` centres; when more would fit,
/// `centres` is empty and `plainGrid` says about how many.
LatticeFill fillWithLattice(const Rings& region, double pitch, std::size_t most);

} // namespace sp::artwork
