// SPDX-License-Identifier: MIT
#pragma once

#include "app/words/sheet_words.h"
#include "tests/support/sales.h"

namespace sp::paper::test {

using namespace sp::test;

/// The sheet of the sale in the program's own words.
inline quoting::SheetContent sheetOf(const Sale& sale, const std::string& number = "2026-0042") {
    return sale.sheet(words::SheetWords(), number);
}

} // namespace sp::paper::test
