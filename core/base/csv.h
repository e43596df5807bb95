// SPDX-License-Identifier: MIT
#pragma once

#include <tl/expected.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

// Tables as comma-separated values, in and out. Source: RFC 4180, section 2.

namespace sp::base {

struct CsvRow {
    std::size_t line = 1; ///< of the file, from 1, where the row begins
    std::vector<std::string> cells;
};

struct CsvTable {
    char separator = ',';
    std::vector<CsvRow> rows; ///< without those that are blank; not all of the same length
};

inline constexpr std::size_t kMaxCsvRows = 120'000;
inline constexpr std::size_t kMaxCsvCells = 100;         ///< in a row
inline constexpr std::size_t kMaxCsvCellLength = 10'000; ///< bytes

/// Why a table cannot be read; whoever reads one says it in a sentence about that sort of file.
enum class CsvFault { QuoteNotClosed, TextAfterQuote, CellTooLarge, TooManyColumns, TooManyRows };
struct CsvTrouble {
    CsvFault fault;
    std::size_t line; ///< of the file, from 1
};

/// Reads values separated by commas, semicolons or tabs: whichever stands most often in the first row outside quotes.
/// `text` is UTF-8, a byte order mark is skipped; rows end with CRLF, LF or CR; cells in double quotes may hold
/// separators, line ends and doubled quotes. Spaces belong to the cell. A quote inside a cell that does not begin with
/// one is itself, for sizes such as 9.5" are written so.
/// LF, CR, other separators and the bare quote go beyond RFC 4180.
tl::expected<CsvTable, CsvTrouble> readCsv(std::string_view text);

/// A cell of a table: words, which a spreadsheet must never take for a formula, or a number, which stays one.
struct CsvCell {
    std::string text = {};
    bool isNumber = false;
};

/// Words that begin like a formula (= + - @, tab, carriage return, NUL, the full-width signs) or with an apostrophe
/// get an apostrophe before them; others stay.
std::string guarded(std::string_view words);

/// The same undone: an apostrophe goes that `guarded` has put there; others stay.
std::string unguarded(std::string_view words);

/// One record, ended by CR LF: cells that hold a comma, a quotation mark or a line end are quoted, quotation marks in
/// them doubled. Source of the guard: CWE-1236.
std::string csvRecord(const std::vector<CsvCell>& cells);

} // namespace sp::base
