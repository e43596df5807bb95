// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/supply/kit_yield.h"

#include <QStringList>

namespace sp::supplies {

/// "four times in five", "nearly always": a chance as one says it.
QString chanceInWords(double probability);

/// What one kit makes, in sentences: how many pieces with which chance and what runs out first, what a piece then
/// costs, what is left and what that is worth in bulk, what one more gross of the limiting colour would add.
QStringList yieldInWords(const supply::YieldAnswer& answer, const desk::Formatter& formatter);

} // namespace sp::supplies
