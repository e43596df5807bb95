// SPDX-License-Identifier: MIT
#include "core/base/csv.h"

#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <array>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

using namespace sp::base;

namespace {

struct Words {
    const char* name;
    std::string text;
    std::string guarded;
};

void PrintTo(const Words& row, std::ostream* out) { *out << row.name; }

class CsvGuard : public testing::TestWithParam<Words> {};

// The signs that CWE-1236 and OWASP's page on CSV injection name, and their full-width forms.
TEST_P(CsvGuard, leavesNothingThatBeginsAFormula) { EXPECT_EQ(guarded(GetParam().text), GetParam().guarded); }

INSTANTIATE_TEST_SUITE_P(Starts, CsvGuard,
                         testing::Values(Words{"equals", "=1+1", "'=1+1"}, Words{"plus", "+1", "'+1"},
                                         Words{"minus", "-1", "'-1"}, Words{"at", "@SUM(A1)", "'@SUM(A1)"},
                                         Words{"tab", "\t=1", "'\t=1"}, Words{"return", "\r=1", "'\r=1"},
                                         Words{"nul", std::string("\0=1", 3), "'" + std::string("\0=1", 3)},
                                         Words{"fullWidth", "\uFF1D1", "'\uFF1D1"}, Words{"apostrophe", "'=1", "''=1"},
                                         Words{"plain", "bag of 10 gross", "bag of 10 gross"},
                                         Words{"inside", "a=b", "a=b"}, Words{"empty", "", ""}));

// RFC 4180, section 2, rules 5 to 7.
TEST(Csv, quotesWhatWouldBreakTheRecord) {
    EXPECT_EQ(csvRecord({{"aaa"}, {"b \"bb"}, {"c,c"}, {"d\r\nd"}}), "aaa,\"b \"\"bb\",\"c,c\",\"d\r\nd\"\r\n");
}

TEST(Csv, leavesNumbersNumbers) { EXPECT_EQ(csvRecord({{"-1.50", true}, {"-1.50"}}), "-1.50,'-1.50\r\n"); }

using Cells = std::vector<std::vector<std::string>>;

Cells cellsOf(const tl::expected<CsvTable, CsvTrouble>& table) {
    Cells cells;
    if (!table) return {{"refused in line", std::to_string(table.error().line)}};
    for (const auto& row : table->rows) cells.push_back(row.cells);
    return cells;
}

struct Example {
    const char* name;
    std::string bytes;
    Cells cells;
};

void PrintTo(const Example& row, std::ostream* out) { *out << row.name; }

class CsvExample : public testing::TestWithParam<Example> {};

TEST_P(CsvExample, isReadAsItSays) { EXPECT_EQ(cellsOf(readCsv(GetParam().bytes)), GetParam().cells); }

// The examples of RFC 4180, section 2, by their numbers there (from memory).
INSTANTIATE_TEST_SUITE_P(
    Rfc4180, CsvExample,
    testing::Values(
        Example{"one", "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        Example{"two", "aaa,bbb,ccc\r\nzzz,yyy,xxx", {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        Example{"three",
                "field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
                {{"field_name", "field_name", "field_name"}, {"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        Example{"four", "aaa,bbb,ccc", {{"aaa", "bbb", "ccc"}}},
        Example{"five", "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        Example{
            "six", "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", {{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}},
        Example{"seven", "\"aaa\",\"b\"\"bb\",\"ccc\"", {{"aaa", "b\"bb", "ccc"}}}),
    [](const auto& row) { return std::string(row.param.name); });

INSTANTIATE_TEST_SUITE_P(Beyond, CsvExample,
                         testing::Values(Example{"nothing", "", {}},
                                         Example{"byteOrderMark", "\xEF\xBB\xBF\"a\",b", {{"a", "b"}}},
                                         Example{"semicolons", "a;b,c;d\n1;2;3", {{"a", "b,c", "d"}, {"1", "2", "3"}}},
                                         Example{"tabs", "a\tb\n\"x\ty\"\tz\n", {{"a", "b"}, {"x\ty", "z"}}},
                                         Example{"quotedSeparatorsDoNotCount", "\"a,,,,b\";c\n", {{"a,,,,b", "c"}}},
                                         Example{"oldLineEnds", "a,b\rc,d\r", {{"a", "b"}, {"c", "d"}}},
                                         Example{"blankRows", "\n\na,b\n , \n\nc,d\n\n", {{"a", "b"}, {"c", "d"}}},
                                         Example{"emptyCells", "a,,\n,b,", {{"a", "", ""}, {"", "b", ""}}},
                                         Example{"spacesStay", " a , b ", {{" a ", " b "}}},
                                         Example{"inchMark", "9.5\" sheet,3", {{"9.5\" sheet", "3"}}},
                                         Example{"emptyQuotes", "\"\",\"\"\"\"", {{"", "\""}}}),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(Csv, knowsTheLineOfEveryRow) {
    const auto table = readCsv("a,b\r\n\r\n\"x\r\ny\n\",1\nlast,2").value();
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[0].line, 1U);
    EXPECT_EQ(table.rows[1].line, 3U);
    EXPECT_EQ(table.rows[2].line, 6U);
}

TEST(Csv, saysInWhichLineItCannotRead) {
    const auto troubleOf = [](const std::string& text) {
        const auto table = readCsv(text);
        return table ? std::pair(CsvFault{}, std::size_t{0}) : std::pair(table.error().fault, table.error().line);
    };
    EXPECT_EQ(troubleOf("a,b\n\"c,d"), std::pair(CsvFault::QuoteNotClosed, std::size_t{2}));
    EXPECT_EQ(troubleOf("a,b\n\"c\"d,e"), std::pair(CsvFault::TextAfterQuote, std::size_t{2}));
    EXPECT_EQ(troubleOf("a\n" + std::string(kMaxCsvCellLength + 1, 'a')),
              std::pair(CsvFault::CellTooLarge, std::size_t{2}));
    EXPECT_EQ(troubleOf(std::string(kMaxCsvCells, ',')), std::pair(CsvFault::TooManyColumns, std::size_t{1}));
    std::string rows;
    for (std::size_t i = 0; i <= kMaxCsvRows; ++i) rows += "a\n";
    EXPECT_EQ(troubleOf(rows).first, CsvFault::TooManyRows);
}

// Whatever is written by the rules is read back; the first row keeps plain cells so that the separator is known.
TEST(Csv, readsBackWhatWasWritten) {
    std::mt19937_64 random(sp::test::printedSeed());
    const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
    const std::array<std::string, 9> bits{"a", "ß", ",", ";", "\t", "\"", "\r\n", "\n", " "};
    for (int round = 0; round < 2'000; ++round) {
        const char separator = ",;\t"[below(3)];
        const auto columns = 2 + below(4);
        Cells cells{std::vector<std::string>(columns, "head")};
        for (auto rows = below(6); rows > 0; --rows) {
            auto& row = cells.emplace_back(std::vector<std::string>(columns));
            for (auto& cell : row)
                for (auto length = below(7); length > 0; --length) cell += bits[below(bits.size())];
            row.front() += "x"; // not blank
        }
        std::string bytes;
        for (const auto& row : cells) {
            for (std::size_t i = 0; i < row.size(); ++i) {
                if (i > 0) bytes += separator;
                const bool isPlain = row[i].find_first_of(",;\t\"\r\n") == std::string::npos;
                if (isPlain) {
                    bytes += row[i];
                    continue;
                }
                bytes += '"';
                for (const char c : row[i]) bytes += c == '"' ? std::string("\"\"") : std::string(1, c);
                bytes += '"';
            }
            bytes += below(2) == 0 ? "\r\n" : "\n";
        }
        ASSERT_EQ(cellsOf(readCsv(bytes)), cells) << bytes;
    }
}

// Any bytes give a table within its bounds or the line of a trouble.
TEST(Csv, takesAnyBytes) {
    std::mt19937_64 random(sp::test::printedSeed());
    const std::string alphabet("a,;\t\"\r\n\xC3\x9F\xFF\0 ", 12);
    for (int round = 0; round < 20'000; ++round) {
        std::string bytes;
        for (auto length = random() % 40; length > 0; --length) bytes += alphabet[random() % alphabet.size()];
        const auto table = readCsv(bytes);
        if (!table) {
            EXPECT_GE(table.error().line, 1U);
            continue;
        }
        std::size_t line = 0;
        for (const auto& row : table->rows) {
            EXPECT_GT(row.line, line);
            line = row.line;
            EXPECT_FALSE(row.cells.empty());
        }
    }
}

} // namespace
