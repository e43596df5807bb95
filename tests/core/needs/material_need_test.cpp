// SPDX-License-Identifier: MIT
#include "core/needs/material_need.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

namespace sp::needs {

namespace {

using units::Count;
using units::Fraction;
using units::Rate;

struct Row {
    const char* name;
    MaterialNeed need;
    std::int64_t pieces;
    std::int64_t cuts;
    std::int64_t whole;

    friend void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }
};

class MaterialNeedOf : public testing::TestWithParam<Row> {};

TEST_P(MaterialNeedOf, isCountedByItsRule) {
    const auto& row = GetParam();
    EXPECT_EQ(cutsFor(row.need, row.pieces), row.cuts);
    EXPECT_EQ(wholeFor(row.need, row.pieces), row.whole);
}

// All by hand: 212 × 24 / 0.98 = 5,191.8; 49 × 2 / 0.98 = 100 exactly; 25 pieces on tape of 2 lifts are 13 cuts, on
// sheets of 6 that is 3; 24 are 12 cuts and 2 sheets.
INSTANTIATE_TEST_SUITE_P(
    Rows, MaterialNeedOf,
    testing::Values(
        Row{"stones with loss", {NeedKind::Stones, Count::of(212), Rate::fromPercent(2)}, 24, 0, 5'192},
        Row{"stones that come out even", {NeedKind::Stones, Count::of(49), Rate::fromPercent(2)}, 2, 0, 100},
        Row{"stones without loss", {NeedKind::Stones, Count::of(7)}, 3, 0, 21},
        Row{"tape of two lifts", {.kind = NeedKind::Cuts, .lifts = 2, .perSheet = 6}, 25, 13, 3},
        Row{"tape that comes out even", {.kind = NeedKind::Cuts, .lifts = 2, .perSheet = 6}, 24, 12, 2},
        Row{"backing", {.kind = NeedKind::Cuts, .perSheet = 10}, 24, 24, 3},
        Row{"templates, whatever the pieces", {.kind = NeedKind::Templates, .perSheet = 2, .cuts = 3}, 500, 3, 2},
        Row{"templates on the wall", {.kind = NeedKind::Templates}, 24, 0, 0},
        Row{"ready cut", {.kind = NeedKind::ReadyCut}, 24, 0, 1}, Row{"blanks", {.kind = NeedKind::Things}, 24, 0, 24},
        Row{"three bags a piece", {.kind = NeedKind::Things, .perPiece = Count::of(3)}, 24, 0, 72},
        Row{"boxes for the order", {.kind = NeedKind::ForOrder, .perPiece = Count::of(2)}, 24, 0, 2}));

TEST(MaterialNeed, stonesStayExact) {
    const MaterialNeed need{NeedKind::Stones, Count::of(212), Rate::fromPercent(2)};
    EXPECT_EQ(takenFor(need, 24), Fraction::ratio(212 * 24 * 100, 98));
}

TEST(MaterialNeed, isReadOffTheMaterial) {
    const auto book = sample::priceBook();
    const auto of = [&](const char* name) -> const catalogue::Material& {
        return book.find(sample::idOf(name))->material;
    };
    auto line = sample::lantern();
    EXPECT_EQ(needOfStone(Count::of(5), of("Jet")),
              (MaterialNeed{NeedKind::Stones, Count::of(5), Rate::fromPercent(2)}));
    EXPECT_EQ(needOfTape(of("Tape")), (MaterialNeed{.kind = NeedKind::Cuts, .lifts = 2}));
    EXPECT_EQ(needOfBase(of("Backing")).kind, NeedKind::Cuts);
    EXPECT_EQ(needOfBase(of("Hoodie")).kind, NeedKind::Things);
    EXPECT_EQ(needOfTemplates(line.first()).cuts, 2);
    line.first().templatesOnWall = true;
    EXPECT_EQ(needOfTemplates(line.first()).cuts, 0);
}

// A law: more pieces never take less, and n pieces of two lines never less than all of them in one.
TEST(MaterialNeed, neverFallsAndIsNeverLessApart) {
    std::mt19937_64 random(test::printedSeed());
    const auto pick = [&](std::int64_t least, std::int64_t most) {
        return std::uniform_int_distribution<std::int64_t>(least, most)(random);
    };
    for (int round = 0; round < 1'000; ++round) {
        const MaterialNeed need{static_cast<NeedKind>(pick(0, 5)),
                                Count::of(pick(1, 500)),
                                Rate::fromPpm(pick(0, 400'000)),
                                pick(1, 5),
                                pick(1, 30),
                                pick(0, 6)};
        const auto a = pick(1, 2'000);
        const auto b = pick(1, 2'000);
        EXPECT_LE(wholeFor(need, a), wholeFor(need, a + b));
        EXPECT_LE(cutsFor(need, a), cutsFor(need, a + b));
        EXPECT_GE(wholeFor(need, a) + wholeFor(need, b), wholeFor(need, a + b));
    }
}

} // namespace

} // namespace sp::needs
