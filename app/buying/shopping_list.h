// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/planner.h"
#include "app/format/formatter.h"
#include "app/paper/sheet_painter.h"
#include "core/supply/cost_curve.h"

#include <memory>
#include <string>

namespace sp::buying {

/// The packs of the cheapest plan by supplier as a table: supplier, pack, material, packs, each, goods; then each
/// supplier's shipping. Amounts with a point and without thousands marks. The answer has a plan for the mix.
std::string shoppingCsv(const Answer& answer);

/// A paper of this place: whose it is, for what, and of which day.
struct BuyingPaper {
    const catalogue::Shop& shop;
    const desk::Formatter& formatter;
    QString job; ///< "24 × Lantern"
    units::Date day;
};

/// The same to print: one block for each supplier with its sums, a box to tick before each pack.
paper::Document shoppingPages(const Answer& answer, const BuyingPaper& about);

/// The curve with its sentences; it was to reach to `horizon` pieces, `pieces` were asked for.
paper::Document costCurvePage(std::shared_ptr<const supply::CostCurve> curve, std::int64_t horizon, std::int64_t pieces,
                              const BuyingPaper& about);

} // namespace sp::buying
