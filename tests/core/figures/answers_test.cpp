// SPDX-License-Identifier: MIT
#include "core/figures/answers.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

#include <array>

namespace {

using namespace sp;
using figures::Answer;
using figures::Answers;
using figures::OfferedLine;
using units::Count;
using units::Money;

OfferedLine offer(std::int64_t quantity, std::int64_t cents, Answer answer) {
    return {Count::of(quantity), Money::fromMicros(cents * 10'000), answer};
}

using sp::support::cents;

// Does 24 at 7.10 lose more than at 6.60? Invented.
TEST(AnswersTo, tellsTheMiddlePriceThatWasTakenFromTheOneThatWasNot) {
    const std::vector<OfferedLine> lines{
        offer(24, 660, Answer::Won),  offer(30, 640, Answer::Won),  offer(47, 680, Answer::Won),
        offer(24, 710, Answer::Lost), offer(25, 690, Answer::Lost), offer(12, 800, Answer::Open),
        offer(23, 750, Answer::Won),  offer(48, 500, Answer::Open),
    };
    const auto answers = figures::answersTo(lines, std::array{Count::of(12), Count::of(24), Count::of(48)});
    ASSERT_EQ(answers.size(), 3U); // nobody asked for less than 12
    EXPECT_EQ(answers[0], (Answers{{Count::of(12), Count::of(23)}, 1, 0, 1, cents(750), std::nullopt}));
    EXPECT_EQ(answers[1], (Answers{{Count::of(24), Count::of(47)}, 3, 2, 0, cents(660), cents(690)}));
    EXPECT_EQ(answers[2], (Answers{{Count::of(48), std::nullopt}, 0, 0, 1, std::nullopt, std::nullopt}));
    EXPECT_EQ(answers[1].shareWon(), units::Rate::fromPercent(60));
    EXPECT_EQ(answers[0].shareWon(), units::Rate::fromPercent(100));
    EXPECT_EQ(answers[2].shareWon(), std::nullopt);
}

} // namespace
