// SPDX-License-Identifier: MIT
#include "core/artwork/estimate.h"
#include "core/artwork/lattice_fill.h"
#include "core/artwork/messages.h"
#include "core/artwork/outline_run.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace sp::artwork {
namespace {

Shape rectangle(double width, double height) { return {{{{0, 0}, {width, 0}, {width, height}, {0, height}}}, false}; }

Shape disc(double radius, Point centre = {}) {
    Shape shape{{{}}, false};
    for (int i = 0; i < 1440; ++i) { // every 15 degrees exactly on the circle
        const double angle = i * std::numbers::pi / 720;
        shape.rings[0].push_back(centre + Point{radius * std::cos(angle), radius * std::sin(angle)});
    }
    return shape;
}

Estimate estimated(const Shape& shape, double diameter, StoneStyle style, double pitch = 0) {
    const auto estimate = estimateStones(
        std::span(&shape, 1),
        {support::decimalMm(diameter), support::decimalMm(pitch > 0 ? pitch : diameter), {}, style}, "shape");
    EXPECT_TRUE(estimate) << describe(estimate.error());
    return estimate.value_or(Estimate{});
}

/// The promises: count and places agree, no two stones overlap, every stone lies inside, the range holds the
/// count. `apart`: the least way between two centres, if not the diameter.
void expectSound(const Estimate& estimate, double diameter, double apart = 0) {
    EXPECT_EQ(estimate.count.value(), static_cast<std::int64_t>(estimate.centres.size()));
    EXPECT_LE(estimate.least, estimate.count);
    EXPECT_GE(estimate.most, estimate.count);
    for (std::size_t i = 0; i < estimate.centres.size(); ++i) {
        const Point p = estimate.centres[i];
        EXPECT_GE(p.x - diameter / 2, estimate.box.left - 0.005);
        EXPECT_LE(p.y + diameter / 2, estimate.box.bottom + 0.005);
        for (std::size_t j = 0; j < i; ++j)
            ASSERT_GE(distance(p, estimate.centres[j]), std::max(diameter, apart) - 1e-5);
    }
}

// OEIS A376215: discs of diameter 1 in an n x n square, the better of square rows and level honeycomb rows.
TEST(LatticeFill, reachesThePublishedRowFillOfSquares) {
    constexpr std::array<std::size_t, 20> kPublished = {1,   4,   9,   16,  25,  36,  49,  68,  85,  105,
                                                        126, 150, 175, 216, 247, 279, 314, 350, 389, 429};
    for (std::size_t n = 1; n <= kPublished.size(); ++n) {
        const auto estimate =
            estimated(rectangle(2.0 * static_cast<double>(n), 2.0 * static_cast<double>(n)), 2, StoneStyle::Fill);
        EXPECT_GE(estimate.centres.size(), kPublished[n - 1]) << n;
        EXPECT_LE(estimate.centres.size(), kPublished[n - 1] + kPublished[n - 1] / 20) << n; // turns and shifts may win
        expectSound(estimate, 2);
    }
}

// OEIS A023393: most unit circles in a circle of radius n (best known from n = 6 on). The sequence of plain
// lattices centred on a stone, 1, 7, 7, 19, 19, 37 ..., is what any fill must at least come near.
TEST(LatticeFill, staysBelowTheRecordsForCircles) {
    constexpr std::array<std::size_t, 12> kMax = {1, 2, 7, 11, 19, 27, 38, 50, 64, 80, 98, 118};
    for (std::size_t n = 1; n <= kMax.size(); ++n) {
        const auto estimate = estimated(disc(2.0 * static_cast<double>(n)), 4, StoneStyle::Fill);
        EXPECT_LE(estimate.centres.size(), kMax[n - 1]) << n;
        if (n > 2) {
            EXPECT_GE(static_cast<double>(estimate.centres.size()), 0.75 * static_cast<double>(kMax[n - 1])) << n;
        }
        expectSound(estimate, 4);
    }
}

// Wikipedia, "Circle packing in a circle": seven unit circles fit radius 3 exactly.
TEST(LatticeFill, findsTheSevenStonesThatJustFit) {
    EXPECT_EQ(estimated(disc(6), 4, StoneStyle::Fill).centres.size(), 7);
}

// Skiena, "The Algorithm Design Manual", plates: a 4 x 4 box holds 16 plates of radius 0.5 in a grid, 14 in
// dense rows.
TEST(LatticeFill, knowsThatHoneycombIsNotAlwaysBetter) {
    const auto estimate = estimated(rectangle(16, 16), 4, StoneStyle::Fill);
    EXPECT_EQ(estimate.centres.size(), 16);
    EXPECT_EQ(estimate.how, base::say(Note::SquareRows));
}

// Row formula for unit radius stones in a 100 x 60 rectangle: 1683 upright, 1682 turned; 686 in 50 x 50.
TEST(LatticeFill, meetsTheRowFormulaOfLargeRectangles) {
    EXPECT_GE(estimated(rectangle(100, 60), 2, StoneStyle::Fill).centres.size(), 1683);
    EXPECT_GE(estimated(rectangle(50, 50), 2, StoneStyle::Fill).centres.size(), 686);
}

struct PerSquareInch {
    const char* name;
    double diameter;
    double published;
};
void PrintTo(const PerSquareInch& row, std::ostream* out) { *out << row.name; }

// rhinestonesetc.com, stones per square inch: square packing at the middle diameter without any loss at the
// edge.
class TradeTable : public testing::TestWithParam<PerSquareInch> {};
TEST_P(TradeTable, liesBetweenSquareAndHoneycomb) {
    const auto& row = GetParam();
    const double inches = 10;
    const auto estimate = estimated(rectangle(inches * 25.4, inches * 25.4), row.diameter, StoneStyle::Fill);
    const double perInch = static_cast<double>(estimate.centres.size()) / (inches * inches);
    EXPECT_GT(perInch, row.published);
    EXPECT_LT(perInch, row.published * 2 / std::sqrt(3.0));
    EXPECT_LE(static_cast<double>(estimate.least.value()), row.published * inches * inches);
}
INSTANTIATE_TEST_SUITE_P(Published, TradeTable,
                         testing::Values(PerSquareInch{"SS12", 3.1, 67.14}, PerSquareInch{"SS16", 3.9, 42.41},
                                         PerSquareInch{"SS20", 4.7, 29.20}, PerSquareInch{"SS30", 6.4, 15.68}),
                         [](const auto& tested) { return tested.param.name; });

// A closed outline takes round(length / pitch) stones (common practice, no source).
TEST(OutlineRun, dividesACircleEvenly) {
    const auto estimate = estimated(disc(20 + 1.4), 2.8, StoneStyle::Outline, 3);
    EXPECT_EQ(estimate.centres.size(), std::llround(2 * std::numbers::pi * 20 / 3));
    expectSound(estimate, 2.8);
    for (const Point p : estimate.centres) EXPECT_NEAR(distance(p, {}), 20, 0.005);
}

TEST(OutlineRun, setsAStoneOnEveryCorner) {
    // Centres run along a square of 30 mm: ten steps a side, the corners shared.
    const auto estimate = estimated(rectangle(32.8, 32.8), 2.8, StoneStyle::Outline, 3);
    EXPECT_EQ(estimate.centres.size(), 40);
    for (const Point corner : {Point{1.4, 1.4}, Point{31.4, 1.4}, Point{31.4, 31.4}, Point{1.4, 31.4}}) {
        double nearest = 100;
        for (const Point p : estimate.centres) nearest = std::min(nearest, distance(p, corner));
        EXPECT_LT(nearest, 0.005);
    }
    expectSound(estimate, 2.8);
}

Shape moved(Shape shape, Point by) {
    for (auto& ring : shape.rings)
        for (auto& p : ring) p = p + by;
    return shape;
}

TEST(Estimate, givesEveryPieceRowsOfItsOwn) {
    // Two squares that hold 4 x 4 upright each, off one common grid.
    const std::array shapes{rectangle(8, 8), moved(rectangle(8, 8), {11.3, 0.7})};
    const auto estimate =
        estimateStones(shapes, {support::decimalMm(2), support::decimalMm(2), {}, StoneStyle::Fill}, "shape");
    ASSERT_TRUE(estimate);
    EXPECT_EQ(estimate->pieces, 2U);
    EXPECT_EQ(estimate->centres.size(), 32U);
    expectSound(*estimate, 2);
}

TEST(Estimate, aFrameIsOnePieceWithItsHole) {
    Shape frame = rectangle(30, 30);
    frame.rings.push_back({{10, 10}, {10, 20}, {20, 20}, {20, 10}});
    const std::array shapes{frame, moved(rectangle(4, 4), {13, 13})}; // and a square in the hole
    const auto estimate =
        estimateStones(shapes, {support::decimalMm(2), support::decimalMm(2), {}, StoneStyle::Fill}, "shape");
    ASSERT_TRUE(estimate);
    EXPECT_EQ(estimate->pieces, 2U);
    // 15 x 15 less the 5 x 5 of the hole, and 2 x 2 in it.
    EXPECT_GE(estimate->centres.size(), 225U - 25U + 4U);
    expectSound(*estimate, 2);
}

TEST(Estimate, saysWhichPiecesAreTooNarrowForAStone) {
    const std::array shapes{rectangle(20, 20), moved(rectangle(1, 20), {30, 0}), moved(rectangle(1, 20), {40, 0})};
    const auto estimate =
        estimateStones(shapes, {support::decimalMm(2), support::decimalMm(2), {}, StoneStyle::Fill}, "LLL");
    ASSERT_TRUE(estimate);
    EXPECT_EQ(estimate->bare, 2U);
    EXPECT_EQ(estimate->warning, base::say(Note::NarrowPieces, 2, 3, "LLL"));
}

TEST(Estimate, aNarrowPieceHasItsStonesInALine) {
    // A quarter ring 2.2 mm wide: no row of a lattice stays inside for long, a line along it does.
    Shape arc{{{}}, false};
    for (int i = 0; i <= 90; ++i) {
        const double angle = i * std::numbers::pi / 180;
        arc.rings[0].push_back({40 * std::cos(angle), 40 * std::sin(angle)});
    }
    for (int i = 90; i >= 0; --i) {
        const double angle = i * std::numbers::pi / 180;
        arc.rings[0].push_back({37.8 * std::cos(angle), 37.8 * std::sin(angle)});
    }
    const auto estimate = estimated(arc, 2, StoneStyle::Fill);
    // 38.9 mm times a quarter turn is 61 mm of centre line, less a stone: 29 stones at 2 mm, if one is lost.
    EXPECT_GE(estimate.centres.size(), 27U);
    EXPECT_EQ(estimate.how, base::say(Note::TooNarrowForRows));
    expectSound(estimate, 2);
}

TEST(Estimate, aShapeHoldsTheSameTurnedByAQuarter) {
    // 1683: rows across 100 mm, by the row formula; they stand across the turned one as well.
    EXPECT_EQ(estimated(rectangle(100, 60), 2, StoneStyle::Fill).count.value(), 1683);
    EXPECT_EQ(estimated(rectangle(60, 100), 2, StoneStyle::Fill).count.value(), 1683);
    std::mt19937_64 random(test::printedSeed());
    std::uniform_real_distribution<double> side(6, 90);
    for (int round = 0; round < 60; ++round) {
        const double width = side(random);
        const double height = side(random);
        const double pitch = 2 + static_cast<double>(round % 5);
        const auto upright = estimated(rectangle(width, height), 2, StoneStyle::Fill, pitch);
        const auto turned = estimated(rectangle(height, width), 2, StoneStyle::Fill, pitch);
        EXPECT_EQ(upright.count, turned.count) << width << " x " << height << " at " << pitch;
        expectSound(upright, 2, 0.75 * pitch); // as along an outline, however narrow
        expectSound(turned, 2, 0.75 * pitch);
        const auto outline = estimated(rectangle(width, height), 2, StoneStyle::Outline, pitch);
        EXPECT_GE(upright.count, outline.count) << width << " x " << height << " at " << pitch;
    }
}

// A ring as a letter has it: its band is two stones wide, so that rows lose at both edges what lines keep.
TEST(Estimate, aFillingNeverTakesFewerThanTheOutline) {
    for (const double width : {4.0, 5.6, 6.8, 8.4, 10.0, 13.0, 20.0}) {
        Shape ring = disc(25);
        ring.rings.push_back(disc(25 - width).rings[0]);
        ring.evenOdd = true;
        for (const double pitch : {2.8, 3.1, 3.6}) {
            const auto fill = estimated(ring, 2.8, StoneStyle::Fill, pitch);
            EXPECT_GE(fill.count, estimated(ring, 2.8, StoneStyle::Outline, pitch).count) << width << " at " << pitch;
            expectSound(fill, 2.8);
        }
    }
    Shape wide = disc(25);
    wide.rings.push_back(disc(25 - 13).rings[0]);
    wide.evenOdd = true;
    // Four lines of round(2 pi r / 3.1) stones at radii of 23.6 and 20.5, from the hole's edge 13.4 and 16.5.
    EXPECT_GE(estimated(wide, 2.8, StoneStyle::Fill, 3.1).count.value(), 48 + 42 + 27 + 33);
}

TEST(Estimate, setsNoMoreAlongANarrowShapeThanItsPitchAllows) {
    // Centres may lie in 2.84 x 32.79 mm. Oler (1961): at most 2/sqrt(3) A/d^2 + P/2d + 1 points d apart, 17.8 here.
    const auto narrow = estimated(rectangle(5.64, 35.59), 2.8, StoneStyle::Fill, 3.8);
    EXPECT_LE(narrow.count.value(), 17);
    EXPECT_GE(narrow.count.value(), 9); // one line of them
    // In a square whose diagonal is longer than the pitch and whose side is not three quarters of it, two.
    EXPECT_EQ(estimated(rectangle(46.4, 46.4), 2.8, StoneStyle::Fill, 60).count.value(), 2);
}

TEST(Estimate, setsBothWithoutCollisions) {
    const auto both = estimated(rectangle(60, 40), 2.8, StoneStyle::Both, 3);
    const auto outline = estimated(rectangle(60, 40), 2.8, StoneStyle::Outline, 3);
    EXPECT_GT(both.centres.size(), outline.centres.size());
    expectSound(both, 2.8);
}

TEST(Estimate, leavesHolesFree) {
    Shape ring = disc(20);
    ring.rings.push_back(disc(10).rings[0]);
    ring.evenOdd = true;
    const auto estimate = estimated(ring, 2.8, StoneStyle::Fill);
    EXPECT_NEAR(estimate.area, std::numbers::pi * 300, 0.1);
    for (const Point p : estimate.centres) EXPECT_GT(distance(p, {}), 11.39);
    expectSound(estimate, 2.8);
}

// Shapes that overlap are set once: two discs of radius 10, 10 apart, cover 2 pi r² less the lens
// 2 r² acos(d/2r) - d/2 sqrt(4 r² - d²) (elementary geometry).
TEST(Estimate, setsOverlappingShapesOnce) {
    const std::array<Shape, 2> shapes = {disc(10), disc(10, {10, 0})};
    const auto region = regionOf(shapes, "two");
    ASSERT_TRUE(region);
    const double lens = 200 * std::acos(0.5) - 5 * std::sqrt(300.0);
    EXPECT_NEAR(areaOf(*region), 200 * std::numbers::pi - lens, 0.05);
}

TEST(Estimate, neverLosesToThePlainGridNorBeatsTheDensityLimit) {
    std::mt19937_64 random(test::printedSeed());
    std::uniform_real_distribution<double> coordinate(0, 60);
    for (int i = 0; i < 12; ++i) {
        Shape shape{{{}}, true};
        for (int k = 0; k < 7; ++k) shape.rings[0].push_back({coordinate(random), coordinate(random)});
        const auto region = regionOf(std::span(&shape, 1), "scribble");
        ASSERT_TRUE(region);
        const auto fill = fillWithLattice(insetBy(*region, 0.95), 1.9, 100'000);
        EXPECT_GE(fill.centres.size(), fill.plainGrid);
        // No packing of a region is denser than pi / sqrt(12) (Thue; OEIS A337020 states the constant).
        const double covered = static_cast<double>(fill.centres.size()) * std::numbers::pi * 0.95 * 0.95;
        EXPECT_LE(covered, areaOf(*region) * std::numbers::pi / std::sqrt(12.0));
    }
}

struct Refusal {
    const char* name;
    Shape shape;
    double diameter;
    double pitch;
    base::Code code;
};
void PrintTo(const Refusal& row, std::ostream* out) { *out << row.name; }

class EstimateRefuses : public testing::TestWithParam<Refusal> {};
TEST_P(EstimateRefuses, inASentence) {
    const auto& row = GetParam();
    const auto estimate = estimateStones(
        std::span(&row.shape, 1),
        {support::decimalMm(row.diameter), support::decimalMm(row.pitch), {}, StoneStyle::Fill}, "logo.svg");
    ASSERT_FALSE(estimate);
    EXPECT_EQ(estimate.error().code, row.code) << describe(estimate.error());
}
Shape scribble(int corners) {
    Shape shape{{{}}, true};
    std::mt19937 random(5);
    std::uniform_real_distribution<double> coordinate(0, 100);
    for (int k = 0; k < corners; ++k) shape.rings[0].push_back({coordinate(random), coordinate(random)});
    return shape;
}
INSTANTIATE_TEST_SUITE_P(
    Shapes, EstimateRefuses,
    testing::Values(Refusal{"pitchBelowTheDiameter", rectangle(20, 20), 2.8, 2.7, base::Code::OutOfRange},
                    Refusal{"noDiameter", rectangle(20, 20), 0, 2, base::Code::OutOfRange},
                    Refusal{"tooThin", rectangle(20, 2), 2.8, 3, base::Code::Missing},
                    Refusal{"noShape", Shape{}, 2.8, 3, base::Code::Missing},
                    Refusal{"noArea", Shape{{{{0, 0}, {5, 5}}}, false}, 2.8, 3, base::Code::Missing},
                    Refusal{"twoKilometres", rectangle(2e6, 10), 2.8, 3, base::Code::OutOfRange},
                    Refusal{"tooManyStones", rectangle(5000, 5000), 1.9, 2, base::Code::TooLarge},
                    Refusal{"aHugeScribble", scribble(20'000), 1.9, 2, base::Code::TooLarge}),
    [](const auto& tested) { return tested.param.name; });

} // namespace
} // namespace sp::artwork
