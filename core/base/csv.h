// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sp::base {

/// A cell of a table: words, which a spreadsheet must never take for a formula, or a number, which stays one.
struct CsvCell {
    std::string text = {};
    bool isNumber = false;
};

/// Words that begin like a formula (= + - @, tab, carriage return, NUL, the full-width signs) or with an apostrophe
/// get an apostrophe before them; others stay.
std::string guarded(std::string_view words);

/// One record, ended by CR LF: cells that hold a comma, a quotation mark or a line end are quoted, quotation marks in
/// them doubled. Sources: RFC 4180, section 2; CWE-1236 for the guard.
std::string csvRecord(const std::vector<CsvCell>& cells);

} // namespace sp::base
