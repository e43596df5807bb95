// SPDX-License-Identifier: MIT
#include "core/units/messages.h"
#include "text_cases.h"

#include "core/units/expression.h"

#include <cmath>

using namespace sp::units;
using namespace text_cases;

namespace {

/// A random expression and what it comes to in the floating point of the machine, which knows nothing of
/// ours.
struct Sample {
    std::string text;
    double value = 0;
};

Sample number(std::mt19937_64& random) {
    const auto whole = random() % 1000;
    const auto broken = random() % 100;
    return {fmt::format("{}.{:02}", whole, broken), static_cast<double>(whole) + static_cast<double>(broken) / 100};
}

Sample sample(std::mt19937_64& random, int depth) {
    if (depth == 0) return number(random);
    const Sample a = sample(random, depth - 1);
    const Sample b = sample(random, depth - 1);
    switch (random() % 4) {
    case 0: return {fmt::format("({} + {})", a.text, b.text), a.value + b.value};
    case 1: return {fmt::format("({} - {})", a.text, b.text), a.value - b.value};
    case 2: return {fmt::format("{} * {}", a.text, b.text), a.value * b.value};
    default: return {fmt::format("{} / ({})", a.text, b.text), a.value / b.value};
    }
}

TEST(Expression, agreesWithTheMachinesFloatingPoint) {
    std::mt19937_64 random(sp::test::printedSeed());
    const Grammar grammar{.kind = Note::ACount,
                          .example = Note::CountExample,
                          .unitHelp = sp::base::say(Note::CountUnits),
                          .units = {},
                          .bareSize = 1};
    int compared = 0;
    for (int i = 0; i < 5000; ++i) {
        const Sample one = sample(random, 1 + i % 3);
        const auto typed = takeIn(one.text, grammar);
        ASSERT_TRUE(typed.has_value()) << one.text;
        const auto value = evaluate(*typed, typed->folded.size(), grammar, kEnglish);
        if (!std::isfinite(one.value) || std::abs(one.value) > 1e12 || std::abs(one.value) < 1e-6) continue;
        ASSERT_TRUE(value.has_value()) << one.text << ": " << describe(value.error());
        EXPECT_NEAR(value->approximate() / one.value, 1.0, 1e-6) << one.text;
        ++compared;
    }
    EXPECT_GT(compared, 4000);
}

TEST(Expression, addsFractionsOverTheirCommonDenominator) {
    const Grammar grammar{.kind = Note::ACount,
                          .example = Note::CountExample,
                          .unitHelp = sp::base::say(Note::CountUnits),
                          .units = {},
                          .bareSize = 1};
    const auto typed = takeIn("0.0000000000000000000000000001 + 0.00000000000000000000000000001*90", grammar);
    ASSERT_TRUE(typed.has_value());
    const auto value = evaluate(*typed, typed->folded.size(), grammar, kEnglish);
    ASSERT_TRUE(value.has_value()) << describe(value.error());
    EXPECT_TRUE(*value * Fraction::of(1'000'000'000) * Fraction::of(1'000'000'000) * Fraction::of(1'000'000'000) ==
                Fraction::of(1));
}

} // namespace
