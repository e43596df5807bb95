// SPDX-License-Identifier: MIT
#include "core/supply/csv.h"
#include "core/supply/messages.h"

#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <ostream>

namespace {

using namespace sp;
using base::Code;
using Cells = std::vector<std::vector<std::string>>;

Cells cellsOf(const base::Result<supply::CsvTable>& table) {
    Cells cells;
    if (!table) return {{"refused", describe(table.error())}};
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

TEST_P(CsvExample, isReadAsItSays) {
    EXPECT_EQ(cellsOf(supply::readCsv(GetParam().bytes, "list.csv")), GetParam().cells);
}

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
    const auto table = supply::readCsv("a,b\r\n\r\n\"x\r\ny\n\",1\nlast,2", "list.csv").value();
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[0].line, 1U);
    EXPECT_EQ(table.rows[1].line, 3U);
    EXPECT_EQ(table.rows[2].line, 6U);
}

TEST(Csv, refusesWhatItCannotReadInOneSentence) {
    const auto errorOf = [](const std::string& bytes) { return supply::readCsv(bytes, "list.csv").error(); };
    EXPECT_EQ(errorOf("a,b\n\"c,d"), base::makeError(supply::Fault::QuoteNotClosed, "list.csv", 2, "list.csv"));
    EXPECT_EQ(errorOf("a,b\n\"c\"d,e"), base::makeError(supply::Fault::TextAfterQuote, "list.csv", 2, "list.csv"));
    EXPECT_EQ(errorOf("caf\xE9,1"), base::makeError(supply::Fault::NotUtf8, "list.csv", "list.csv"));
    EXPECT_EQ(errorOf(std::string("a\0b", 3)).code, Code::Invalid);
    EXPECT_EQ(errorOf(std::string(supply::kLargestCsv + 1, 'a')).code, Code::TooLarge);
    EXPECT_EQ(errorOf(std::string(supply::kLongestCsvCell + 1, 'a')).code, Code::TooLarge);
    EXPECT_EQ(errorOf(std::string(supply::kMostCsvCells, ',')).code, Code::TooLarge);
    std::string rows;
    for (std::size_t i = 0; i <= supply::kMostCsvRows; ++i) rows += "a\n";
    EXPECT_EQ(errorOf(rows).code, Code::TooLarge);
}

// Whatever is written by the rules is read back; the first row keeps plain cells so that the separator is known.
TEST(Csv, readsBackWhatWasWritten) {
    std::mt19937_64 random(test::printedSeed());
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
        ASSERT_EQ(cellsOf(supply::readCsv(bytes, "list.csv")), cells) << bytes;
    }
}

// Any bytes give a table within its bounds or one sentence.
TEST(Csv, takesAnyBytes) {
    std::mt19937_64 random(test::printedSeed());
    const std::string alphabet("a,;\t\"\r\n\xC3\x9F\xFF\0 ", 12);
    for (int round = 0; round < 20'000; ++round) {
        std::string bytes;
        for (auto length = random() % 40; length > 0; --length) bytes += alphabet[random() % alphabet.size()];
        const auto table = supply::readCsv(bytes, "list.csv");
        if (!table) {
            EXPECT_FALSE(describe(table.error()).empty());
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
