// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/planner.h"
#include "app/format/formatter.h"

#include <vector>

namespace sp::buying {

/// A figure in words: what it is, by which rule it was made, and its parts.
struct PlanRow {
    QString label;
    QString rule;
    QString figure;
    std::vector<PlanRow> parts;
};

/// What a plan is made of: each supplier's order with its packs and shipping, what is needed, what is left. None
/// without a plan.
std::vector<PlanRow> rowsOf(const Answer& answer, supply::Strategy strategy, const desk::Formatter& formatter);

/// How many spares the job has and why, a sentence a line.
QStringList sparesOf(const Answer& answer);

/// "2 × bag of 10 gross, Aquamarine SS10"
QString packWords(const supply::Job& job, const supply::PlannedPack& pack, const desk::Formatter& formatter);

/// "Buy: 1 kit + 2 packs, 41.20", "Buy nothing: the shelf is enough", or why there is no plan.
QString buyLine(const Answer& answer, const desk::Formatter& formatter);

/// "Kits only"
QString nameOf(supply::Strategy strategy);

} // namespace sp::buying
