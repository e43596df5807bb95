// SPDX-License-Identifier: MIT
#include "core/artwork/artwork_file.h"
#include "core/artwork/colour.h"
#include "core/artwork/count.h"
#include "core/artwork/messages.h"
#include "core/artwork/svg_reader.h"
#include "tests/support/described.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <cmath>

namespace sp::artwork {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

/// Reads what stands inside an svg of 100 mm a side, one unit a millimetre.
Drawing readSvgText(const std::string& inside) {
    const auto drawing = readSvg(fmt::format("<svg xmlns='http://www.w3.org/2000/svg' "
                                             "xmlns:xlink='http://www.w3.org/1999/xlink' width='100mm' height='100mm' "
                                             "viewBox='0 0 100 100'>{}</svg>",
                                             inside),
                                 "test.svg");
    EXPECT_TRUE(drawing) << describe(drawing.error());
    return drawing.value_or(Drawing{});
}

struct OneDiscOfSvg {
    const char* name;
    const char* inside;
    Point centre;
    double radius;
    const char* colour = "#000000";
};
void PrintTo(const OneDiscOfSvg& row, std::ostream* out) { *out << row.name; }

class SvgDisc : public testing::TestWithParam<OneDiscOfSvg> {};
TEST_P(SvgDisc, standsWhereTheFileSays) {
    const auto& row = GetParam();
    const Drawing drawing = readSvgText(row.inside);
    ASSERT_EQ(drawing.discs.size(), 1);
    const Disc& disc = drawing.discs[0];
    EXPECT_NEAR(disc.centre.x, row.centre.x, 0.003);
    EXPECT_NEAR(disc.centre.y, row.centre.y, 0.003);
    EXPECT_NEAR(disc.radius, row.radius, 0.002);
    EXPECT_EQ(drawing.inks[disc.ink].colour, row.colour);
}
// By SVG 1.1 sections 7 (coordinates), 8.3 (paths), 9 (shapes), 5.6 (use), 6 (styling), 13.2 (gradients).
INSTANTIATE_TEST_SUITE_P(
    Forms, SvgDisc,
    testing::Values(
        OneDiscOfSvg{"circle", "<circle cx='5' cy='6' r='1.4'/>", {5, 6}, 1.4},
        OneDiscOfSvg{"unitsInAttributes", "<circle cx='1in' cy='6' r='2mm'/>", {96, 6}, 2 * 96 / 25.4},
        OneDiscOfSvg{"percent", "<circle cx='50%' cy='25%' r='2%'/>", {50, 25}, 2},
        OneDiscOfSvg{"rectangleWithRoundEnds", "<rect x='1' y='2' width='4' height='4' rx='2'/>", {3, 4}, 2},
        OneDiscOfSvg{"rectangleOverrounded", "<rect x='1' y='2' width='4' height='4' rx='9'/>", {3, 4}, 2},
        OneDiscOfSvg{"ellipseMadeRoundByItsTransform",
                     "<ellipse cx='1' cy='1' rx='2' ry='1' transform='translate(10 10) scale(1 2)'/>",
                     {11, 12},
                     2},
        OneDiscOfSvg{"compactArcFlags", "<path d='M8 10a2 2 0 104 0 2 2 0 10-4 0z'/>", {10, 10}, 2},
        OneDiscOfSvg{"arcTooSmallIsEnlarged", "<path d='M8 10A1 1 0 0 1 12 10A1 1 0 0 1 8 10Z'/>", {10, 10}, 2},
        OneDiscOfSvg{"smoothCurves",
                     "<path d='M12 10c0 1.1046-.8954 2-2 2s-2-.8954-2-2 .8954-2 2-2 2 .8954 2 2z'/>",
                     {10, 10},
                     2},
        OneDiscOfSvg{"notClosedButMeeting", "<path d='M8 10a2 2 0 1 0 4 0a2 2 0 1 0 -4 0'/>", {10, 10}, 2},
        OneDiscOfSvg{"numbersRunTogether", "<path d='M8,10a2,2,0,1,0,4,0a2,2,0,1,0-4,0z'/>", {10, 10}, 2},
        OneDiscOfSvg{"matrix", "<g transform='matrix(0 2 -2 0 50 0)'><circle cx='5' cy='6' r='1'/></g>", {38, 10}, 2},
        OneDiscOfSvg{"rotateAboutAPoint", "<circle cx='12' cy='10' r='1' transform='rotate(90 10 10)'/>", {10, 12}, 1},
        OneDiscOfSvg{"transformsInOrder", "<circle r='1' transform='translate(10,5) scale(2)'/>", {10, 5}, 2},
        OneDiscOfSvg{"useWithOffset",
                     "<defs><circle id='a' cx='1' cy='1' r='1'/></defs><use href='#a' x='3' y='4'/>",
                     {4, 5},
                     1},
        OneDiscOfSvg{
            "useBeforeDefinition", "<use xlink:href='#a' x='3'/><defs><circle id='a' r='1'/></defs>", {3, 0}, 1},
        OneDiscOfSvg{"useGivesItsColour",
                     "<use href='#a' fill='red'/><defs><circle id='a' r='1'/></defs>",
                     {0, 0},
                     1,
                     "#ff0000"},
        OneDiscOfSvg{"symbolWithViewBox",
                     "<symbol id='s' viewBox='0 0 10 10'><circle cx='5' cy='5' r='5'/></symbol>"
                     "<use href='#s' x='20' y='30' width='4' height='8'/>",
                     {22, 34},
                     2},
        OneDiscOfSvg{"nestedSvg",
                     "<svg x='10' y='20' width='10' height='20' viewBox='0 0 5 5'><circle cx='5' r='1'/></svg>",
                     {20, 25},
                     2},
        OneDiscOfSvg{"nestedSvgSlice",
                     "<svg x='10' y='20' width='10' height='20' viewBox='0 0 5 5' preserveAspectRatio='xMinYMin "
                     "slice'>"
                     "<circle cx='1' cy='1' r='1'/></svg>",
                     {14, 24},
                     4},
        OneDiscOfSvg{"fillAttribute", "<circle r='1' fill='#1f3a93'/>", {0, 0}, 1, "#1f3a93"},
        OneDiscOfSvg{"strokeWhereThereIsNoFill", "<circle r='1' fill='none' stroke='Navy'/>", {0, 0}, 1, "#000080"},
        OneDiscOfSvg{"styleBeatsAttribute", "<circle r='1' fill='red' style='fill: #0f0'/>", {0, 0}, 1, "#00ff00"},
        OneDiscOfSvg{
            "sheetBeatsAttribute", "<style>circle{fill:blue}</style><circle r='1' fill='red'/>", {0, 0}, 1, "#0000ff"},
        OneDiscOfSvg{
            "sheetAfterTheElement", "<circle class='a' r='1'/><style>.a{fill:blue}</style>", {0, 0}, 1, "#0000ff"},
        OneDiscOfSvg{"idBeatsClassBeatsElement",
                     "<style>#x{fill:#111111}.a{fill:#222222}circle{fill:#333333}</style><circle id='x' class='a' "
                     "r='1'/>",
                     {0, 0},
                     1,
                     "#111111"},
        OneDiscOfSvg{"laterRuleOfOneRankWins",
                     "<style>.a{fill:#111111}.b{fill:#222222}</style><circle class='b a' r='1'/>",
                     {0, 0},
                     1,
                     "#222222"},
        OneDiscOfSvg{"descendantSelector",
                     "<style>g.outer circle{fill:#111111}circle{fill:#222222}</style>"
                     "<g class='outer'><g><circle r='1'/></g></g>",
                     {0, 0},
                     1,
                     "#111111"},
        OneDiscOfSvg{"childSelectorDoesNotReachGrandchildren",
                     "<style>g.outer>circle{fill:#111111}circle{fill:#222222}</style>"
                     "<g class='outer'><g><circle r='1'/></g></g>",
                     {0, 0},
                     1,
                     "#222222"},
        OneDiscOfSvg{"selectorList",
                     "<style>rect, .a , #y{fill:#111111}</style><circle class='a' r='1'/>",
                     {0, 0},
                     1,
                     "#111111"},
        OneDiscOfSvg{"importantBeatsStyle",
                     "<style>.a{fill:#111111 !important}</style>"
                     "<circle class='a' style='fill:red' r='1'/>",
                     {0, 0},
                     1,
                     "#111111"},
        OneDiscOfSvg{"cdataAndComments",
                     "<style><![CDATA[/* a{} */ .a{/*x*/fill:#111111}]]></style><circle class='a' r='1'/>",
                     {0, 0},
                     1,
                     "#111111"},
        OneDiscOfSvg{"inheritedFill", "<g fill='teal'><g><circle r='1'/></g></g>", {0, 0}, 1, "#008080"},
        OneDiscOfSvg{"currentColour", "<g color='teal'><circle r='1' fill='currentColor'/></g>", {0, 0}, 1, "#008080"},
        OneDiscOfSvg{"linearGradientStandsForItsMiddle",
                     "<linearGradient id='a'><stop offset='20%' stop-color='#200000'/><stop offset='.8' "
                     "stop-color='#402000'/></linearGradient><circle r='1' fill='url(#a)'/>",
                     {0, 0},
                     1,
                     "#301000"},
        // Half of a disc's area lies inside 0.7071 of its radius: 255 (1 - 0.7071) = 74.7.
        OneDiscOfSvg{
            "radialGradientStandsForTheMiddleOfItsArea",
            "<linearGradient id='b'><stop stop-color='white'/><stop offset='1' stop-color='red'/></linearGradient>"
            "<radialGradient id='a' xlink:href='#b'/><circle r='1' fill='url(#a)'/>",
            {0, 0},
            1,
            "#ff4b4b"},
        OneDiscOfSvg{"gradientOfOneStopStandsForIt",
                     "<linearGradient id='a'><stop offset='.9' stop-color='teal'/></linearGradient>"
                     "<circle r='1' fill='url(#a)'/>",
                     {0, 0},
                     1,
                     "#008080"},
        OneDiscOfSvg{"missingPaintFallsBack", "<circle r='1' fill='url(#no) #123456'/>", {0, 0}, 1, "#123456"},
        OneDiscOfSvg{"switchTakesTheFirstThatFits",
                     "<switch><circle requiredExtensions='http://example.org' r='9'/><circle r='1'/><circle "
                     "r='2'/></switch>",
                     {0, 0},
                     1},
        OneDiscOfSvg{"prefixedNames", "<svg:circle xmlns:svg='http://www.w3.org/2000/svg' r='1'/>", {0, 0}, 1},
        OneDiscOfSvg{"foreignElementsAreSilent", "<x:circle xmlns:x='urn:x' r='5'/><circle r='1'/>", {0, 0}, 1}),
    [](const auto& tested) { return tested.param.name; });

struct LeftOutRow {
    const char* name;
    const char* inside;
    const char* reason;
    std::size_t count;
};
void PrintTo(const LeftOutRow& row, std::ostream* out) { *out << row.name; }

class SvgLeavesOut : public testing::TestWithParam<LeftOutRow> {};
TEST_P(SvgLeavesOut, andSaysSo) {
    const auto& row = GetParam();
    const Drawing drawing = readSvgText(row.inside);
    EXPECT_THAT(drawing.discs, testing::IsEmpty());
    EXPECT_THAT(drawing.leftOut,
                ElementsAre(testing::Pair(testing::ResultOf(test::describedMessage, row.reason), row.count)));
}
INSTANTIATE_TEST_SUITE_P(
    Forms, SvgLeavesOut,
    testing::Values(
        LeftOutRow{"hiddenGroup", "<g display='none'><circle r='1'/><path d='M0 0h1v1zm5 0h1v1z'/></g>", "Hidden", 3},
        LeftOutRow{"hiddenByClass", "<style>.off{display:none}</style><g class='off'><circle r='1'/></g>", "Hidden", 1},
        LeftOutRow{"invisible", "<circle visibility='hidden' r='1'/>", "Hidden", 1},
        LeftOutRow{"transparent", "<circle style='opacity:0' r='1'/>", "Hidden", 1},
        LeftOutRow{"unpainted", "<circle fill='none' r='1'/>", "NotPainted", 1},
        LeftOutRow{"dots",
                   "<path d='M5 5h0' stroke='red' stroke-width='2.8' stroke-linecap='round'/>"
                   "<line x1='15' y1='5' x2='15' y2='5' stroke='red'/><path d='M1 1M2 2' stroke='red'/>",
                   "PointWithoutSize", 2},
        LeftOutRow{"text", "<text>Hello</text><text>You</text>", "Text", 2},
        LeftOutRow{"bitmap", "<image href='a.png'/>", "BitmapInside", 1},
        LeftOutRow{"script", "<script>1</script>", "Script", 1},
        LeftOutRow{"otherFile", "<use href='b.svg#a'/>", "PartOfAnotherFile", 1},
        LeftOutRow{"missingPart", "<use href='#nowhere'/>", "CopyOfNothing", 1},
        LeftOutRow{"itself", "<g id='a'><use href='#a'/></g>", "CopyInsideItself", 1},
        LeftOutRow{"unknown", "<blob/><blob/>", "UnknownElement(blob)", 2},
        LeftOutRow{"mistake", "<path d='M1 1 L'/>", "FaultyShape", 1}),
    [](const auto& tested) { return tested.param.name; });

TEST(SvgReader, drawsNothingOutOfDefinitions) {
    const Drawing drawing =
        readSvgText("<defs><circle r='1'/></defs><clipPath><circle r='1'/></clipPath><mask><circle r='1'/>"
                    "</mask><pattern><circle r='1'/></pattern><symbol><circle r='1'/></symbol><marker>"
                    "<circle r='1'/></marker>");
    EXPECT_TRUE(drawing.discs.empty() && drawing.outlines.empty() && drawing.leftOut.empty());
}

TEST(SvgReader, showsAgainWhatIsVisibleInsideTheInvisible) {
    EXPECT_EQ(readSvgText("<g visibility='hidden'><circle r='1' visibility='visible'/></g>").discs.size(), 1);
}

TEST(SvgReader, unfoldsEntitiesOfTheFileItself) {
    const auto drawing =
        readSvg("<!DOCTYPE svg [<!ENTITY one \"<circle r='1' fill='&c;'/>\"><!ENTITY c 'teal'>"
                "<!ENTITY far SYSTEM 'file:///etc/passwd'>]>\n<svg>&one;&one;<!-- &one; -->&far;</svg>",
                "e.svg");
    ASSERT_TRUE(drawing);
    EXPECT_EQ(drawing->discs.size(), 2);
    EXPECT_EQ(drawing->inks[0].colour, "#008080");
    EXPECT_THAT(drawing->warnings, ElementsAre(base::say(Note::TextElsewhere)));
}

TEST(SvgReader, namesLayersByTheirLabels) {
    const Drawing drawing =
        readSvgText("<g xmlns:i='urn:i' i:groupmode='layer' i:label='Cut &amp; hold'><g id='inner'><circle "
                    "r='1'/></g></g><g id='outer'><g id='inner2'><circle r='1'/></g></g><circle r='1'/>");
    ASSERT_EQ(drawing.discs.size(), 3);
    EXPECT_EQ(drawing.inks[drawing.discs[0].ink].layer, "Cut & hold");
    EXPECT_EQ(drawing.inks[drawing.discs[1].ink].layer, "outer");
    EXPECT_EQ(drawing.inks[drawing.discs[2].ink].layer, "");
}

TEST(SvgReader, reportsWhatItCannotFollow) {
    const Drawing drawing =
        readSvgText("<style>circle:hover{fill:red} @media print{circle{fill:red}} a+b{fill:red}</style>"
                    "<circle r='1' clip-path='url(#c)' transform='wobble(3)'/>");
    EXPECT_THAT(drawing.warnings,
                ElementsAre(base::say(Note::StyleRulesNotRead, 3), base::say(Note::ShapesCountedWhole, 1),
                            base::say(Note::TransformsNotRead, 1)));
}

struct RootScale {
    const char* name;
    const char* attributes;
    double millimetresPerUnit; ///< 0 for none
};
void PrintTo(const RootScale& row, std::ostream* out) { *out << row.name; }

class SvgScale : public testing::TestWithParam<RootScale> {};
TEST_P(SvgScale, comesFromTheRoot) {
    const auto& row = GetParam();
    const auto drawing = readSvg(fmt::format("<svg {}><circle r='1'/></svg>", row.attributes), "s.svg");
    ASSERT_TRUE(drawing);
    EXPECT_EQ(drawing->millimetresPerUnit.has_value(), row.millimetresPerUnit != 0);
    if (row.millimetresPerUnit != 0) {
        EXPECT_NEAR(*drawing->millimetresPerUnit, row.millimetresPerUnit, 1e-12);
        EXPECT_NEAR(drawing->discs.at(0).radius, 1, 1e-12);
    }
}
// CSS Values and Units Level 3, section 5.2: 1 in = 2.54 cm = 96 px = 72 pt = 6 pc.
INSTANTIATE_TEST_SUITE_P(
    Roots, SvgScale,
    testing::Values(RootScale{"millimetres", "width='100mm' height='50mm' viewBox='0 0 1000 500'", 0.1},
                    RootScale{"inches", "width='10in' height='10in' viewBox='0 0 720 720'", 25.4 / 72},
                    RootScale{"points", "width='72pt' height='72pt' viewBox='0 0 100 100'", 0.254},
                    RootScale{"onlyWidth", "width='10cm' viewBox='0 0 100 7'", 1},
                    RootScale{"meetTakesTheSmaller", "width='100mm' height='300mm' viewBox='0 0 100 100'", 1},
                    RootScale{"noViewBox", "width='100mm' height='100mm'", 25.4 / 96},
                    RootScale{"pixels", "width='100px' height='100px'", 0}, RootScale{"bare", "width='100'", 0},
                    RootScale{"percent", "width='100%' viewBox='0 0 9 9'", 0}, RootScale{"nothing", "", 0}),
    [](const auto& tested) { return tested.param.name; });

struct BadFile {
    const char* name;
    std::string bytes;
    base::Code code;
    const char* says;
};
void PrintTo(const BadFile& row, std::ostream* out) { *out << row.name; }

std::string repeated(std::string_view text, std::size_t times) {
    std::string all;
    for (std::size_t i = 0; i < times; ++i) all += text;
    return all;
}

std::string useBomb() {
    std::string svg = "<svg><g id='a0'><circle r='1'/></g>";
    for (int i = 1; i < 30; ++i)
        svg += fmt::format("<g id='a{}'>{}</g>", i, repeated(fmt::format("<use href='#a{}'/>", i - 1), 10));
    return svg + "</svg>";
}

std::string entityBomb() {
    std::string dtd = "<!DOCTYPE svg [<!ENTITY a0 'circle'>";
    for (int i = 1; i < 12; ++i) dtd += fmt::format("<!ENTITY a{} '{}'>", i, repeated(fmt::format("&a{};", i - 1), 10));
    return dtd + "]><svg>&a11;</svg>";
}

class ArtworkRefuses : public testing::TestWithParam<BadFile> {};
TEST_P(ArtworkRefuses, inASentence) {
    const auto& row = GetParam();
    auto drawing = readArtwork(row.bytes, "gift.svg");
    base::Error error;
    if (drawing) {
        const auto counted = countStones(*drawing, {}, "gift.svg");
        ASSERT_FALSE(counted);
        error = counted.error();
    } else {
        error = drawing.error();
    }
    EXPECT_EQ(error.code, row.code) << describe(error);
    EXPECT_EQ(describe(error.message()), row.says);
    EXPECT_EQ(error.subject, "gift.svg");
}
using base::Code;
INSTANTIATE_TEST_SUITE_P(
    Files, ArtworkRefuses,
    testing::Values(
        BadFile{"empty", "", Code::Missing, "EmptyFile(gift.svg)"},
        BadFile{"blanks", " \n ", Code::Missing, "EmptyFile(gift.svg)"},
        BadFile{"words", "hello", Code::Foreign, "NoDrawing(gift.svg)"},
        BadFile{"html", "<html><body/></html>", Code::Foreign, "NotSvg(gift.svg)"},
        BadFile{"truncated", "<svg><circle r='1.4'/><g", Code::Damaged,
                "GarbledSvg(gift.svg, 23, Could not determine tag type)"},
        BadFile{"truncatedDxf", "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n10\n", Code::Damaged, "Garbled(gift.svg, 33)"},
        BadFile{"onlyText", "<svg><text>Hi</text></svg>", Code::Missing,
                "NoStones(gift.svg, OutlinesThereAre(CountOf(1, Text(1))), TurnTextIntoOutlines)"},
        BadFile{"onlyBitmap", "<svg><image/></svg>", Code::Missing,
                "NoStones(gift.svg, OutlinesThereAre(CountOf(1, BitmapInside(1))), PlaceStonesOverBitmap)"},
        BadFile{"onlyDots",
                "<svg><path d='M0 0h50' fill='none' stroke='red' stroke-width='2.8' stroke-linecap='round' "
                "stroke-dasharray='0 2'/></svg>",
                Code::Missing,
                "NoStones(gift.svg, OutlinesThereAre(CountOf(1, DottedLine(1)); CountOf(1, OpenLine(1))), "
                "TurnDotsIntoOutlines)"},
        BadFile{"noDiscs", "<svg><path d='M0 0h5v5z'/></svg>", Code::Missing,
                "NoStones(gift.svg, OutlinesThereAre(CountOf(1, NotRound(1))), DrawStonesAsCircles)"},
        BadFile{"aKilometre", "<svg width='1mm' viewBox='0 0 1 1'><circle r='1'/><circle cx='2e6' r='1'/></svg>",
                Code::OutOfRange, "StonesFarApart(gift.svg, 2000)"},
        BadFile{"aMicron", "<svg width='1mm' viewBox='0 0 1 1'><circle r='0.001'/></svg>", Code::Missing,
                "NoStones(gift.svg, OutlinesThereAre(CountOf(1, TooSmall(1))), SaveAtTrueSize(0.002, 0.002, 1.5, 12))"},
        BadFile{"beyondAllMeasure",
                "<svg><circle r='1' cx='1e9' transform='scale(1e9) scale(1e9)'/><circle r='1e400'/></svg>",
                Code::Missing,
                "NoStones(gift.svg, OutlinesThereAre(CountOf(1, BeyondAllMeasure(1)); CountOf(1, PlaceNotRead(1))), "
                "DrawStonesAsCircles)"},
        BadFile{"deep", "<svg>" + repeated("<g>", 200'000) + repeated("</g>", 200'000) + "</svg>", Code::TooLarge,
                "NestedTooDeep(gift.svg, 256)"},
        BadFile{"useBomb", useBomb(), Code::TooLarge, "TooManyRepeats(gift.svg)"},
        BadFile{"entityBomb", entityBomb(), Code::TooLarge, "EndlessEntities(gift.svg)"},
        BadFile{"entityLoop", "<!DOCTYPE svg [<!ENTITY a '&b;'><!ENTITY b '&a;'>]><svg>&a;</svg>", Code::TooLarge,
                "EndlessEntities(gift.svg)"},
        BadFile{"styleBomb",
                "<svg><style>" + repeated("g g g g g g g g g.a circle{fill:red}", 2000) + "</style>" +
                    repeated("<g>", 100) + repeated("<circle r='1'/>", 2000) + repeated("</g>", 100) + "</svg>",
                Code::TooLarge, "StyleSheetTooInvolved(gift.svg)"},
        BadFile{"aMillionDiscs", "<svg><path d='" + repeated("M0 0a1 1 0 102 0 1 1 0 10-2 0", 1'000'000) + "'/></svg>",
                Code::TooLarge, "TooManyOutlines(gift.svg, 500000)"},
        BadFile{"oneEndlessPath", "<svg><path d='M0 0" + repeated(" 1 1 0 0", 150'000) + "'/></svg>", Code::TooLarge,
                "TooManySegments(gift.svg)"},
        BadFile{"aMillionElements",
                "<svg>" + repeated("<circle cx='1' cy='1' r='1' fill='red'/>", 1'000'000) + "</svg>", Code::TooLarge,
                "FileTooLarge(gift.svg, 40)"},
        BadFile{"onePlace",
                "<svg width='9mm' viewBox='0 0 9 9'><path d='M0 0" +
                    repeated("a1 1 0 102 0 1 1 0 10-2 0m.021 0", 30'000) + "'/></svg>",
                Code::TooLarge, "DiscsByTheHundred(gift.svg)"}),
    [](const auto& tested) { return tested.param.name; });

// Dots of a dotted line, and how many there are. The first four were counted in what rsvg-convert (librsvg 2.54) draws
// of them, by connected components; SVG 1.1, section 11.4 says where a pattern begins, and that a dash without length
// has its round ends.
struct Dotted {
    const char* name;
    const char* shape;
    std::size_t dots;
    Point first;
    double radius = 1.5;
    std::size_t outlines = 0;
};
std::ostream& operator<<(std::ostream& out, const Dotted& dotted) { return out << dotted.name; }

class SvgDots : public testing::TestWithParam<Dotted> {};
TEST_P(SvgDots, areCounted) {
    const auto drawing = readSvg(std::string("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
                                             "<g fill='none' stroke='red' stroke-width='3' stroke-linecap='round'>") +
                                     GetParam().shape + "</g></svg>",
                                 "gift.svg");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    EXPECT_TRUE(drawing->leftOut.empty());
    EXPECT_EQ(drawing->outlines.size(), GetParam().outlines);
    ASSERT_EQ(drawing->discs.size(), GetParam().dots);
    EXPECT_NEAR(drawing->discs[0].centre.x, GetParam().first.x, 1e-9);
    EXPECT_NEAR(drawing->discs[0].centre.y, GetParam().first.y, 1e-9);
    for (const auto& disc : drawing->discs) {
        EXPECT_NEAR(disc.radius, GetParam().radius, 1e-9);
        EXPECT_EQ(drawing->inks[disc.ink].colour, "#ff0000");
        EXPECT_TRUE(drawing->inks[disc.ink].filled);
    }
}
INSTANTIATE_TEST_SUITE_P(
    Lines, SvgDots,
    testing::Values(
        Dotted{"endsOnADot", "<path d='M10 10h40' stroke-dasharray='0,4'/>", 11, {10, 10}},
        Dotted{"endsBetweenTwo", "<path d='M10 30h41' stroke-dasharray='0,4'/>", 11, {10, 30}},
        Dotted{"aCircle", "<circle cx='30' cy='70' r='15' stroke-dasharray='0,4.7123889'/>", 20, {45, 70}},
        Dotted{"aRectangle", "<rect x='60' y='50' width='30' height='20' stroke-dasharray='0,5'/>", 20, {60, 50}},
        Dotted{"movedBack", "<path d='M10 10h40' stroke-dasharray='0,4' stroke-dashoffset='1'/>", 10, {13, 10}},
        Dotted{"movedOn", "<path d='M10 10h40' stroke-dasharray='0,4' stroke-dashoffset='-1'/>", 10, {11, 10}},
        Dotted{"twoGaps", "<path d='M10 10h40' stroke-dasharray='0 4 0 8'/>", 8, {10, 10}},
        Dotted{"closedByItsEnd", "<path d='M10 10h10v10h-10v-10' stroke-dasharray='0 4'/>", 10, {10, 10}},
        Dotted{"closed", "<path d='M10 10h10v10h-10z' stroke-dasharray='0 4'/>", 10, {10, 10}},
        Dotted{"everyPartAnew", "<path d='M10 10h9M10 20h9' stroke-dasharray='0 4'/>", 6, {10, 10}},
        Dotted{"enlarged", "<path d='M10 10h40' transform='scale(2)' stroke-dasharray='0,4'/>", 11, {20, 20}, 3},
        Dotted{"aStraightLine", "<line x1='10' y1='10' x2='50' y2='10' stroke-dasharray='0 4'/>", 11, {10, 10}},
        Dotted{"filledToo", "<path d='M10 10h20v8z' fill='blue' stroke-dasharray='0 4'/>", 13, {10, 10}, 1.5, 1},
        Dotted{"hardlyLong", "<path d='M10 10h40' stroke-dasharray='.02 3.98'/>", 11, {10.01, 10}}),
    [](const auto& test) { return test.param.name; });

struct Uncounted {
    const char* name;
    const char* svg;
    std::vector<Note> notes;
};
void PrintTo(const Uncounted& row, std::ostream* out) { *out << row.name; }
class SvgUncounted : public testing::TestWithParam<Uncounted> {};
TEST_P(SvgUncounted, isNamedWithTheWayOn) {
    const auto drawing =
        readArtwork(fmt::format("<svg><defs><pattern id='p'><circle r='1'/></pattern><marker id='m'><circle r='1'/>"
                                "</marker></defs><circle r='1.4' cx='90'/>{}</svg>",
                                GetParam().svg),
                    "gift.svg");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    std::vector<Note> notes;
    for (const auto& [reason, count] : drawing->leftOut) notes.push_back(static_cast<Note>(reason.id.number));
    EXPECT_EQ(notes, GetParam().notes);
    const auto hidden = std::count(notes.begin(), notes.end(), Note::Hidden);
    EXPECT_EQ(drawing->warnings.size() + static_cast<std::size_t>(hidden), notes.size());
}
INSTANTIATE_TEST_SUITE_P(
    Shapes, SvgUncounted,
    testing::Values(
        Uncounted{"dotsThatTouch",
                  "<path d='M0 0h50' stroke='red' stroke-width='3' stroke-linecap='round' stroke-dasharray='0,2.9'/>",
                  {Note::DottedLine}},
        Uncounted{"dotsDrawnOval",
                  "<path d='M0 0h50' transform='scale(1,2)' stroke='red' stroke-width='3' stroke-linecap='round' "
                  "stroke-dasharray='0,4'/>",
                  {Note::DottedLine}},
        Uncounted{"dotsOfAGivenLength",
                  "<path d='M0 0h50' pathLength='9' stroke='red' stroke-width='3' stroke-linecap='round' "
                  "stroke-dasharray='0,4'/>",
                  {Note::DottedLine}},
        Uncounted{"dotsOfTheScreensWidth",
                  "<path d='M0 0h50' vector-effect='non-scaling-stroke' stroke='red' stroke-width='3' "
                  "stroke-linecap='round' stroke-dasharray='0,4'/>",
                  {Note::DottedLine}},
        Uncounted{"dotsByStyle",
                  "<g style='stroke:red;stroke-linecap:round;stroke-dasharray:.01px 5px'><line x2='50' "
                  "style='stroke-width:3mm'/></g>",
                  {Note::DottedLine}},
        Uncounted{"dashes",
                  "<path d='M0 0h50' stroke='red' stroke-width='3' stroke-linecap='round' stroke-dasharray='6 4'/>",
                  {}},
        Uncounted{"flatDashes", "<path d='M0 0h50' stroke='red' stroke-width='3' stroke-dasharray='0 4'/>", {}},
        Uncounted{"noDashes", "<path d='M0 0h50' stroke='red' stroke-linecap='round' stroke-dasharray='none'/>", {}},
        Uncounted{"noStroke", "<path d='M0 0h50' stroke-linecap='round' stroke-dasharray='0 4'/>", {}},
        Uncounted{"noGaps", "<path d='M0 0h50' stroke='red' stroke-linecap='round' stroke-dasharray='0 0'/>", {}},
        Uncounted{"pattern", "<rect width='50' height='50' fill='url(#p)'/>", {Note::PatternInside}},
        Uncounted{"markers", "<path d='M0 0h50' stroke='red' marker-mid='url(#m)'/>", {Note::MarkersOnALine}},
        Uncounted{"markersOff", "<g marker-end='url(#m)'><path d='M0 0h50' stroke='red' marker-end='none'/></g>", {}},
        Uncounted{"markersOnACircle", "<g marker-end='url(#m)'><circle r='1.4'/></g>", {}},
        Uncounted{"hiddenDots",
                  "<path d='M0 0h50' visibility='hidden' stroke='red' stroke-linecap='round' stroke-dasharray='0 4'/>",
                  {Note::Hidden}}),
    [](const auto& tested) { return tested.param.name; });

TEST(SvgReader, takesWideCharactersAndLatin) {
    std::string wide = "\xff\xfe";
    for (const char c : std::string("<svg><circle r='1'/></svg>")) wide += {c, '\0'};
    const auto drawing = readArtwork(wide, "wide.svg");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    EXPECT_EQ(drawing->discs.size(), 1);
    const auto latin = readArtwork(
        "<?xml version='1.0' encoding='ISO-8859-1'?><svg><g id='caf\xe9'><circle r='1'/></g></svg>", "latin.svg");
    ASSERT_TRUE(latin);
    EXPECT_EQ(latin->inks.at(0).layer, "caf\xc3\xa9");
}

struct ColourText {
    const char* text;
    int rgb; ///< -1 for none
};
void PrintTo(const ColourText& row, std::ostream* out) { *out << row.text; }
class Colours : public testing::TestWithParam<ColourText> {};
TEST_P(Colours, areRead) {
    const auto rgb = parseColour(GetParam().text);
    EXPECT_EQ(rgb ? static_cast<int>(*rgb) : -1, GetParam().rgb);
}
// CSS Color Module Level 4: examples of sections 5.2 (hex), 5.1 (rgb) and 7 (hsl: 120deg 100% 25% is
// #008000).
INSTANTIATE_TEST_SUITE_P(
    Css, Colours,
    testing::Values(ColourText{"#0f0", 0x00ff00}, ColourText{"#00ff00cc", 0x00ff00},
                    ColourText{"rgb(0, 255, 0)", 0x00ff00}, ColourText{"rgb(0%,100%,0%)", 0x00ff00},
                    ColourText{"rgba(51 170 51 / 0.4)", 0x33aa33}, ColourText{"hsl(120deg, 100%, 25%)", 0x008000},
                    ColourText{"hsl(-240, 100%, 50%)", 0x00ff00}, ColourText{"RebeccaPurple", 0x663399},
                    ColourText{"#12", -1}, ColourText{"#gggggg", -1}, ColourText{"nocolour", -1},
                    ColourText{"rgb(1,2)", -1}, ColourText{"", -1}));

} // namespace
} // namespace sp::artwork
