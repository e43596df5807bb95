// SPDX-License-Identifier: MIT
#include "core/catalogue/stage.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace sp::catalogue {

namespace {

constexpr Stage kAll[] = {Stage::Enquiry, Stage::Quoted,    Stage::Agreed,  Stage::InProduction,
                          Stage::Ready,   Stage::Collected, Stage::Declined};

bool follows(Stage from, Stage to) {
    const auto after = stagesAfter(from, from != Stage::Enquiry);
    return std::ranges::find(after, to) != after.end();
}

} // namespace

TEST(Stage, theUsualNextIsTheFirstThatMayFollow) {
    for (const auto stage : kAll) {
        const auto next = nextStage(stage);
        EXPECT_TRUE(!next || stagesAfter(stage, true).front() == *next);
    }
}

TEST(Stage, goesFromYesToTheCounterAgain) {
    std::vector<Stage> way{Stage::Quoted};
    while (const auto next = nextStage(way.back())) way.push_back(*next);
    EXPECT_THAT(
        way, testing::ElementsAre(Stage::Quoted, Stage::Agreed, Stage::InProduction, Stage::Ready, Stage::Collected));
}

TEST(Stage, whatIsGivenIsNoEnquiryAgain) {
    for (const auto stage : kAll) EXPECT_FALSE(stage != Stage::Enquiry && follows(stage, Stage::Enquiry));
    EXPECT_THAT(stagesAfter(Stage::Declined, false), testing::ElementsAre(Stage::Enquiry));
    EXPECT_THAT(stagesAfter(Stage::Enquiry, false), testing::ElementsAre(Stage::Declined)) << "it is given, not moved";
}

TEST(Stage, aSlipIsCorrectedAndWhatWasCollectedNotLetGo) {
    EXPECT_TRUE(follows(Stage::Agreed, Stage::Quoted));
    EXPECT_TRUE(follows(Stage::Collected, Stage::Ready));
    EXPECT_FALSE(follows(Stage::Collected, Stage::Declined));
    for (const auto stage : kAll) EXPECT_FALSE(follows(stage, stage));
}

TEST(Stage, aQuoteLapsesTheDayAfterItsLast) {
    const auto last = *units::Date::parse("2026-12-26");
    EXPECT_FALSE(isLapsed(Stage::Quoted, last, last));
    EXPECT_TRUE(isLapsed(Stage::Quoted, last, last.plusDays(1)));
    EXPECT_FALSE(isLapsed(Stage::Agreed, last, last.plusDays(1)));
    EXPECT_FALSE(isLapsed(Stage::Quoted, std::nullopt, last));
}

} // namespace sp::catalogue
