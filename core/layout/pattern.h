// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/int128.h"

#include <cstdint>
#include <vector>

namespace sp::layout {

/// What the searches work in: whole multiples of the greatest common divisor of the two piece sides, gap
/// already added to the piece and to the sheet. No search sees a margin, a gap or a nanometre.
using Tick = std::int64_t;

/// A sheet of width x height and a piece of sideA x sideB, all >= 1, sides coprime unless equal.
struct Problem {
    Tick width = 0;
    Tick height = 0;
    Tick sideA = 0;
    Tick sideB = 0;

    friend bool operator==(const Problem&, const Problem&) = default;
};

/// The lower-left corner of one piece. Not turned: sideA lies along the width.
struct Spot {
    Tick x = 0;
    Tick y = 0;
    bool turned = false;
};

/// Where a region lies on the sheet: its own corner (0, 0), the way its axes run, and whether they are
/// exchanged. Regions are solved upright and once; this lays the answer down.
struct Frame {
    Tick x = 0;
    Tick y = 0;
    bool leftwards = false; ///< the region's first corner is on its right side
    bool downwards = false; ///< and its top
    bool swapped = false;   ///< the region's own width lies along the sheet's height

    /// The frame of a part whose corner is (cornerX, cornerY) of this region, growing away from that corner.
    Frame part(Tick cornerX, Tick cornerY, bool towardsLess, bool towardsBelow) const;
    /// The same region with its own axes exchanged.
    Frame exchanged() const;
    /// A piece at (atX, atY) of the region that is spanX x spanY there; `turned` as seen in the region.
    Spot spot(Tick atX, Tick atY, Tick spanX, Tick spanY, bool turned) const;
};

/// A problem with the longer side as width and the longer piece side first, so that one question asked in two
/// ways gets one answer; undo() lays that answer back as it was asked.
struct Upright {
    explicit Upright(const Problem& asked);
    void undo(std::vector<Spot>& spots) const;

    Problem problem;
    bool turnsSheet;
    bool turnsPiece;
};

/// A fixed number of steps of work; no clock, so every run gives the same answer.
class Work {
  public:
    explicit Work(std::int64_t steps)
        : m_left(steps) {}
    bool spend(std::int64_t steps) { return (m_left -= steps) > 0; }
    bool isOver() const { return m_left <= 0; }

  private:
    std::int64_t m_left;
};

} // namespace sp::layout
