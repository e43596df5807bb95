// SPDX-License-Identifier: MIT
#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <ostream>

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

} // namespace
