// SPDX-License-Identifier: MIT
//
// The schemas that `stonepenny schema` prints, held against problems, their answers, and the readers themselves.
#include "app/verbs/problem_verbs.h"
#include "app/words/words.h"
#include "tests/support/test_data.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>

using namespace sp;
using verbs::Json;

namespace {

/// The part of JSON Schema, draft 2020-12, that the schemas use; another keyword in them fails the test.
class Validator {
  public:
    explicit Validator(Json root)
        : m_root(std::move(root)) {}

    bool accepts(const Json& value) const { return accepts(m_root, value); }
    bool acceptsAnswer(const Json& value) const { return accepts(m_root["$defs"]["answer"], value); }

  private:
    static bool isOfType(const std::string& type, const Json& value) {
        if (type == "object") return value.is_object();
        if (type == "array") return value.is_array();
        if (type == "string") return value.is_string();
        if (type == "integer") return value.is_number_integer();
        if (type == "number") return value.is_number();
        if (type == "boolean") return value.is_boolean();
        if (type == "null") return value.is_null();
        ADD_FAILURE() << "unknown type " << type;
        return false;
    }

    bool accepts(const Json& schema, const Json& value) const {
        return std::all_of(schema.items().begin(), schema.items().end(),
                           [&](const auto& rule) { return holds(rule.key(), rule.value(), schema, value); });
    }

    bool holds(const std::string& key, const Json& rule, const Json& schema, const Json& value) const {
        if (key == "$schema" || key == "title" || key == "description" || key == "$defs") return true;
        if (key == "properties") return true; // with additionalProperties, which all objects here have
        if (key == "type") return isOfType(rule, value);
        if (key == "$ref") return accepts(m_root["$defs"].at(rule.get<std::string>().substr(8)), value);
        if (key == "anyOf")
            return std::any_of(rule.begin(), rule.end(), [&](const Json& one) { return accepts(one, value); });
        if (key == "pattern")
            return !value.is_string() ||
                   std::regex_search(value.get<std::string>(), std::regex(rule.get<std::string>()));
        if (key == "minimum") return !value.is_number() || value.get<double>() >= rule.get<double>();
        if (key == "items")
            return std::all_of(value.begin(), value.end(), [&](const Json& one) { return accepts(rule, one); });
        if (key == "required")
            return std::all_of(rule.begin(), rule.end(), [&](const Json& name) { return value.contains(name); });
        if (key == "additionalProperties") return haveRoom(rule, schema, value);
        ADD_FAILURE() << "unknown keyword " << key;
        return false;
    }

    bool haveRoom(const Json& others, const Json& schema, const Json& value) const {
        const Json known = schema.value("properties", Json::object());
        return std::all_of(value.items().begin(), value.items().end(), [&](const auto& one) {
            if (known.contains(one.key())) return accepts(known[one.key()], one.value());
            return others.is_object() && accepts(others, one.value());
        });
    }

    Json m_root;
};

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
