// SPDX-License-Identifier: MIT
#include "core/needs/requirements.h"
#include "tests/support/cost_cases.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::needs {

namespace {

using catalogue::Step;
using sample::idOf;
using units::Duration;
using units::Fraction;

Requirements of(const catalogue::OrderLine& line, const catalogue::PriceBook& book, std::int64_t pieces) {
    layout::FitMemo fits;
    auto takes = requirementsOf(line, book, pieces, fits);
    EXPECT_TRUE(takes.has_value()) << (takes ? "" : describe(takes.error()));
    return takes.value_or(Requirements{});
}

// By hand, 25 pieces of 3 1/2 × 2 3/4 in: 212 × 25 / 0.98 stones; 13 pieces of tape at two lifts; two templates, one a
// colour. 9 × 12 in takes ten of them (the pinwheel's bound: 108 / 9.625 = 11.2; rows of three by 2 3/4 and of two by
// 3 1/2 across 9 in). The platen of 16 × 20 in takes 32 (area: 33.2), so one cycle. 25 s × 2 colours + 30 s × 3.08 are
// 142.4 s of brushing a piece.
TEST(Requirements, answerForTheWholeLine) {
    const auto takes = of(sample::lantern(25), sample::priceBook(), 25);
    EXPECT_EQ(takes.stones(0), Fraction::ratio(212 * 25 * 100, 98));
    EXPECT_EQ(takes.places[0].tape.use.cut, 13);
    EXPECT_EQ(takes.places[0].tape.paidByPosition, Fraction::ratio(25, 2));
    EXPECT_EQ(takes.places[0].templates.use.cut, 2);
    EXPECT_EQ(takes.places[0].templates.use.sheets, 1);
    EXPECT_EQ(takes.places[0].backing.use.cut, 25);
    EXPECT_EQ(takes.places[0].backing.use.perSheet, 10);
    EXPECT_EQ(takes.places[0].backing.use.sheets, 3);
    EXPECT_EQ(takes.places[0].press.cycles, 1);
    EXPECT_EQ(takes.holes(), 308);
    EXPECT_EQ(takes.bench.of(Step::Brush), Duration::fromMilliseconds(142'400 * 25));
    EXPECT_EQ(takes.bench.of(Step::Art), Duration::fromMinutes(15));
    EXPECT_EQ(takes.materials.packing.size(), 1U);
}

TEST(Requirements, areOfThePiecesAskedForNotOfTheLines) {
    const auto book = sample::priceBook();
    for (const auto& made : sample::costCases()) {
        auto other = made.line;
        other.quantity = units::Count::of(70);
        const auto asked = of(made.line, made.book, 70);
        const auto own = of(other, made.book, 70);
        EXPECT_EQ(asked.stones(0), own.stones(0)) << made.name;
        EXPECT_EQ(asked.places[0].tape.use, own.places[0].tape.use) << made.name;
        EXPECT_EQ(asked.places[0].backing.use, own.places[0].backing.use) << made.name;
        EXPECT_EQ(asked.places[0].press.cycles, own.places[0].press.cycles) << made.name;
        EXPECT_EQ(asked.bench, own.bench) << made.name;
    }
}

TEST(Requirements, ofTemplatesOnTheWallHaveNothingCut) {
    auto line = sample::lantern();
    line.first().templatesOnWall = true;
    const auto takes = of(line, sample::priceBook(), 24);
    EXPECT_EQ(takes.places[0].templates.use, SheetUse{});
    EXPECT_EQ(takes.holes(), 0);
    EXPECT_EQ(takes.bench.oncePerJob(), Duration{});
}

TEST(Requirements, cutTheHolesOfEveryPlace) {
    auto line = sample::lantern();
    const auto one = of(line, sample::priceBook(), 24);
    line.places.push_back(line.places[0]);
    line.places[1].stones.pop_back();
    const auto both = of(line, sample::priceBook(), 24);
    ASSERT_EQ(both.places.size(), 2U);
    EXPECT_GT(both.places[1].holes, 0);
    EXPECT_EQ(both.holes(), one.holes() + both.places[1].holes);
}

// By hand: one garment under the platen at a time, so 24 cycles; a piece of 18 × 21 in on 16 × 20 in takes two by two
// presses, and turned (21 over 16, 18 over 20) two by one: seven pieces take 14.
TEST(Requirements, countPressCycles) {
    auto line = sample::lantern(24);
    line.baseMaterial = idOf("Hoodie");
    EXPECT_EQ(of(line, sample::priceBook(), 24).places[0].press.cycles, 24);
    for (const auto& made : sample::costCases()) {
        if (made.name != "larger than the platen") continue;
        const auto takes = of(made.line, made.book, 7);
        EXPECT_EQ(takes.places[0].press.pressesPerPiece, 2);
        EXPECT_EQ(takes.places[0].press.cycles, 14);
    }
}

// By hand: on a roll 12 in wide, pieces of 3 3/4 × 3 in (border 1/8 in all round) with 1/16 in between lie three across
// at 3 3/4 in; eight rows of 3 in and seven gaps are 24 7/16 in. By area 24 backings take no less than
// 24 × 3 3/4 × 3 / 12 = 22 1/2 in.
TEST(Requirements, cutARollToLength) {
    for (const auto& made : sample::costCases()) {
        if (made.name != "rolls") continue;
        const auto takes = of(made.line, made.book, 24);
        EXPECT_EQ(takes.places[0].backing.use.perSheet, 0);
        EXPECT_LE(takes.places[0].backing.use.rollLength, units::Length::fromInch64ths(24 * 64 + 28));
        EXPECT_GE(takes.places[0].backing.use.rollLength, units::Length::fromInch64ths(22 * 64 + 32));
    }
}

TEST(Requirements, takeAsManyColoursAsADesignMayHave) {
    auto book = sample::priceBook();
    auto line = sample::square(1);
    line.first().stones.clear();
    const auto addColour = [&] {
        const auto id = idOf(("Colour " + std::to_string(line.first().stones.size())).c_str());
        book.materials[id] = book.materials[idOf("Aqua")];
        line.first().stones.push_back({id, units::Count::of(1)});
    };
    layout::FitMemo fits;
    for (std::int64_t i = 0; i < catalogue::kMaxColours; ++i) addColour();
    EXPECT_TRUE(requirementsOf(line, book, 1, fits).has_value());
    addColour();
    const auto refused = requirementsOf(line, book, 1, fits);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, base::Code::OutOfRange);
}

TEST(Requirements, refuseANumberOfPiecesBeyondALine) {
    layout::FitMemo fits;
    for (const std::int64_t pieces : {std::int64_t{0}, std::int64_t{-1}, catalogue::kMaxPieces + 1}) {
        const auto takes = requirementsOf(sample::lantern(), sample::priceBook(), pieces, fits);
        ASSERT_FALSE(takes.has_value()) << pieces;
        EXPECT_EQ(takes.error().code, base::Code::OutOfRange);
    }
}

} // namespace

} // namespace sp::needs
