// SPDX-License-Identifier: MIT
#include "app/paper/sheet_words_of.h"

namespace sp::paper {

words::SheetWords sheetWords(const desk::Formatter& formatter) {
    return words::SheetWords(
        formatter.style(), [&formatter](units::Date day) { return formatter.date(day).toStdString(); },
        [&formatter](units::Date day) { return formatter.dateWithDay(day).toStdString(); });
}

} // namespace sp::paper
