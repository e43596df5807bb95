// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/plan_shape.h"
#include "app/paper/sheet_painter.h"

#include <vector>

namespace sp::paper {

/// What a cutting plan is printed from.
struct PlanSheetInput {
    QString title;                         ///< what it is for: "Lantern", "quote 2026-0042"
    QString day;                           ///< on which it is made
    const catalogue::Shop* shop = nullptr; ///< letterhead, paper and whether it is a demo
    PlanWords words;
    std::vector<planning::CutPlan> plans; ///< one for each material, in the order of printing
    QString note{};                       ///< a sentence under the title, or none
};

/// The cutting plan for the bench, upright on the shop's paper: under each material its verdict, its pieces by their
/// marks with size and number, every different sheet to scale, and where its pieces lie on it from the left and the
/// upper edge. All words can be selected. It holds no prices.
Document planDocument(const PlanSheetInput& input);

} // namespace sp::paper
