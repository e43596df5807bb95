// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/supply/kit_choice.h"

namespace sp::buying {

/// "5 pieces for sure, a 6th with odds of 97.4 %; Jet SS10 runs out first.", or that it makes none, and what is
/// lacking.
QString kitMakes(const supply::KitChoice& kit, const desk::Formatter& formatter);

/// The quantities to show prices for: what one kit makes, twice as many, and those asked for.
std::vector<std::int64_t> kitQuantities(const supply::KitChoice& kit, std::int64_t asked);

/// A piece of so many from the kit and from bulk, shipping in; "—" where there is no such way.
struct KitEach {
    QString pieces;
    QString kit;
    QString bulk;
    QString cheaper; ///< "kit", "bulk"
};
KitEach kitEach(const supply::KitPrice& price, const desk::Formatter& formatter);

/// "Cheaper from the kit: 1–6, 8–13. Cheaper in bulk: 7, from 14 on."
QString kitRuns(const supply::KitChoice& kit, const desk::Formatter& formatter);

/// All of it in one line for each kit: name, what it makes, a piece of as many as one kit makes, and the runs.
QStringList kitLines(const std::vector<supply::KitChoice>& kits, std::int64_t asked, const desk::Formatter& formatter);

} // namespace sp::buying
