// SPDX-License-Identifier: MIT
#include "app/verbs/count_verb.h"
#include "app/verbs/estimate_verb.h"
#include "app/words/words.h"

#include <gmock/gmock.h>

#include <cmath>

namespace sp::verbs {
namespace {

units::Length mm(double millimetres) { return units::Length::fromNanometres(std::llround(millimetres * 1e6)); }

CountRequest requestFor(const char* name) {
    CountRequest request;
    request.fileName = name;
    return request;
}

TEST(CountVerb, answersInTheAgreedShape) {
    const auto json =
        countStonesVerb("<svg width='100mm' height='100mm' viewBox='0 0 100 100'><g id='front' fill='#1f3a93'>"
                        "<circle cx='10' cy='10' r='1.395'/><circle cx='20' cy='10' r='1.405'/><circle cx='20' cy='10' "
                        "r='1.405'/>"
                        "<circle cx='30' cy='10' r='4.5'/></g><rect width='2' height='3'/></svg>",
                        requestFor("logo.svg"));
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_EQ(json->dump(),
              R"({"size_mm":[25.895,9.0],"scale":{"mm_per_unit":"1","from":"file"},"stones":[)"
              R"({"colour":"#1f3a93","layer":"front","size":"SS10","diameter_mm":["2.79","2.81"],"count":2},)"
              R"({"colour":"#1f3a93","layer":"front","size":null,"diameter_mm":["9","9"],"count":1}],)"
              R"("duplicates":1,"collisions":0,"left_out":[{"reason":"not round","count":1}],"warnings":[]})");
}

TEST(CountVerb, takesTheGivenScaleAndAllowance) {
    auto request = requestFor("holes.svg");
    request.scale = *artwork::parseScale("72 dpi");
    request.holeAllowance = mm(0.3);
    const auto json = countStonesVerb("<svg><circle r='4.3937'/></svg>", request); // 3.1 mm at 72 dpi
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_EQ((*json)["stones"][0]["size"], "SS10");
    EXPECT_EQ((*json)["scale"]["from"], "given");
    EXPECT_EQ((*json)["scale"]["mm_per_unit"], "0.35277778");
}

TEST(CountVerb, saysThatItGuessedTheScale) {
    const auto json = countStonesVerb("<svg><circle r='5.2913'/></svg>", requestFor("holes.svg")); // 2.8 mm at 96 dpi
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_EQ((*json)["scale"]["from"], "guess");
    EXPECT_EQ((*json)["stones"][0]["size"], "SS10");
    EXPECT_THAT((*json)["warnings"][0].get<std::string>(), testing::HasSubstr("1/96 in"));
}

TEST(CountVerb, refusesWithTheFilesName) {
    const auto json = countStonesVerb("PK\3\4", requestFor("gift.svg"));
    ASSERT_FALSE(json);
    EXPECT_THAT(words::text(json.error()), testing::HasSubstr("gift.svg is a zip file"));
}

TEST(CountVerb, writesAnyLayerAsText) {
    const auto json =
        countStonesVerb("<svg width='9mm' viewBox='0 0 9 9'><g id='\xff\xfe&quot;\x01'><circle r='1.4'/></g></svg>",
                        requestFor("odd.svg"));
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_NO_THROW(json->dump());
    EXPECT_EQ((*json)["stones"][0]["layer"], "\xc3\xbf\xc3\xbe\"");
}

EstimateOrder orderFor(const char* style) {
    EstimateOrder order;
    order.name = "plate.svg";
    order.stone = "ss20";
    order.pitch = mm(4.7);
    order.style = *parseStyle(style);
    return order;
}

// check: 12 sq in of SS20 are 350.4 stones in square rows (rhinestonesetc.com's worked product, 3 x 4 in
// times 29.20).
TEST(EstimateVerb, comesNearThePublishedProduct) {
    const auto json = estimateFile("<svg width='4in' height='3in' viewBox='0 0 4 3'><rect width='4' height='3'/></svg>",
                                   orderFor("fill"));
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_EQ((*json)["estimate"], true);
    EXPECT_EQ((*json)["stone"], "SS20");
    EXPECT_LE((*json)["least"], 351);
    EXPECT_GE((*json)["most"], 351);
    EXPECT_NEAR((*json)["area_mm2"].get<double>(), 12 * 645.16, 0.1);
    EXPECT_EQ((*json)["size_mm"][0], 101.6);
    EXPECT_EQ((*json)["scale"]["from"], "file");
}

TEST(EstimateVerb, knowsThreeStyles) {
    for (const char* style : {"outline", "fill", "both"}) {
        const auto json = estimateFile("<svg width='50mm' viewBox='0 0 50 50'><circle cx='25' cy='25' r='20'/></svg>",
                                       orderFor(style));
        ASSERT_TRUE(json) << describe(json.error());
        EXPECT_EQ((*json)["style"], style);
        EXPECT_GT((*json)["count"], 20);
    }
    EXPECT_EQ(parseStyle("zigzag").error().code, base::Code::Invalid);
}

// Along the edges, half a stone inside, round(length / pitch) stones to each side; a line takes one more.
TEST(EstimateVerb, tellsColoursApart) {
    auto order = orderFor("outline");
    order.stone = "SS10";
    order.pitch = mm(3.1);
    order.byColour = true;
    order.colours = *parseColours("blue=ss16@4.5mm,#0a0=none");
    const std::string file = "<svg width='100mm' viewBox='0 0 100 100'><rect width='30' height='20' fill='red'/>"
                             "<rect y='30' width='40' height='20' fill='blue'/><rect width='9' height='9' fill='#0a0'/>"
                             "<rect x='30' width='9' height='9' fill='white'/>"
                             "<path d='M0 80 h31' stroke='red' fill='none'/></svg>";
    const auto json = estimateFile(file, order);
    ASSERT_TRUE(json) << describe(json.error());
    const auto& colours = (*json)["colours"];
    ASSERT_EQ(colours.size(), 4U);
    EXPECT_EQ(colours[0]["colour"], "#ff0000");
    EXPECT_EQ(colours[0]["stone"], "SS10");
    EXPECT_EQ(colours[1]["colour"], "#0000ff");
    EXPECT_EQ(colours[1]["stone"], "SS16");
    EXPECT_EQ(colours[1]["pitch_mm"], "4.5");
    EXPECT_EQ(colours[2], (Json{{"colour", "#00aa00"}, {"free", true}}));
    EXPECT_EQ(colours[3], (Json{{"colour", "#ffffff"}, {"free", true}})) << "the paper";
    EXPECT_EQ((*json)["count"], colours[0]["count"].get<int>() + colours[1]["count"].get<int>());
    EXPECT_FALSE(colours[0]["range"].empty());
    EXPECT_THAT((*json)["warnings"], testing::Contains("1 line that ends somewhere is not set with stones."));
    order.withLines = true;
    const auto lined = estimateFile(file, order);
    ASSERT_TRUE(lined) << describe(lined.error());
    EXPECT_EQ((*lined)["colours"][0]["count"].get<int>(), colours[0]["count"].get<int>() + 11);
    EXPECT_EQ((*lined)["colours"][0]["lines_mm"], 31.0);
    order.colours = *parseColours("pink=SS10");
    EXPECT_EQ(words::text(estimateFile(file, order).error()),
              "There is no #ffc0cb in plate.svg; its colours are: #ff0000, #0000ff, #00aa00, #ffffff.");
    for (const char* text : {"red", "red=", "red=@4mm", "nonsense=SS10", "red=SS10,red=SS16", "red=SS10@"})
        EXPECT_FALSE(parseColours(text)) << text;
}

TEST(EstimateVerb, setsALineWhereThereIsNothingElse) {
    auto order = orderFor("fill");
    order.pitch = mm(5);
    const auto json = estimateFile(
        "<svg width='60mm' viewBox='0 0 60 60'><path d='M5 5 h50' stroke='red' fill='none'/></svg>", order);
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_EQ((*json)["count"], 11);
    EXPECT_EQ((*json)["how"], "in a row along the lines");
    EXPECT_EQ((*json)["range"], (Json{"The one stretch along the edge may take one more or less."}));
}

TEST(EstimateVerb, setsAnOutlineInAStoneOfItsOwn) {
    auto order = orderFor("both");
    order.outlineStone = "SS6";
    order.outlinePitch = mm(2.4);
    const auto json = estimateFile("<svg width='60mm' viewBox='0 0 60 40'><rect width='60' height='40'/></svg>", order);
    ASSERT_TRUE(json) << describe(json.error());
    EXPECT_EQ((*json)["outline"]["stone"], "SS6");
    EXPECT_EQ((*json)["filling"]["stone"], "SS20");
    EXPECT_EQ((*json)["count"], (*json)["outline"]["count"].get<int>() + (*json)["filling"]["count"].get<int>());
}

TEST(EstimateVerb, refusesAStoneItDoesNotKnow) {
    auto order = orderFor("fill");
    order.stone = "SS11";
    const auto json = estimateFile("<svg width='9mm' viewBox='0 0 9 9'><rect width='9' height='9'/></svg>", order);
    ASSERT_FALSE(json);
    EXPECT_EQ(json.error().code, base::Code::NotFound);
    EXPECT_EQ(words::text(json.error()), "There is no stone size SS11; the next to it are SS10 and SS12.");
    order.stone = "40";
    EXPECT_EQ(words::text(estimateFile("<svg/>", order).error()), "There is no stone size 40; the next to it is SS34.");
    order.stone = "large";
    EXPECT_EQ(words::text(estimateFile("<svg/>", order).error()),
              "There is no stone size large; take one of these: SS6, SS8, SS10, SS12, SS16, SS20, SS30, SS34.");
}

} // namespace
} // namespace sp::verbs
