// SPDX-License-Identifier: MIT
//
// The schemas that `stonepenny schema` prints, held against problems, their answers, and the readers themselves.
#include "app/verbs/problem_verbs.h"
#include "app/words/words.h"
#include "tests/support/json_schema.h"
#include "tests/support/test_data.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

using namespace sp;
using test::Validator;
using verbs::Json;

namespace {

Validator validatorOf(const std::string& verb) {
    const auto schema = verbs::schemaOf(verb);
    EXPECT_TRUE(schema) << verb;
    return Validator(Json::parse(schema.value_or("{}")));
}

base::Result<Json> answerOf(const std::string& verb, const std::string& problem) {
    if (verb == "yield") return verbs::yieldAnswer(problem);
    if (verb == "buy") return verbs::buyAnswer(problem, 200'000);
    return verbs::packAnswer(problem, 200'000);
}

void expectFits(const std::string& verb, const std::string& problem) {
    const Validator validator = validatorOf(verb);
    EXPECT_TRUE(validator.accepts(Json::parse(problem))) << problem;
    const auto answer = answerOf(verb, problem);
    ASSERT_TRUE(answer) << words::text(answer.error());
    EXPECT_TRUE(validator.acceptsAnswer(*answer)) << answer->dump(2);
}

TEST(ProblemSchemas, holdOfTheKeptProblemsAndTheirAnswers) {
    std::size_t seen = 0;
    for (const auto& entry : std::filesystem::directory_iterator(test::dataFile("problems"))) {
        SCOPED_TRACE(entry.path().filename().string());
        std::ifstream in(entry.path());
        const std::string problem{std::istreambuf_iterator<char>(in), {}};
        expectFits(Json::parse(problem).contains("sheets") ? "pack" : "buy", problem);
        ++seen;
    }
    EXPECT_GE(seen, 6U);
}

TEST(ProblemSchemas, holdOfEveryKeyThereIs) {
    expectFits("yield", R"({"kits":2,"kit":{"price":"39.95","items":[{"material":"gold","count":1440},
        {"material":"tape","sheets":2,"sheet":"9.5x12in","uses":"3"}]},
        "piece":{"needs":[{"material":"gold","count":"220"},{"material":"tape","size":"4x4in","margin":"0","gap":"2mm"}]},
        "loss":{"gold":"0.02"},"short":{"gold":0.014}})");
    expectFits("yield", R"({"kit":{"items":[{"material":"gold","count":1}]},
        "piece":{"needs":[{"material":"gold","count":9}]}})");
    expectFits("buy", R"({"needs":[{"material":"M","count":"300"}],"shelf":[{"material":"M","count":20}],
        "packs":[{"id":"P","supplier":"S","gives":[{"material":"M","count":144}],"at_most":9,
        "prices":[{"from":1,"each":"4.00"},{"from":2,"each":3.5}]}],
        "suppliers":[{"id":"S","shipping":"7.5","free_from":"50","minimum":0}]})");
    expectFits("buy", R"({"needs":[{"material":"M","count":300}],"packs":[],"suppliers":[]})");
    expectFits("pack", R"({"sheets":[{"id":"S","size":"9x12in","price":"1.20","at_most":4}],"margin":"0.25in","gap":"0",
        "turn":false,"budget_ms":5,"pieces":[{"id":"a","size":"3x4in","count":7},{"id":"b","size":"2 x 2 in"}]})");
    expectFits("pack", R"({"sheets":[{"id":"R","roll_width":"9in","price_per_length":"0.50/in"}],
        "pieces":[{"id":"a","size":"3x4in","count":2}]})");
}

struct Wrong {
    const char* name;
    const char* verb;
    const char* problem;
};
void PrintTo(const Wrong& row, std::ostream* out) { *out << row.name; }
class WrongProblems : public testing::TestWithParam<Wrong> {};
TEST_P(WrongProblems, areRefusedByTheSchemaAndByTheReader) {
    EXPECT_FALSE(validatorOf(GetParam().verb).accepts(Json::parse(GetParam().problem)));
    EXPECT_FALSE(answerOf(GetParam().verb, GetParam().problem));
}
INSTANTIATE_TEST_SUITE_P(
    Keys, WrongProblems,
    testing::Values(
        Wrong{"noPiece", "yield", R"({"kit":{"items":[]}})"},
        Wrong{"unknownKey", "buy", R"({"needs":[],"packs":[],"suppliers":[],"hurry":true})"},
        Wrong{"textForAList", "buy", R"({"needs":"none","packs":[],"suppliers":[]})"},
        Wrong{"aPackWithoutPrices", "buy",
              R"({"needs":[{"material":"M","count":1}],"suppliers":[{"id":"S"}],
                              "packs":[{"id":"P","supplier":"S","gives":[]}]})"},
        Wrong{"wordsForACount", "pack",
              R"({"sheets":[{"id":"S","size":"9x12in"}],"pieces":[{"id":"a","size":"1x1in","count":"two"}]})"},
        Wrong{"oneSide", "pack", R"({"sheets":[{"id":"S","size":"9in"}],"pieces":[{"id":"a","size":"1x1in"}]})"},
        Wrong{"numberForALength", "pack", R"({"sheets":[{"id":"S","size":"9x12in"}],"pieces":[],"gap":1})"}),
    [](const testing::TestParamInfo<Wrong>& tested) { return std::string(tested.param.name); });

TEST(ProblemSchemas, areThree) {
    EXPECT_EQ(words::text(verbs::schemaOf("price").error()),
              "There is no schema price; there are yield, buy and pack.");
    EXPECT_FALSE(verbs::schemaOf("../schemas/buy"));
}

} // namespace
