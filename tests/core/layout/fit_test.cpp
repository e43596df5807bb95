// SPDX-License-Identifier: MIT
#include "core/layout/fit.h"

#include "tests/support/amounts.h"
#include "tests/support/layout_check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ostream>
#include <string>

using namespace sp::layout;
using sp::base::Code;
using sp::support::faultOf;
using sp::units::Length;
using testing::HasSubstr;

namespace {

using sp::support::mm;
using sp::support::nm;

Length in64(std::int64_t n) { return Length::fromInch64ths(n); }

struct Quadruple {
    const char* name;
    std::int64_t width, height, a, b, most;
};

void PrintTo(const Quadruple& row, std::ostream* out) { *out << row.name; }

class PublishedSheet : public testing::TestWithParam<Quadruple> {};

TEST_P(PublishedSheet, isFilledToItsOptimumAndProven) {
    const auto& row = GetParam();
    const Sheet sheet{mm(row.width), mm(row.height)};
    const Piece piece{mm(row.a), mm(row.b)};
    const auto fit = fitSheet(sheet, piece, {});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, row.most);
    EXPECT_EQ(fit->bound, row.most);
    EXPECT_TRUE(fit->proven);
    ASSERT_EQ(fit->positions.size(), static_cast<std::size_t>(row.most));
    EXPECT_EQ(faultOf(fit->positions, sheet, piece, {}), "");
}

// The test set of Birgin, Lobato and Morabito, JORS 61 (2010) 306-320 and of the papers it cites. The
// quadruples are from memory; each optimum stands by itself, since the layout is checked and Barnes' bound
// allows no more.
INSTANTIATE_TEST_SUITE_P(FiveBlock, PublishedSheet,
                         testing::Values(Quadruple{"40x25 of 7x3", 40, 25, 7, 3, 47},
                                         Quadruple{"52x33 of 9x4", 52, 33, 9, 4, 47},
                                         Quadruple{"57x44 of 12x5", 57, 44, 12, 5, 41}));
INSTANTIATE_TEST_SUITE_P(
    NeedsAnL, PublishedSheet,
    testing::Values(Quadruple{"43x26 of 7x3", 43, 26, 7, 3, 53}, Quadruple{"49x28 of 8x3", 49, 28, 8, 3, 57},
                    Quadruple{"74x49 of 11x4", 74, 49, 11, 4, 82}, Quadruple{"93x46 of 13x4", 93, 46, 13, 4, 82},
                    Quadruple{"106x59 of 13x5", 106, 59, 13, 5, 96}, Quadruple{"141x71 of 13x8", 141, 71, 13, 8, 96},
                    Quadruple{"74x46 of 7x5", 74, 46, 7, 5, 97}, Quadruple{"86x52 of 9x5", 86, 52, 9, 5, 99},
                    Quadruple{"108x65 of 10x7", 108, 65, 10, 7, 100}));

TEST(FitSheet, findsThePinwheelOfManyLongPieces) {
    // Barnes, 1979: r = 24, s = 22 leave (25 - 24)(25 - 22) = 3 cells of 149 x 147, so 21,900 / 25 = 876 at
    // most.
    const auto fit = fitSheet({mm(149), mm(147)}, {mm(25), mm(1)}, {});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 876);
    EXPECT_TRUE(fit->proven);
}

TEST(FitSheet, countsInchFractionsExactly) {
    // 24 x 3/64 in = 1 1/8 in, with nothing to spare.
    const auto fit = fitSheet({in64(72), in64(64)}, {in64(3), in64(64)}, {});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 24);
    const auto less = fitSheet({in64(72) - nm(1), in64(64)}, {in64(3), in64(64)}, {});
    ASSERT_TRUE(less.has_value());
    EXPECT_EQ(less->count, 23);
}

TEST(FitSheet, takesTheMarginOffEverySideAndTheGapOnlyBetween) {
    // By hand: 100 - 2 x 5 = 90 = 28 + 3 + 28 + 3 + 28 across, 50 - 10 = 40 high.
    const Sheet sheet{mm(100), mm(50)};
    const Piece piece{mm(28), mm(40)};
    const FitRules rules{mm(5), mm(3), true};
    const auto fit = fitSheet(sheet, piece, rules);
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 3);
    EXPECT_THAT(fit->positions,
                testing::UnorderedElementsAre(Position{mm(5), mm(5), false}, Position{mm(36), mm(5), false},
                                              Position{mm(67), mm(5), false}));
    const auto tighter = fitSheet({sheet.width - nm(1), sheet.height}, piece, rules);
    ASSERT_TRUE(tighter.has_value());
    EXPECT_EQ(tighter->count, 2);
}

TEST(FitSheet, turnsNothingOnOneWayMaterial) {
    const auto free = fitSheet({mm(50), mm(30)}, {mm(30), mm(25)}, {});
    ASSERT_TRUE(free.has_value());
    EXPECT_EQ(free->count, 2);
    const auto oneWay = fitSheet({mm(50), mm(30)}, {mm(30), mm(25)}, {{}, {}, true});
    ASSERT_TRUE(oneWay.has_value());
    EXPECT_EQ(oneWay->count, 1);
    EXPECT_TRUE(oneWay->proven);
}

TEST(FitSheet, fitsAPieceAsLargeAsTheUsablePart) {
    const auto fit = fitSheet({mm(30), mm(20)}, {mm(16), mm(26)}, {mm(2), mm(9)});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 1);
    EXPECT_TRUE(fit->proven);
    EXPECT_EQ(fit->positions, (std::vector<Position>{{mm(2), mm(2), true}}));
}

TEST(FitSheet, allowsAGapWiderThanThePiece) {
    const auto fit = fitSheet({mm(100), mm(10)}, {mm(4), mm(10)}, {{}, mm(20)});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 5); // 5 x 4 + 4 x 20 = 100
    EXPECT_TRUE(fit->proven);
}

TEST(FitSheet, listsNoMoreThanTheStatedPositions) {
    const Sheet sheet{mm(3000), mm(2000)};
    const Piece piece{mm(3), mm(2)};
    const auto fit = fitSheet(sheet, piece, {});
    ASSERT_TRUE(fit.has_value());
    EXPECT_EQ(fit->count, 1'000'000);
    EXPECT_TRUE(fit->proven);
    EXPECT_EQ(fit->positions.size(), static_cast<std::size_t>(kMaxPositions));
}

TEST(FitSheet, boundsVerySmallPiecesWithAwkwardSides) {
    const Sheet sheet{nm(2'000'000'011), nm(1'500'000'007)};
    const Piece piece{nm(2'900'003), nm(1'700'009)};
    const auto fit = fitSheet(sheet, piece, {mm(3), mm(1)});
    ASSERT_TRUE(fit.has_value());
    EXPECT_LE(fit->count, fit->bound);
    EXPECT_GT(fit->count * 1000, fit->bound * 990);
    ASSERT_EQ(fit->positions.size(), static_cast<std::size_t>(kMaxPositions));
    const std::vector<Position> first(fit->positions.begin(), fit->positions.begin() + 3000);
    EXPECT_EQ(faultOf(first, sheet, piece, {mm(3), mm(1)}), "");
}

TEST(FitSheet, laysNeedlesThatNoTileHolds) {
    const Sheet sheet{mm(300), mm(228)};
    const Piece piece{nm(1'000'003), nm(210'000'017)};
    const auto fit = fitSheet(sheet, piece, {});
    ASSERT_TRUE(fit.has_value());
    EXPECT_GE(fit->count, 299);
    EXPECT_EQ(faultOf(fit->positions, sheet, piece, {}), "");
}

struct Refusal {
    const char* name;
    Sheet sheet;
    Piece piece;
    FitRules rules;
    Code code;
    std::string subject;
    std::string says;
};

void PrintTo(const Refusal& row, std::ostream* out) { *out << row.name; }

class FitRefusal : public testing::TestWithParam<Refusal> {};

TEST_P(FitRefusal, isOnePlainSentence) {
    const auto& row = GetParam();
    const auto fit = fitSheet(row.sheet, row.piece, row.rules);
    ASSERT_FALSE(fit.has_value());
    EXPECT_EQ(fit.error().code, row.code);
    EXPECT_EQ(fit.error().subject, row.subject);
    EXPECT_EQ(describe(fit.error().message()), row.says);
}

const Sheet kSheet{in64(9 * 64), in64(12 * 64)};
const Piece kPiece{mm(40), mm(30)};
INSTANTIATE_TEST_SUITE_P(
    All, FitRefusal,
    testing::Values(
        Refusal{"no width", {mm(0), mm(9)}, kPiece, {}, Code::OutOfRange, "sheet width", "SheetWidthZero"},
        Refusal{"negative height", {mm(9), mm(-1)}, kPiece, {}, Code::OutOfRange, "sheet height", "SheetHeightZero"},
        Refusal{"no piece", kSheet, {mm(9), mm(0)}, {}, Code::OutOfRange, "piece height", "PieceHeightZero"},
        Refusal{"negative piece", kSheet, {mm(-4), mm(4)}, {}, Code::OutOfRange, "piece width", "PieceWidthZero"},
        Refusal{"negative margin", kSheet, kPiece, {mm(-1), {}}, Code::OutOfRange, "margin", "MarginNegative"},
        Refusal{"negative gap", kSheet, kPiece, {{}, nm(-1)}, Code::OutOfRange, "gap", "GapNegative"},
        Refusal{"beyond a kilometre",
                {sp::units::kMaxLength + nm(1), mm(9)},
                kPiece,
                {},
                Code::OutOfRange,
                "sheet width",
                "SheetWidthTooLong"},
        Refusal{"beyond all",
                {nm(INT64_MAX), nm(INT64_MAX)},
                kPiece,
                {nm(INT64_MAX), nm(INT64_MAX)},
                Code::OutOfRange,
                "sheet width",
                "SheetWidthTooLong"},
        Refusal{"absurd gap", kSheet, kPiece, {{}, nm(INT64_MAX)}, Code::OutOfRange, "gap", "GapTooLong"},
        Refusal{"margin eats the sheet",
                kSheet,
                kPiece,
                {in64(9 * 32), {}},
                Code::OutOfRange,
                "margin",
                "MarginLeavesNoSheet(114300000, 228600000 x 304800000)"},
        Refusal{"too large",
                kSheet,
                {mm(230), mm(305)},
                {},
                Code::TooLarge,
                "piece",
                "PieceTooLargeForSheet(230000000 x 305000000, 228600000 x 304800000)"},
        Refusal{"too large one way",
                kSheet,
                {mm(250), mm(100)},
                {{}, {}, true},
                Code::TooLarge,
                "piece",
                "PieceTooLargeForSheetOneWay(250000000 x 100000000, 228600000 x 304800000)"},
        Refusal{"too many",
                {mm(1000), mm(1000)},
                {nm(1000), nm(1000)},
                {},
                Code::TooLarge,
                "piece",
                "TooManyWouldFit(1000000000, 1000 x 1000)"}));

} // namespace
