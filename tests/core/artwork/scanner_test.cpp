// SPDX-License-Identifier: MIT
// Numbers as SVG 1.1 writes them (section 4.2 and the grammar of path data, 8.3.9), against the C library's strtod.
#include "core/artwork/scanner.h"
#include "tests/support/seed.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace sp::artwork {
namespace {

std::vector<double> numbersIn(std::string_view text) {
    Scanner scanner(text);
    std::vector<double> values;
    while (const auto value = scanner.number()) values.push_back(*value);
    EXPECT_TRUE(scanner.isDone()) << text << ": " << scanner.rest();
    return values;
}

TEST(Scanner, partsNumbersAsTheGrammarDoes) {
    const std::vector<double> two{1, -2};
    for (const char* text : {"1-2", "1,-2", " 1 , -2 ", "1\n-2", "1.-2.", "+1-2", "1e0-2E0"})
        EXPECT_EQ(numbersIn(text), two) << text;
    EXPECT_EQ(numbersIn("1.5.5-.25"), (std::vector<double>{1.5, 0.5, -0.25}));
}

TEST(Scanner, takesNothingThatIsNoNumber) {
    for (const char* text : {"", " ", "-", ".", "-.", "+", "e5", "inf", "nan", "-inf", "x", "--1", "+-1", "1e10",
                             "-1e10", "1000000001", "1e400", "1x", "1 2"})
        EXPECT_FALSE(numberFrom(text)) << text;
    EXPECT_EQ(numberFrom("1000000000"), kMaxNumber);
    EXPECT_EQ(numberFrom("1e-400"), 0.0);
}

TEST(Scanner, leavesAnExponentThatIsNoneToWhatFollows) {
    Scanner scanner("1em");
    EXPECT_EQ(scanner.number(), 1.0);
    EXPECT_EQ(scanner.rest(), "em");
}

TEST(Scanner, roundsEveryDecimalAsTheCLibraryDoes) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::uint64_t most) { return random() % (most + 1); };
    for (int round = 0; round < 200'000; ++round) {
        std::string text = upTo(2) == 0 ? "-" : "";
        const auto whole = upTo(11);
        const auto decimals = std::max<std::uint64_t>(upTo(18), whole == 0 ? 1 : 0);
        for (std::uint64_t i = 0; i < whole; ++i) text += static_cast<char>('0' + upTo(9));
        if (decimals > 0 || upTo(3) == 0) text += '.';
        for (std::uint64_t i = 0; i < decimals; ++i) text += static_cast<char>('0' + upTo(9));
        if (upTo(9) == 0) text += "e" + std::to_string(static_cast<int>(upTo(30)) - 25);
        const double expected = std::strtod(text.c_str(), nullptr);
        // What follows must not change what is read.
        for (const char* after : {"", " 7", ",7", "-7", "z"}) {
            const auto more = text + after;
            Scanner scanner(more);
            const auto value = scanner.number();
            if (!(std::abs(expected) <= kMaxNumber)) {
                EXPECT_FALSE(value) << more;
                continue;
            }
            ASSERT_TRUE(value) << more;
            EXPECT_EQ(*value, expected) << more;
            EXPECT_EQ(scanner.rest(), *after == ' ' || *after == ',' ? "7" : after) << more;
        }
    }
}

TEST(Scanner, takesFlagsWithoutSeparators) {
    Scanner scanner("01 0,1x");
    std::string flags;
    for (bool flag = false; scanner.flag(flag);) flags += flag ? '1' : '0';
    EXPECT_EQ(flags, "0101");
    EXPECT_EQ(scanner.rest(), "x");
}

} // namespace
} // namespace sp::artwork
