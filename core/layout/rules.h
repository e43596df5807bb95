// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit.h"
#include "core/layout/pattern.h"

#include <vector>

namespace sp::layout {

/// A question put in ticks: the margin taken off, the gap added to piece and sheet, divided by the greatest
/// common divisor of the piece's sides.
struct Scaled {
    Problem problem;
    Tick unit = 1; ///< nanometres in a tick
    units::Length margin;

    Position position(const Spot& spot) const;
    /// The first kMaxPositions of them.
    std::vector<Position> positions(const std::vector<Spot>& spots) const;
};

/// Checks the ranges that fit.h states and whether one piece fits, then scales. With `isRoll` the sheet's
/// height is the free length of a roll: give it as units::kMaxLength; no error speaks of it.
base::Result<Scaled> scale(const Sheet& sheet, const Piece& piece, const FitRules& rules, bool isRoll = false);

} // namespace sp::layout
