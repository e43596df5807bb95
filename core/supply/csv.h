// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sp::supply {

struct CsvRow {
    std::size_t line = 1; ///< of the file, from 1, where the row begins
    std::vector<std::string> cells;
};

struct CsvTable {
    char separator = ',';
    std::vector<CsvRow> rows; ///< without those that are blank; not all of the same length
};

inline constexpr std::size_t kLargestCsv = 8'000'000; ///< bytes
inline constexpr std::size_t kMostCsvRows = 50'000;
inline constexpr std::size_t kMostCsvCells = 100;      ///< in a row
inline constexpr std::size_t kLongestCsvCell = 10'000; ///< bytes

/// Reads values separated by commas, semicolons or tabs: whichever stands most often in the first row outside quotes.
/// UTF-8, a byte order mark is skipped; rows end with CRLF, LF or CR; cells in double quotes may hold separators, line
/// ends and doubled quotes. Spaces belong to the cell. A quote inside a cell that does not begin with one is itself,
/// for sizes such as 9.5" are written so.
/// Errors: Invalid for what is not UTF-8, for a quote that is not closed and for text after one that is, with the
/// line; TooLarge beyond the bounds above. Sentences name `fileName`.
/// Source: RFC 4180, section 2; LF, CR, other separators and the bare quote go beyond it.
base::Result<CsvTable> readCsv(std::string_view bytes, std::string_view fileName);

} // namespace sp::supply
