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
