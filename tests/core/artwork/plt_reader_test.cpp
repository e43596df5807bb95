// SPDX-License-Identifier: MIT
//
// Plot files written by hand. What their instructions mean is as in HP's PCL 5 technical reference, part II (chapters
// 17 to 23); a plotter unit is 0.025 mm, so that a stone hole of 2.8 mm has a radius of 56 units.
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "core/artwork/plt_encoded.h"
#include "core/artwork/plt_reader.h"
#include "core/artwork/plt_script.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <cmath>
#include <numbers>

namespace sp::artwork {
namespace {

using testing::ElementsAre;

Drawing readPltText(const std::string& text) {
    const auto drawing = readPlt(text, "test.plt");
    EXPECT_TRUE(drawing) << describe(drawing.error());
    return drawing.value_or(Drawing{});
}

/// A circle as cutters get it: short lines to whole units, `corners` to a turn.
std::string roundLine(double x, double y, double radius, int corners, int drawn, const char* between = ",") {
    std::string text;
    for (int i = 0; i <= drawn; ++i) {
        const double angle = 2 * std::numbers::pi * i / corners;
        const char* word = i == 0 ? "PU" : i == 1 ? "PD" : "";
        text += fmt::format("{}{:.0f},{:.0f}{}", word, x + radius * std::cos(angle), y + radius * std::sin(angle),
                            i == 0 || i == drawn ? ";" : between);
    }
    return text;
}

struct OneDiscOfPlt {
    const char* name;
    std::string text;
    Point centre; ///< plotter units, y upwards
    double radius;
    const char* colour = "#000000";
};
void PrintTo(const OneDiscOfPlt& row, std::ostream* out) { *out << row.name; }
class PltDisc : public testing::TestWithParam<OneDiscOfPlt> {};
TEST_P(PltDisc, standsWhereTheFileSays) {
    const auto& row = GetParam();
    const Drawing drawing = readPltText(row.text);
    ASSERT_EQ(drawing.discs.size(), 1);
    EXPECT_TRUE(drawing.outlines.empty());
    EXPECT_TRUE(drawing.leftOut.empty());
    const Disc& disc = drawing.discs[0];
    EXPECT_NEAR(disc.centre.x, row.centre.x, 0.5);
    EXPECT_NEAR(disc.centre.y, -row.centre.y, 0.5);
    EXPECT_NEAR(disc.radius, row.radius, 0.5);
    EXPECT_EQ(drawing.inks[disc.ink].colour, row.colour);
    EXPECT_EQ(drawing.millimetresPerUnit, 0.025);
}
INSTANTIATE_TEST_SUITE_P(
    Ways, PltDisc,
    testing::Values(
        OneDiscOfPlt{"circle", "IN;SP1;PU100,200;CI56;SP0;", {100, 200}, 56},
        OneDiscOfPlt{"noPenNamed", "IN;PA100,200;CI56;", {100, 200}, 56},
        OneDiscOfPlt{"penDownInItsMiddle", "IN;SP1;PU100,200;PD;CI56;PU;PA0,0;", {100, 200}, 56},
        OneDiscOfPlt{"smallLettersWithoutSemicolons", "in sp2pu100 200ci56 5", {100, 200}, 56, "#ff0000"},
        OneDiscOfPlt{"signsBetweenNumbers", "IN;SP3;PA-100-200;CI+56;", {-100, -200}, 56, "#00ff00"},
        OneDiscOfPlt{"negativeRadius", "SP1;PA9,9;CI-56;", {9, 9}, 56},
        OneDiscOfPlt{"relative", "SP1;PA100,200;PR10,-20;CI56;", {110, 180}, 56},
        OneDiscOfPlt{"arcOfAWholeTurn", "SP1;PU156,200;PD;AA100,200,360;PU;", {100, 200}, 56},
        OneDiscOfPlt{"arcBackwards", "SP1;PU156,200;PD;AA100,200,-360,5;PU;", {100, 200}, 56},
        OneDiscOfPlt{"relativeArc", "SP1;PU156,200;PD;AR-56,0,360;PU;", {100, 200}, 56},
        OneDiscOfPlt{"halfArcs", "SP1;PU156,200;PD;AA100,200,180;AR56,0,180;PU;", {100, 200}, 56},
        OneDiscOfPlt{"arcAndABit", "SP1;PU156,200;PD;AA100,200,372;PU;", {100, 200}, 56},
        OneDiscOfPlt{
            "halvesApart", "SP1;PU156,200;PD;AA100,200,180;PU0,0;PU156,200;PD;AA100,200,-180;PU;", {100, 200}, 56},
        OneDiscOfPlt{"threePoints", "SP1;PU156,200;PD;AT100,256,44,200;AT100,144,156,200;PU;", {100, 200}, 56},
        OneDiscOfPlt{"threePointsClockwise", "SP1;PU156,200;PD;AT100,144,44,200,5;RT56,56,112,0;PU;", {100, 200}, 56},
        OneDiscOfPlt{"threePointsOfWhichTwoAreOne", "SP1;PU156,200;PD;AT44,200,156,200;PU;", {100, 200}, 56},
        OneDiscOfPlt{"spoke", "SP1;PU100,200;PD156,200;AA100,200,360;PD100,200;PU;", {100, 200}, 56},
        OneDiscOfPlt{"curves",
                     "SP1;PU156,200;PD;BZ156,231,131,256,100,256,69,256,44,231,44,200;"
                     "BR0,-31,25,-56,56,-56,31,0,56,25,56,56;PU;",
                     {100, 200},
                     56},
        OneDiscOfPlt{"shortLines", "SP1;" + roundLine(100, 200, 56, 36, 36), {100, 200}, 56},
        OneDiscOfPlt{"shortLinesInOneEach", "SP1;" + roundLine(100, 200, 56, 36, 36, ";PD"), {100, 200}, 56},
        OneDiscOfPlt{"penLiftedOnTheWay", "SP1;" + roundLine(100, 200, 56, 36, 36, ";PU;PD"), {100, 200}, 56},
        OneDiscOfPlt{"overcut", "SP1;" + roundLine(100, 200, 56, 36, 39), {100, 200}, 56},
        OneDiscOfPlt{"wholeWedge", "SP1;PU100,200;EW56,30,360;", {100, 200}, 56},
        OneDiscOfPlt{"userUnits", "IP0,0,400,400;SC0,10,0,10;SP1;PU2.5,5;CI1.4;", {100, 200}, 56},
        OneDiscOfPlt{"userUnitsBeforeTheirPoints", "SC0,10,0,10;IP0,0,400,400;SP1;PU2.5,5;CI1.4;", {100, 200}, 56},
        OneDiscOfPlt{"userUnitsElsewhere", "IP100,200,500,1000;SC-10,10,-10,10,1;SP1;PU-10,-10;CI2.8;", {100, 400}, 56},
        OneDiscOfPlt{
            "userUnitsToTheLeft", "IP100,200,500,1000;SC-10,10,-10,10,1,0,0;SP1;PU-10,-10;CI2.8;", {100, 200}, 56},
        OneDiscOfPlt{"pointFactor", "IP100,200,101,201;SC5,40,5,40,2;SP1;PU5,5;CI1.4;", {100, 200}, 56},
        OneDiscOfPlt{"userUnitsDropped", "IP0,0,9,9;SC0,1,0,1;SC;SP1;PU100,200;CI56;", {100, 200}, 56},
        OneDiscOfPlt{"ownColour", "SP2;PC2,31,58,147;PU100,200;CI56;", {100, 200}, 56, "#1f3a93"},
        OneDiscOfPlt{"ownRange", "CR0,1,0,1,0,1;PC2,1,0.5,0;SP2;PU100,200;CI56;", {100, 200}, 56, "#ff8000"},
        OneDiscOfPlt{"penBeyondTheLast", "NP4;SP5;PU100,200;CI56;", {100, 200}, 56, "#ff0000"},
        OneDiscOfPlt{"polygonFilledAndEdged", "SP1;PU100,200;PM0;CI56;PM2;FP;EP;", {100, 200}, 56},
        OneDiscOfPlt{"printerAround",
                     "\x1b%-12345X@PJL JOB NAME=\"PD1,1;\"\n\x1b"
                     "E\x1b&l1O\x1b*b3WPD;text\x1b%0B"
                     "IN;SP1;PU100,200;CI56;\x1b%0A\x1b"
                     "E PD text\x1b%-12345X",
                     {100, 200},
                     56},
        OneDiscOfPlt{"plotterLine", "\x1b.(\x1b.I81;;17:\x1b.N;19:IN;SP1;PU100,200;CI56;\x1b.)", {100, 200}, 56},
        OneDiscOfPlt{
            "makersOwn", "IN;VS30,1;!ST1;FS80;ZZ1,2;CO \"PD1,1;\";SP1;LT2,4;PW0.3;PU100,200;CI56;", {100, 200}, 56}),
    [](const testing::TestParamInfo<OneDiscOfPlt>& tested) { return std::string(tested.param.name); });

// HP PCL 5 technical reference, part II, "Encoding PE": 82.83 with 7 fractional binary bits is 10525, encoded 21050,
// the characters 121, 71 and 196 (5 · 4096 + 8 · 64 + 58).
TEST(PltEncoding, isAsThePublishedExample) {
    const std::string text = "<>\xcd\x79\x47\xc4\x79\x47\xc4"; // 191 + 2 · 7 = 205
    PltEncoded encoded(text);
    const auto step = encoded.next();
    ASSERT_TRUE(step);
    EXPECT_EQ(step->x, 10525 / 128.0);
    EXPECT_EQ(step->y, 10525 / 128.0);
    EXPECT_TRUE(step->isUp);
    EXPECT_FALSE(step->isAbsolute);
    EXPECT_FALSE(encoded.next());
    EXPECT_FALSE(encoded.isGarbled());
}

/// As PE writes it, by the steps of the same page.
std::string encoded(int number, bool isSevenBit) {
    auto left = static_cast<unsigned>(number < 0 ? -2 * number + 1 : 2 * number);
    const unsigned base = isSevenBit ? 32 : 64;
    std::string text;
    for (; left >= base; left /= base) text.push_back(static_cast<char>(63 + left % base));
    text.push_back(static_cast<char>((isSevenBit ? 95 : 191) + left));
    return text;
}

TEST(PltEncoding, drawsWhatTheSameFileDrawsInNumbers) {
    for (const bool isSevenBit : {false, true}) {
        std::string text = "IN;PE";
        if (isSevenBit) text += '7';
        text += ":" + encoded(2, isSevenBit) + "<=" + encoded(156, isSevenBit) + encoded(200, isSevenBit);
        int x = 156, y = 200;
        for (int i = 1; i <= 36; ++i) {
            const double angle = std::numbers::pi * i / 18;
            const int nextX = static_cast<int>(std::lround(100 + 56 * std::cos(angle)));
            const int nextY = static_cast<int>(std::lround(200 + 56 * std::sin(angle)));
            text += encoded(nextX - x, isSevenBit) + (i == 7 ? "\n" : "") + encoded(nextY - y, isSevenBit);
            x = nextX;
            y = nextY;
        }
        const Drawing drawing = readPltText(text + ";PU0,0;");
        ASSERT_EQ(drawing.discs.size(), 1);
        EXPECT_NEAR(drawing.discs[0].centre.x, 100, 0.5);
        EXPECT_NEAR(drawing.discs[0].radius, 56, 0.5);
        EXPECT_EQ(drawing.inks[drawing.discs[0].ink].layer, "SP2");
    }
}

TEST(PltPens, areLayersAndColours) {
    const Drawing drawing =
        readPltText("IN;SP1;PU0,0;CI56;SP2;PU200,0;CI56;SP1;PU400,0;CI56;SP9;PU600,0;CI56;SP0;PU800,0;CI56;");
    ASSERT_EQ(drawing.discs.size(), 4);
    std::vector<std::string> inks;
    for (const Disc& disc : drawing.discs)
        inks.push_back(drawing.inks[disc.ink].layer + " " + drawing.inks[disc.ink].colour);
    EXPECT_THAT(inks, ElementsAre("SP1 #000000", "SP2 #ff0000", "SP1 #000000", "SP9 #000000"));
    EXPECT_EQ(drawing.leftOut.at(base::say(Note::NotPainted)), 1);
}

TEST(PltLabels, arePassedOverAndNamed) {
    const Drawing drawing = readPltText("IN;SP1;PA0,0;LBPD5,5;CI9;\x03"
                                        "DT*,1;LB;CI9;*DT;LBPU\x03;PU100,200;CI56;SMx;PA0,0;SM;");
    EXPECT_EQ(drawing.discs.size(), 1);
    EXPECT_TRUE(drawing.outlines.empty());
    EXPECT_EQ(drawing.leftOut.at(base::say(Note::Text)), 4);
}

TEST(PltLines, areOutlinesOpenOrClosed) {
    const Drawing drawing =
        readPltText("IN;SP1;PU0,0;PD400,0,400,200,0,200,0,0;PU;PU900,0;PD;PA950,50;PU;PU;PD;PA990,0;PU0,9;"
                    "PU10,10;PD;PU;EA50,60;PU20,30;RR40,40;PA500,500;EW90,0,90;");
    ASSERT_EQ(drawing.outlines.size(), 5);
    std::vector<std::size_t> corners;
    std::vector<bool> closed;
    for (const Outline& outline : drawing.outlines) {
        corners.push_back(outline.size);
        closed.push_back(outline.closed);
    }
    EXPECT_THAT(closed, ElementsAre(true, false, true, true, true));
    EXPECT_EQ(corners[0], 4);
    EXPECT_EQ(corners[1], 3); // a pen lifted and lowered on the spot
    EXPECT_FALSE(drawing.inks[drawing.outlines[2].ink].filled);
    EXPECT_TRUE(drawing.inks[drawing.outlines[3].ink].filled);
    EXPECT_EQ(drawing.leftOut.at(base::say(Note::PointWithoutSize)), 1);
}

// The example of the chapter on polygons in the reference named above, without its arc: a square with two openings.
TEST(PltPolygon, hasPartsThatShareAShape) {
    const Drawing drawing = readPltText("IN;SP1;PA2000,2000;PM0;PD3000,2000,3000,3000;PD2000,3000,2000,2000;PM1;"
                                        "PD2080,2160,2480,2160,2480,2340,2080,2340,2080,2160;PM1;"
                                        "PD2080,2660,2480,2660,2480,2840,2080,2840,2080,2660;PM2;FP;EP;");
    ASSERT_EQ(drawing.outlines.size(), 3);
    for (const Outline& outline : drawing.outlines) {
        EXPECT_EQ(outline.size, 4);
        EXPECT_TRUE(outline.closed);
        EXPECT_TRUE(outline.evenOdd);
        EXPECT_EQ(outline.shape, drawing.outlines[0].shape);
        EXPECT_TRUE(drawing.inks[outline.ink].filled);
    }
    EXPECT_EQ(drawing.pointsOf(drawing.outlines[1])[0], (Point{2080, -2160}));
}

TEST(PltPolygon, isSeenOnlyWhereItIsPainted) {
    EXPECT_TRUE(readPltText("IN;SP1;PU0,0;PM0;PD9,0,9,9;PM2;").outlines.empty());
    EXPECT_TRUE(readPltText("IN;SP1;PU0,0;PM0;PU9,0,9,9;PM2;EP;").outlines.empty());
    EXPECT_EQ(readPltText("IN;SP1;PU0,0;PM0;PU9,0,9,9;PM2;FP;").outlines.size(), 1);
}

TEST(PltScaleOfItsOwn, hasNoUnitWhereTheFileSetsNoPoints) {
    const Drawing drawing = readPltText("IN;SC0,100,0,100;SP1;PU50,50;CI1.4;");
    ASSERT_EQ(drawing.discs.size(), 1);
    EXPECT_NEAR(drawing.discs[0].radius, 1.4, 1e-9);
    EXPECT_FALSE(drawing.millimetresPerUnit);
}

TEST(PltScaleOfItsOwn, stretchesACircleToAnEllipse) {
    const Drawing drawing = readPltText("IP0,0,1000,2000;SC0,10,0,10;SP1;PU5,5;CI2;");
    EXPECT_TRUE(drawing.discs.empty());
    EXPECT_EQ(drawing.outlines.size(), 1);
}

TEST(PltSheets, lieBesideOneAnother) {
    const Drawing drawing = readPltText("RO90;IN;SP1;PU100,200;CI56;PG;PU100,200;CI56;PG;");
    const auto counted = countStones(drawing, {.millimetresPerUnit = 0.025, .holeAllowance = {}}, "two.plt");
    ASSERT_TRUE(counted);
    EXPECT_EQ(counted->stones.size(), 2);
    EXPECT_EQ(counted->duplicates, 0);
}

TEST(PltCount, findsTheStonesBySizeAndPen) {
    std::string text = "IN;PU;";
    for (int i = 0; i < 30; ++i)
        text += fmt::format("SP{};", 1 + i % 2) +
                roundLine(200 + 150 * (i % 6), 200 + 150 * (i / 6), i < 12 ? 56 : 40, 24, 24);
    const auto drawing = readArtwork(text + "SP0;", "holes.plt");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    EXPECT_EQ(drawing->format, catalogue::ArtworkFormat::Plt);
    const auto counted =
        countStones(*drawing, {.millimetresPerUnit = *drawing->millimetresPerUnit, .holeAllowance = {}}, "holes.plt");
    ASSERT_TRUE(counted) << describe(counted.error());
    std::map<std::string, std::int64_t> groups;
    for (const auto& group : counted->groups) {
        ASSERT_TRUE(group.size);
        groups[group.layer + " " + publishedStoneSizes()[*group.size].name] = group.count.value();
    }
    EXPECT_EQ(groups,
              (std::map<std::string, std::int64_t>{{"SP1 SS10", 6}, {"SP1 SS6", 9}, {"SP2 SS10", 6}, {"SP2 SS6", 9}}));
}

struct BadPlot {
    const char* name;
    std::string text;
    const char* error;
};
void PrintTo(const BadPlot& row, std::ostream* out) { *out << row.name; }
class PltRefusal : public testing::TestWithParam<BadPlot> {};
TEST_P(PltRefusal, saysWhere) {
    const auto drawing = readPlt(GetParam().text, "gift.plt");
    ASSERT_FALSE(drawing);
    EXPECT_EQ(describe(drawing.error().message()), GetParam().error);
}
INSTANTIATE_TEST_SUITE_P(Garbled, PltRefusal,
                         testing::Values(BadPlot{"labelWithoutEnd", "IN;LBend;CI56;", "Garbled(gift.plt, 5)"},
                                         BadPlot{"encodedWithoutEnd", "IN;PE<=", "Garbled(gift.plt, 5)"},
                                         BadPlot{"encodedOutOfRange", "IN;PE!!;", "Garbled(gift.plt, 8)"},
                                         BadPlot{"halfACoordinate", "IN;PU0,0;PD1,2,3", "Garbled(gift.plt, 16)"},
                                         BadPlot{"numberBeyondAll", "IN;PD1e99,3;", "Garbled(gift.plt, 5)"},
                                         BadPlot{"noNumberBetweenCommas", "IN;PD1,,3;", "Garbled(gift.plt, 7)"},
                                         BadPlot{"oneLetter", "IN;P 1,3;", "Garbled(gift.plt, 3)"},
                                         BadPlot{"otherBytes", "IN;\xff\xfe", "Garbled(gift.plt, 3)"}),
                         [](const testing::TestParamInfo<BadPlot>& tested) { return std::string(tested.param.name); });

TEST(PltLimits, holdForWhateverAFileRepeats) {
    const Limits small{64'000, 100, 1'000, 1'000, 1'000, 100'000};
    const auto many = [&](const std::string& part, std::size_t times) {
        std::string text = "IN;SP1;PM0;PM2;";
        for (std::size_t i = 0; i < times; ++i) text += part;
        const auto drawing = readPlt(text, "many.plt", small);
        return drawing ? std::string("read") : describe(drawing.error().message());
    };
    EXPECT_EQ(many("CI9;", 90), "read");
    EXPECT_EQ(many("CI9;", 200), "TooManyOutlines(many.plt, 100)");
    EXPECT_EQ(many("PD1,1,2,2;", 600), "TooManySegments(many.plt)");
    EXPECT_EQ(many("LBx\x03", 30'000), "TooManyRepeats(many.plt)");
}

TEST(PltBeginning, isToldFromOtherText) {
    for (const char* text :
         {"IN;", "PU;PA0,0;", "\x1b.(;\x1b.I81;;17:;IN;SP1;", "in sp1 pu0 0", "BP;IN;SP1;", "IN;VS10;ZZ1;PW.3;SP1;"})
        EXPECT_TRUE(looksLikePlt(text)) << text;
    for (const char* text : {"", "papa", "In this file", "PA system", "no drawing", "%!PS", "SP\xff",
                             "\x1b"
                             "E text",
                             "hello;"})
        EXPECT_FALSE(looksLikePlt(text)) << text;
}

} // namespace
} // namespace sp::artwork
