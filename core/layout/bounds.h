// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/pattern.h"

namespace sp::layout {

// Upper bounds: no packing of sideA x sideB pieces, quarter turns allowed, has more. Exact integers
// throughout.

/// Area, less the cells that must stay empty when the piece is cut into bars of 1 x side: with r, s the
/// remainders of the sheet's sides, min(r s, (side - r)(side - s)). Source: F. W. Barnes, Discrete
/// Mathematics 26 (1979) 93-100.
std::int64_t barnesBound(const Problem& problem);

/// Each line across the sheet meets pieces whose sides sum to no more than the sheet's; so the mean line lies
/// in the convex hull of the sums that fit, along the width and along the height at once. The best whole
/// numbers of upright and turned pieces under both hulls. Source: H. Isermann, OR Spektrum 9 (1987) 235-249
/// [from memory]; the integer search over the two counts is our own. Beyond 200,000 pieces along a side
/// Barnes' bound is given instead.
std::int64_t partitionBound(const Problem& problem);

/// Both.
std::int64_t upperBound(const Problem& problem);

/// The least of upperBound and of Barnes' bound for other pieces: give the sides any other lengths (1 to
/// mostSide each) and make the sheet long enough for every sum that fitted before. Each packing of the old
/// sheet then gives one of the new: keep who is left of whom and who is below whom, and push all left and
/// down; every row of pieces was a sum that fitted. So the new bound holds for the old sheet. Own work, after
/// the equivalence classes of K. A. Dowsland, OR Spektrum 7 (1985) [from memory]. Stops looking once it is
/// down to `enough`.
std::int64_t relaxedBound(const Problem& problem, std::int64_t enough, Tick mostSide);

/// An L: width x height without its upper right corner, which begins at (armX, armY). Area less the cells
/// that must stay empty: a bar of 1 x side covers each of `side` diagonal colours once, so every surplus of a
/// colour over the rarest is waste (Barnes' argument, for the L; both diagonals and both sides tried).
std::int64_t lShapeBound(Tick width, Tick height, Tick armX, Tick armY, Tick sideA, Tick sideB);

} // namespace sp::layout
