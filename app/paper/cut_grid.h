// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/plan_shape.h"

#include <vector>

namespace sp::paper {

/// Equal pieces in even rows on a sheet of a plan, measured as PlanShape draws it: from the left and the upper edge.
struct CutGrid {
    std::size_t piece = 0; ///< its index in the plan's list
    bool turned = false;   ///< as PlanShape has it
    units::Length left;    ///< of the first piece
    units::Length top;
    layout::Piece size; ///< of a piece as drawn
    std::int64_t across = 1;
    std::int64_t down = 1;
    units::Length everyAcross; ///< from one piece's left edge to the next one's; zero where there is but one
    units::Length everyDown;

    friend bool operator==(const CutGrid&, const CutGrid&) = default;
};

/// The pieces of a sheet in as few grids as a greedy search finds, from the upper left on; each piece is in one.
std::vector<CutGrid> cutGrids(const planning::CutPlan& plan, const planning::CutSheet& sheet);

/// "A Lantern".
QString pieceOf(const CutGrid& grid, const planning::CutList& list);
/// "3 1/2 × 2 3/4 in, turned".
QString sizeOf(const CutGrid& grid, const PlanWords& words);
/// "3, every 3 5/8 in"; of one "1".
QString stepsOf(std::int64_t count, units::Length every, const PlanWords& words);
/// "A Lantern, 3 1/2 × 2 3/4 in, turned: 1/4 in from the left, 1/4 in from the top; across 3, every 3 5/8 in; down 2,
/// every 2 7/8 in".
QString inWords(const CutGrid& grid, const planning::CutList& list, const PlanWords& words);

} // namespace sp::paper
