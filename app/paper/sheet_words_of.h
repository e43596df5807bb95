// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "app/words/sheet_words.h"

namespace sp::paper {

/// The words of the papers, with figures and days as this shop reads them. The formatter must outlive them.
words::SheetWords sheetWords(const desk::Formatter& formatter);

} // namespace sp::paper
