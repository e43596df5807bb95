// SPDX-License-Identifier: MIT
// Circles as drawing programs and cutters write them: forty in each file of tests/data/cut, 2.8 mm across.
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "core/artwork/messages.h"
#include "tests/support/test_data.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

namespace sp::artwork {
namespace {

Counted countOf(const std::string& text) {
    const auto drawing = readArtwork(text, "test.svg");
    EXPECT_TRUE(drawing) << describe(drawing.error());
    CountOptions options;
    options.millimetresPerUnit = drawing ? drawing->millimetresPerUnit.value_or(1) : 1;
    const auto counted = drawing ? countStones(*drawing, options, "test.svg") : base::Result<Counted>(Counted{});
    EXPECT_TRUE(counted) << describe(counted.error());
    return counted.value_or(Counted{});
}

std::string inside(const std::string& shapes) {
    return R"(<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">)" + shapes +
           "</svg>";
}

class CutterCircles : public testing::TestWithParam<const char*> {};
TEST_P(CutterCircles, areFortyStones) {
    std::ifstream in(test::dataFile(std::string("cut/") + GetParam()), std::ios::binary);
    const auto counted = countOf({std::istreambuf_iterator<char>(in), {}});
    ASSERT_EQ(counted.groups.size(), 1U);
    EXPECT_EQ(counted.groups[0].count, units::Count::of(40));
    EXPECT_NEAR(counted.groups[0].largest.millimetres(), 2.8, 0.01);
    EXPECT_EQ(counted.duplicates, 0U);
}
INSTANTIATE_TEST_SUITE_P(Files, CutterCircles,
                         testing::Values("spoke.svg", "css_transform.svg", "fill_and_hole.svg", "halves.svg",
                                         "overcut_lead.svg"),
                         [](const auto& row) {
                             const std::string name = row.param;
                             return name.substr(0, name.find('.'));
                         });

TEST(CutterCircle, aStoneInItsHoleHasItsOwnColour) {
    const auto counted = countOf(inside(R"(<circle cx="9" cy="9" r="1.4" fill="#00aaff"/>
        <circle cx="9" cy="9" r="1.55" fill="none" stroke="#ff0000"/>)"));
    ASSERT_EQ(counted.groups.size(), 1U);
    EXPECT_EQ(counted.groups[0].colour, "#00aaff");
}

TEST(CutterCircle, aDotInsideAMuchLargerHoleIsNotTheStone) {
    const auto counted = countOf(inside(R"(<circle cx="9" cy="9" r="0.95" fill="#00aaff"/>
        <circle cx="9" cy="9" r="1.55" fill="none" stroke="#ff0000"/>)"));
    ASSERT_EQ(counted.groups.size(), 1U);
    EXPECT_EQ(counted.groups[0].colour, "#ff0000");
}

TEST(CutterCircle, threeQuartersOfOneAreNot) {
    const auto drawing = readArtwork(inside(R"(<circle cx="50" cy="50" r="1.4"/>
        <path fill="none" stroke="red" d="M11.4,10A1.4,1.4 0 1 1 10,8.6"/>)"),
                                     "test.svg");
    ASSERT_TRUE(drawing);
    EXPECT_EQ(drawing->discs.size(), 1U);
    EXPECT_EQ(drawing->outlines.size(), 1U);
}

TEST(CutterCircle, twoHalvesOfDifferentCirclesAreNot) {
    const auto drawing = readArtwork(inside(R"(<path fill="none" stroke="red" d="M11.4,10A1.4,1.4 0 1 0 8.6,10"/>
        <path fill="none" stroke="red" d="M9.6,10A1.4,1.4 0 1 0 12.4,10"/>)"),
                                     "test.svg");
    ASSERT_TRUE(drawing);
    EXPECT_EQ(drawing->discs.size(), 0U);
    EXPECT_EQ(drawing->outlines.size(), 2U);
}

// CSS Transforms Level 1, section 8: lengths and angles with their units, the first outermost.
TEST(CutterCircle, stylesMoveAndSizeIt) {
    for (const char* shape :
         {R"svg(<circle style="transform:translate(10px,5px) scale(2)" r="0.7"/>)svg",
          R"svg(<circle transform="translate(70 70)" style="transform:translateX(10px) translateY(5px)" r="1.4"/>)svg",
          R"svg(<circle style="transform:rotate(90deg);cx:5px;cy:-10px;r:1.4px"/>)svg",
          R"svg(<circle style="transform:rotate(0.25turn)" cx="5" cy="-10" r="1.4"/>)svg",
          R"svg(<style>.s{transform:translate(10px,5px)}</style><circle class="s" r="1.4"/>)svg"}) {
        const auto drawing = readArtwork(inside(shape), "test.svg");
        ASSERT_TRUE(drawing) << shape;
        ASSERT_EQ(drawing->discs.size(), 1U) << shape;
        EXPECT_NEAR(drawing->discs[0].centre.x, 10, 1e-6) << shape;
        EXPECT_NEAR(drawing->discs[0].centre.y, 5, 1e-6) << shape;
        EXPECT_NEAR(drawing->discs[0].radius, 1.4, 1e-6) << shape;
        EXPECT_TRUE(drawing->warnings.empty()) << shape;
    }
}

TEST(CutterCircle, aMoveThatIsNotFollowedIsSaid) {
    for (const char* style : {"translate:10px", "transform:translate(50%,0)", "transform:perspective(3px)"}) {
        const auto drawing =
            readArtwork(inside(fmt::format(R"svg(<circle style="{}" r="1.4"/>)svg", style)), "test.svg");
        ASSERT_TRUE(drawing) << style;
        ASSERT_EQ(drawing->warnings.size(), 1U) << style;
        EXPECT_EQ(drawing->warnings[0], base::say(Note::TransformsNotRead, 1)) << style;
    }
}

TEST(CutterCircle, withoutAPlaceItIsLeftOutByName) {
    const auto drawing = readArtwork(
        inside(R"(<circle cx="nan" cy="9" r="1.4"/><circle cx="1e15" cy="9" r="1.4"/><circle cx="9" cy="9" r="1.4"/>)"),
        "test.svg");
    ASSERT_TRUE(drawing);
    EXPECT_EQ(drawing->discs.size(), 1U);
    EXPECT_EQ(drawing->leftOut.at(base::say(Note::PlaceNotRead)), 2U);
}

} // namespace
} // namespace sp::artwork
