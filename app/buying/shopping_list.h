// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/planner.h"
#include "app/format/formatter.h"
#include "app/paper/output.h"

#include <string>

namespace sp::buying {

/// The packs of the cheapest plan by supplier as a table: supplier, pack, material, packs, each, goods; then each
/// supplier's shipping. Amounts with a point and without thousands marks. The answer has a plan for the mix.
std::string shoppingCsv(const Answer& answer);

/// The same to print: one block for each supplier with its sums, a box to tick before each pack.
paper::DrawnPages shoppingPages(const Answer& answer, const QString& job, const desk::Formatter& formatter,
                                catalogue::Paper paper);

/// The curve on one page, with its sentences.
paper::DrawnPages costCurvePage(std::shared_ptr<const supply::CostCurve> curve, std::int64_t horizon,
                                const QString& job, const desk::Formatter& formatter, catalogue::Paper paper);

} // namespace sp::buying
