// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "app/paper/sheet_painter.h"
#include "core/quoting/bench_sheet.h"

#include <QImage>

#include <functional>

namespace sp::paper {

/// What a bench sheet is printed from.
struct BenchSheetInput {
    const catalogue::Shop& shop;
    const desk::Formatter& formatter;
    const quoting::BenchSheet& sheet; ///< with a line at least
    std::optional<units::Date> ready; ///< the day on which the plan has it done
    /// The picture of a design; a null one where there is none.
    std::function<QImage(const base::Id&)> picture;
    bool isChoiceTaken = false; ///< of an order with several choices
};

/// The bench sheet, to lie beside the press: each line of the order begins a page of its own. What is looked at from a
/// step away is large; there is room to tick and to write in. It holds no price, and reads in black and white.
Document benchDocument(const BenchSheetInput& input);

} // namespace sp::paper
