// SPDX-License-Identifier: MIT
// Problems that were once answered badly, kept as files in tests/data/problems.
#include "app/verbs/problem_verbs.h"

#include "tests/support/test_data.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

using namespace sp;

namespace {

std::string problem(const std::string& name) {
    std::ifstream in(test::dataFile("problems/" + name));
    std::ostringstream text;
    text << in.rdbuf();
    EXPECT_FALSE(text.str().empty()) << name;
    return text.str();
}

verbs::Json bought(const std::string& name) {
    const auto answer = verbs::buyAnswer(problem(name));
    EXPECT_TRUE(answer.has_value()) << name;
    return answer.value_or(verbs::Json::object());
}

// The right costs are those of CBC 2.10.8 (Debian coinor-cbc).
TEST(ProblemCases, severalKitsOverTheSameMaterials) {
    const auto plan = bought("min133.json");
    EXPECT_EQ(plan["cost"], "72.56");
    EXPECT_TRUE(plan["proven"]);
}

TEST(ProblemCases, twoMinimumsOfAShop) { EXPECT_EQ(bought("real81.json")["cost"], "184.99"); }

TEST(ProblemCases, aMinimumThatIsFilledUp) {
    const auto plan = bought("adv30.json");
    EXPECT_EQ(plan["cost"], "200.00");
    EXPECT_GE(std::stod(plan["bound"].get<std::string>()), 199);
}

TEST(ProblemCases, thePlanOfAnEffortIsThePlanOfThatEffort) {
    for (const char* name : {"min133.json", "real81.json", "adv30.json"}) {
        const auto once = verbs::buyAnswer(problem(name), 5'000'000);
        const auto again = verbs::buyAnswer(problem(name), 5'000'000);
        ASSERT_TRUE(once && again);
        EXPECT_EQ(once->dump(), again->dump()) << name;
    }
}

verbs::Json packed(const std::string& name) {
    const auto answer = verbs::packAnswer(problem(name));
    EXPECT_TRUE(answer.has_value()) << name;
    return answer.value_or(verbs::Json::object());
}

// Worked by hand: three rows of three and the tags below; 101 + 99 = 200 on the long sheet, the last on a short one.
TEST(ProblemCases, whatFitsIsFound) {
    EXPECT_EQ(packed("nine-decals-four-tags.json")["sheets"], 1);
    EXPECT_EQ(packed("pack-three-pieces.json")["cost"], "3.10");
    EXPECT_EQ(packed("nine-decals-roll.json")["length"], "8.5in");
}

TEST(ProblemCases, moneyIsToldInMinorUnits) {
    const auto answer = verbs::buyAnswer(
        R"({"needs":[{"material":"M","count":3}],"suppliers":[{"id":"S"}],
            "packs":[{"id":"P","supplier":"S","gives":[{"material":"M","count":1}],"prices":[{"from":1,"each":"0.0125"}]}]})");
    ASSERT_TRUE(answer);
    EXPECT_EQ((*answer)["cost"], "0.04");
    EXPECT_TRUE((*answer)["proven"]);
}

} // namespace
