// SPDX-License-Identifier: MIT
#include "core/artwork/dxf_reader.h"
#include "core/artwork/region.h"
#include "tests/support/described.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace sp::artwork {
namespace {

using testing::ElementsAre;
using testing::Pair;

/// "0 CIRCLE 8 A 10 5" as pairs on lines; values hold no blanks.
std::string pairs(std::string text) {
    std::replace(text.begin(), text.end(), ' ', '\n');
    return text + "\n";
}

std::string file(const std::string& entities, const std::string& blocks = {}, const std::string& header = {}) {
    return pairs("0 SECTION 2 HEADER") + (header.empty() ? "" : pairs(header)) +
           pairs("0 ENDSEC 0 SECTION 2 TABLES 0 TABLE 2 LAYER 0 LAYER 2 GOLD 62 2 70 0 0 LAYER 2 OFF 62 -3 "
                 "70 0 "
                 "0 LAYER 2 ICE 62 3 70 1 0 ENDTAB 0 ENDSEC") +
           (blocks.empty() ? "" : pairs("0 SECTION 2 BLOCKS " + blocks + " 0 ENDSEC")) + pairs("0 SECTION 2 ENTITIES") +
           (entities.empty() ? "" : pairs(entities)) + pairs("0 ENDSEC 0 EOF");
}

Drawing readDxfText(const std::string& text) {
    const auto drawing = readDxf(text, "test.dxf");
    EXPECT_TRUE(drawing) << describe(drawing.error());
    return drawing.value_or(Drawing{});
}

struct OneDiscOfDxf {
    const char* name;
    const char* entities;
    Point centre; ///< y upwards, as in the file
    double radius;
    const char* colour = "#000000";
};
void PrintTo(const OneDiscOfDxf& row, std::ostream* out) { *out << row.name; }
class DxfDisc : public testing::TestWithParam<OneDiscOfDxf> {};
TEST_P(DxfDisc, standsWhereTheFileSays) {
    const auto& row = GetParam();
    const std::string block = "0 BLOCK 2 HOLE 10 1 20 0 0 CIRCLE 8 0 62 0 10 2 20 0 40 1 0 ENDBLK";
    const Drawing drawing = readDxfText(file(row.entities, block));
    ASSERT_EQ(drawing.discs.size(), 1);
    const Disc& disc = drawing.discs[0];
    EXPECT_NEAR(disc.centre.x, row.centre.x, 0.002);
    EXPECT_NEAR(disc.centre.y, -row.centre.y, 0.002);
    EXPECT_NEAR(disc.radius, row.radius, 0.002);
    EXPECT_EQ(drawing.inks[disc.ink].colour, row.colour);
}
// DXF reference, group codes of the entities; a bulge is tan(angle / 4), so two bulges of 1 make a circle.
INSTANTIATE_TEST_SUITE_P(
    Entities, DxfDisc,
    testing::Values(
        OneDiscOfDxf{"circle", "0 CIRCLE 8 0 10 5 20 6 40 1.4", {5, 6}, 1.4},
        OneDiscOfDxf{"colourOfItsOwn", "0 CIRCLE 8 0 62 1 10 5 20 6 40 1.4", {5, 6}, 1.4, "#ff0000"},
        OneDiscOfDxf{"trueColour", "0 CIRCLE 8 0 62 1 420 2046611 10 5 20 6 40 1.4", {5, 6}, 1.4, "#1f3a93"},
        OneDiscOfDxf{"colourByLayer", "0 CIRCLE 8 GOLD 10 5 20 6 40 1.4", {5, 6}, 1.4, "#ffff00"},
        OneDiscOfDxf{"seenFromBelow", "0 CIRCLE 8 0 10 5 20 6 40 1.4 210 0 220 0 230 -1", {-5, 6}, 1.4},
        OneDiscOfDxf{
            "halfArcs", "0 ARC 8 0 10 5 20 6 40 1.4 50 0 51 180 0 ARC 8 0 10 5 20 6 40 1.4 50 180 51 360", {5, 6}, 1.4},
        OneDiscOfDxf{"threeArcs",
                     "0 ARC 8 0 10 5 20 6 40 1 50 300 51 60 0 ARC 8 0 10 5 20 6 40 1 50 60 51 200 0 ARC 8 0 10 5 "
                     "20 6 40 1 50 "
                     "200 51 300",
                     {5, 6},
                     1},
        OneDiscOfDxf{"wholeArc", "0 ARC 8 0 10 5 20 6 40 1.4 50 90 51 450", {5, 6}, 1.4},
        OneDiscOfDxf{"bulges", "0 LWPOLYLINE 8 0 90 2 70 1 10 4 20 6 42 1 10 6 20 6 42 1", {5, 6}, 1},
        OneDiscOfDxf{"bulgesBackwards", "0 LWPOLYLINE 8 0 90 2 70 1 10 4 20 6 42 -1 10 6 20 6 42 -1", {5, 6}, 1},
        OneDiscOfDxf{"quarterBulges",
                     "0 LWPOLYLINE 8 0 70 1 10 6 20 6 42 0.41421356 10 5 20 7 42 0.41421356 10 4 20 6 42 "
                     "0.41421356 10 5 20 5 "
                     "42 0.41421356",
                     {5, 6},
                     1},
        OneDiscOfDxf{"oldPolyline",
                     "0 POLYLINE 8 0 66 1 70 1 0 VERTEX 8 0 10 4 20 6 42 1 0 VERTEX 8 0 10 6 20 6 42 1 0 SEQEND",
                     {5, 6},
                     1},
        OneDiscOfDxf{"roundEllipse", "0 ELLIPSE 8 0 10 5 20 6 11 0 21 2 40 1 41 0 42 6.283185307179586", {5, 6}, 2},
        OneDiscOfDxf{"insert", "0 INSERT 8 0 2 HOLE 10 10 20 20", {11, 20}, 1},
        OneDiscOfDxf{"insertScaledAndTurned", "0 INSERT 8 0 2 HOLE 10 10 20 20 41 3 42 3 50 90", {10, 23}, 3},
        OneDiscOfDxf{"insertGivesItsColour", "0 INSERT 8 0 62 5 2 HOLE 10 10 20 20", {11, 20}, 1, "#0000ff"},
        OneDiscOfDxf{
            "solidHatchOfACircle",
            "0 HATCH 8 0 62 1 10 0 20 0 30 0 2 SOLID 70 1 71 0 91 1 92 1 93 1 72 2 10 5 20 6 40 1.4 50 0 51 360 73 1 "
            "97 0 75 0 76 1 98 1 10 5 20 6",
            {5, 6},
            1.4,
            "#ff0000"},
        OneDiscOfDxf{
            "solidHatchOfBulges",
            "0 HATCH 8 0 10 0 20 0 30 0 2 SOLID 70 1 71 0 91 1 92 3 72 1 73 1 93 2 10 4 20 6 42 1 10 6 20 6 42 1 97 0",
            {5, 6},
            1},
        OneDiscOfDxf{"solidHatchOfTwoArcsToTheRight",
                     "0 HATCH 8 0 10 0 20 0 30 0 2 SOLID 70 1 71 0 91 1 92 1 93 2 72 2 10 5 20 6 40 1 50 0 51 180 73 0 "
                     "72 2 10 5 20 6 40 1 50 180 51 360 73 0 97 0",
                     {5, 6},
                     1},
        // A rational quadratic spline of nine points is an exact circle (Piegl and Tiller, The NURBS Book,
        // section 7.5).
        OneDiscOfDxf{"spline",
                     "0 SPLINE 8 0 70 13 71 2 40 0 40 0 40 0 40 1 40 1 40 2 40 2 40 3 40 3 40 4 40 4 40 4 "
                     "10 1 20 0 41 1 10 1 20 1 41 0.70710678 10 0 20 1 41 1 10 -1 20 1 41 0.70710678 10 -1 20 0 41 1 "
                     "10 -1 20 -1 41 0.70710678 10 0 20 -1 41 1 10 1 20 -1 41 0.70710678 10 1 20 0 41 1",
                     {0, 0},
                     1}),
    [](const auto& tested) { return tested.param.name; });

TEST(DxfReader, repeatsInsertsInRowsAndColumns) {
    const Drawing drawing = readDxfText(file("0 INSERT 8 0 2 B 10 0 20 0 70 4 71 3 44 5 45 7",
                                             "0 BLOCK 2 B 10 0 20 0 0 CIRCLE 8 0 10 0 20 0 40 1 0 ENDBLK"));
    ASSERT_EQ(drawing.discs.size(), 12);
    Box box;
    for (const Disc& disc : drawing.discs) box.add(disc.centre);
    EXPECT_EQ(box.width(), 15);
    EXPECT_EQ(box.height(), 14);
}

TEST(DxfReader, nestsBlocks) {
    const Drawing drawing =
        readDxfText(file("0 INSERT 8 TOP 2 OUTER 10 0 20 0 41 2 42 2",
                         "0 BLOCK 2 INNER 10 0 20 0 0 CIRCLE 8 0 10 1 20 0 40 1 0 ENDBLK "
                         "0 BLOCK 2 OUTER 10 0 20 0 0 INSERT 8 0 2 INNER 10 3 20 0 50 180 0 ENDBLK"));
    ASSERT_EQ(drawing.discs.size(), 1);
    EXPECT_NEAR(drawing.discs[0].centre.x, 4, 1e-9);
    EXPECT_NEAR(drawing.discs[0].radius, 2, 1e-9);
    EXPECT_EQ(drawing.inks[drawing.discs[0].ink].layer, "TOP"); // layer 0 in a block takes the insert's
}

TEST(DxfReader, takesASolidHatchForAFilledShapeWithItsHoles) {
    const Drawing drawing = readDxfText(
        file("0 HATCH 8 0 2 SOLID 70 1 71 0 91 2 92 3 72 0 73 1 93 4 10 0 20 0 10 40 20 0 10 40 20 20 10 0 20 20 97 0 "
             "92 16 93 4 72 1 10 10 20 5 11 30 21 5 72 1 10 30 20 5 11 30 21 15 72 1 10 30 20 15 11 10 21 15 "
             "72 1 10 10 20 15 11 10 21 5 97 0"));
    EXPECT_TRUE(drawing.leftOut.empty());
    const auto region = regionOf(shapesOf(drawing, 1), "plate.dxf");
    ASSERT_TRUE(region);
    EXPECT_NEAR(areaOf(*region), 40 * 20 - 20 * 10, 1e-6);
}

TEST(DxfReader, saysWhatToDoAboutPointsAndHatches) {
    using base::say;
    EXPECT_THAT(readDxfText(file("0 POINT 8 0 10 1 20 1 0 POINT 8 0 10 2 20 2 0 HATCH 8 0")).warnings,
                ElementsAre(say(Note::DrawCirclesOnPoints), say(Note::ExplodeHatches)));
}

struct Left {
    const char* name;
    const char* entities;
    const char* reason;
    std::size_t count;
};
void PrintTo(const Left& row, std::ostream* out) { *out << row.name; }
class DxfLeavesOut : public testing::TestWithParam<Left> {};
TEST_P(DxfLeavesOut, andSaysSo) {
    const Drawing drawing =
        readDxfText(file(GetParam().entities, "0 BLOCK 2 SELF 10 0 20 0 0 INSERT 2 SELF 10 0 20 0 0 ENDBLK"));
    EXPECT_TRUE(drawing.discs.empty());
    EXPECT_THAT(drawing.leftOut,
                ElementsAre(Pair(testing::ResultOf(test::describedMessage, GetParam().reason), GetParam().count)));
}
INSTANTIATE_TEST_SUITE_P(
    Entities, DxfLeavesOut,
    testing::Values(Left{"layerOff", "0 CIRCLE 8 OFF 10 0 20 0 40 1", "Hidden", 1},
                    Left{"layerFrozen", "0 CIRCLE 8 ICE 10 0 20 0 40 1", "Hidden", 1},
                    Left{"invisible", "0 CIRCLE 8 0 60 1 10 0 20 0 40 1", "Hidden", 1},
                    Left{"paper", "0 CIRCLE 8 0 67 1 10 0 20 0 40 1", "OnThePaperSheet", 1},
                    Left{"text", "0 TEXT 8 0 1 HI 0 MTEXT 8 0 1 YOU", "Text", 2},
                    Left{"hatch", "0 HATCH 8 0", "EntityNotRead(HATCH)", 1},
                    Left{"patternHatch",
                         "0 HATCH 8 0 2 ANSI31 70 0 71 0 91 1 92 1 93 1 72 2 10 5 20 6 40 1 50 0 51 360 73 1 97 0",
                         "EntityNotRead(HATCH)", 1},
                    Left{"gradientHatch",
                         "0 HATCH 8 0 2 SOLID 70 1 71 0 91 1 92 1 93 1 72 2 10 5 20 6 40 1 50 0 51 360 73 1 97 0 450 1",
                         "EntityNotRead(HATCH)", 1},
                    Left{"hatchOfASpline", "0 HATCH 8 0 2 SOLID 70 1 71 0 91 1 92 1 93 1 72 4 94 3 97 0",
                         "EntityNotRead(HATCH)", 1},
                    Left{"hatchThatDoesNotJoin",
                         "0 HATCH 8 0 2 SOLID 70 1 71 0 91 1 92 1 93 2 72 1 10 0 20 0 11 5 21 0 72 1 10 5 20 5 11 0 21 "
                         "0 97 0",
                         "EntityNotRead(HATCH)", 1},
                    Left{"hatchCutShort", "0 HATCH 8 0 2 SOLID 70 1 71 0 91 1 92 3 72 0 73 1 93 9 10 0 20 0",
                         "EntityNotRead(HATCH)", 1},
                    Left{"points", "0 POINT 8 0 10 1 20 1 0 POINT 8 0 10 2 20 2", "PointWithoutSize", 2},
                    Left{"unknown", "0 WOBBLE 8 0 0 WIBBLE 8 0", "OtherEntities", 2},
                    Left{"noRadius", "0 CIRCLE 8 0 10 0 20 0", "FaultyEntity", 1},
                    Left{"notANumber", "0 CIRCLE 8 0 10 0 20 nan 40 1", "FaultyEntity", 1},
                    Left{"tilted", "0 CIRCLE 8 0 10 0 20 0 40 1 210 1 220 0 230 0", "Tilted", 1},
                    Left{"noBlock", "0 INSERT 8 0 2 GONE 10 0 20 0", "CopyOfNothing", 1},
                    Left{"itself", "0 INSERT 8 0 2 SELF 10 0 20 0", "CopyInsideItself", 1},
                    Left{"splineWithoutKnots", "0 SPLINE 8 0 70 1 71 3 10 0 20 0", "SplineNotRead", 1}),
    [](const auto& tested) { return tested.param.name; });

TEST(DxfReader, keepsArcsThatMakeNoCircleAsOpenLines) {
    const Drawing drawing =
        readDxfText(file("0 ARC 8 0 10 5 20 6 40 1 50 0 51 170 0 ARC 8 0 10 5 20 6 40 1 50 180 51 300"));
    EXPECT_TRUE(drawing.discs.empty());
    ASSERT_EQ(drawing.outlines.size(), 2);
    EXPECT_FALSE(drawing.outlines[0].closed);
}

struct Pieces {
    const char* name;
    std::string entities;
    std::size_t discs;
    std::size_t closed;
    std::size_t open;
};
void PrintTo(const Pieces& row, std::ostream* out) { *out << row.name; }
class DxfPieces : public testing::TestWithParam<Pieces> {};

TEST_P(DxfPieces, thatMeetEndToEndAreOneOutline) {
    const Drawing drawing = readDxfText(file(GetParam().entities));
    const auto closed = static_cast<std::size_t>(
        std::count_if(drawing.outlines.begin(), drawing.outlines.end(), [](const auto& o) { return o.closed; }));
    EXPECT_EQ(drawing.discs.size(), GetParam().discs);
    EXPECT_EQ(closed, GetParam().closed);
    EXPECT_EQ(drawing.outlines.size() - closed, GetParam().open);
}

std::string line(double x1, double y1, double x2, double y2, const char* layer = "0") {
    return fmt::format("0 LINE 8 {} 10 {:.6f} 20 {:.6f} 11 {:.6f} 21 {:.6f} ", layer, x1, y1, x2, y2);
}

/// A polygon of single lines, every other one drawn backwards.
std::string polygon(int corners) {
    std::string text;
    for (int i = 0; i < corners; ++i) {
        const double from = 2 * std::numbers::pi * i / corners, to = 2 * std::numbers::pi * (i + 1) / corners;
        const bool backwards = i % 2 == 1;
        const double first = backwards ? to : from, last = backwards ? from : to;
        text += line(5 * std::cos(first), 5 * std::sin(first), 5 * std::cos(last), 5 * std::sin(last));
    }
    text.pop_back();
    return text;
}

INSTANTIATE_TEST_SUITE_P(
    Meeting, DxfPieces,
    testing::Values(
        Pieces{"squareOfLines", polygon(4), 0, 1, 0}, Pieces{"polygonThatIsRound", polygon(24), 1, 0, 0},
        Pieces{"slotOfLinesAndArcs",
               line(0, 0, 10, 0) + line(10, 4, 0, 4) +
                   "0 ARC 8 0 10 10 20 2 40 2 50 270 51 90 0 ARC 8 0 10 0 20 2 40 2 50 90 51 270",
               0, 1, 0},
        Pieces{"openCorner", line(0, 0, 10, 0) + line(10, 0, 10, 5) + "0 LINE 8 0 10 50 20 50 11 60 21 50", 0, 0, 2},
        Pieces{"fork", line(0, 0, 10, 0) + line(10, 0, 20, 5) + "0 LINE 8 0 10 10 20 0 11 20 21 -5", 0, 0, 3},
        Pieces{"otherColour", line(0, 0, 10, 0) + "0 LINE 8 GOLD 10 10 20 0 11 20 21 5", 0, 0, 2}),
    [](const auto& tested) { return tested.param.name; });

struct UnitRow {
    int number;
    double millimetres; ///< 0 for none
};
void PrintTo(const UnitRow& row, std::ostream* out) { *out << row.number; }
class DxfUnits : public testing::TestWithParam<UnitRow> {};
TEST_P(DxfUnits, comeFromTheHeader) {
    const auto drawing =
        readDxfText(file("0 CIRCLE 8 0 10 0 20 0 40 1", "", fmt::format("9 $INSUNITS 70 {}", GetParam().number)));
    EXPECT_EQ(drawing.millimetresPerUnit.value_or(0), GetParam().millimetres);
}
// DXF reference, header variable $INSUNITS.
INSTANTIATE_TEST_SUITE_P(Header, DxfUnits,
                         testing::Values(UnitRow{0, 0}, UnitRow{1, 25.4}, UnitRow{2, 304.8}, UnitRow{4, 1},
                                         UnitRow{5, 10}, UnitRow{6, 1000}, UnitRow{9, 0.0254}, UnitRow{77, 0}));

TEST(DxfReader, refusesAnArrayWithoutEnd) {
    const auto drawing = readDxf(file("0 INSERT 8 0 2 B 10 0 20 0 70 900000000 71 900000000 44 5 45 7",
                                      "0 BLOCK 2 B 10 0 20 0 0 TEXT 8 0 0 ENDBLK"),
                                 "bomb.dxf");
    ASSERT_FALSE(drawing);
    EXPECT_EQ(drawing.error().code, base::Code::TooLarge);
}

TEST(DxfReader, countsACircleOfArcsAsOftenAsItGoesRound) {
    const std::string once = "0 ARC 8 0 10 5 20 6 40 1.4 50 0 51 180 0 ARC 8 0 10 5 20 6 40 1.4 50 180 51 360";
    EXPECT_EQ(readDxfText(file(once)).discs.size(), 1);
    EXPECT_EQ(readDxfText(file(once + " " + once)).discs.size(), 2);
    EXPECT_EQ(readDxfText(file(once + " 0 ARC 8 0 10 5 20 6 40 1.4 50 20 51 90")).discs.size(), 1);
}

TEST(DxfReader, takesCarriageReturnsAndBlanks) {
    std::string text = file("0 CIRCLE 8 0 10 5 20 6 40 1.4");
    std::string windows;
    for (const char c : text) windows += c == '\n' ? std::string("\r\n") : std::string(1, c);
    EXPECT_EQ(readDxfText(windows).discs.size(), 1);
}

TEST(DxfReader, takesCodesHoweverTheyAreSpaced) {
    for (const char* code : {"40", "  40", "\t40", "040", "00040", "40 ", "40\t", "40\r", " 40 \r"}) {
        std::string spaced = file("0 CIRCLE 8 0 10 5 20 6");
        const auto end = spaced.find("20\n6\n");
        ASSERT_NE(end, std::string::npos);
        spaced.insert(end + 5, std::string(code) + "\n1.4\n");
        const auto drawing = readDxfText(spaced);
        ASSERT_EQ(drawing.discs.size(), 1) << code;
        EXPECT_EQ(drawing.discs[0].radius, 1.4) << code;
    }
}

TEST(DxfReader, refusesACodeThatIsNoWholeNumber) {
    for (const char* code : {"4x", "x", "4 0", "4.0", "", "99999999999"}) {
        std::string text = file("0 CIRCLE 8 0 10 5 20 6 40 1.4");
        const auto at = text.find("40\n1.4");
        ASSERT_NE(at, std::string::npos);
        text.replace(at, 2, code);
        const auto drawing = readDxf(text, "odd.dxf");
        ASSERT_FALSE(drawing) << code;
        EXPECT_EQ(drawing.error().code, base::Code::Damaged) << code;
    }
}

} // namespace
} // namespace sp::artwork
