// SPDX-License-Identifier: MIT
// Jobs found by a verb, on the demo's orders: what each option leaves is told from the list of all.
#include "app/demo/demo_orders.h"
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <functional>

using namespace sp;
using Json = nlohmann::json;

namespace {

class FindVerb : public testing::Test {
  protected:
    FindVerb() {
        m_helpers.environment = m_clock.environment();
        auto made = demo::createBusyDemo(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(made.has_value());
    }
    verbs::Outcome run(std::vector<std::string> words) {
        words.insert(words.end(), {"--book", (m_folder / "demo.jobbook").string()});
        return verbs::run(words, m_helpers);
    }
    Json json(std::vector<std::string> words) {
        words.push_back("--json");
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
};

struct FindRow {
    std::vector<std::string> options;
    std::function<bool(const Json&)> isFound;
};

TEST_F(FindVerb, eachOptionLeavesWhatItSays) {
    const auto all = json({"quotes"})["quotes"];
    const auto owed = json({"owed"})["owed"];
    const std::vector<FindRow> rows{
        {{}, [](const Json&) { return true; }},
        {{"--lapsed"}, [](const Json& job) { return job["lapsed"] == true; }},
        {{"--stage", "quoted"}, [](const Json& job) { return job["stage"] == "Quoted"; }},
        {{"--stage", "Making"}, [](const Json& job) { return job["stage"] == "Making"; }},
        {{"--from", "2026-11-15"}, [](const Json& job) { return job["quoted_on"] >= "2026-11-15"; }},
        {{"--to", "2026-11-15"}, [](const Json& job) { return job["quoted_on"] <= "2026-11-15"; }},
        {{"--unpaid"},
         [&](const Json& job) {
             return std::ranges::any_of(owed, [&](const Json& one) { return one["number"] == job["number"]; });
         }},
    };
    for (const auto& row : rows) {
        Json expected = Json::array();
        for (const auto& job : all)
            if (row.isFound(job)) expected.push_back(job);
        std::vector<std::string> words{"find", ""};
        words.insert(words.end(), row.options.begin(), row.options.end());
        const auto answer = json(words);
        EXPECT_FALSE(expected.empty()) << words.back() << ": or it says nothing";
        EXPECT_EQ(answer["quotes"], expected) << words.back();
        EXPECT_EQ(answer["more"], false) << words.back();
    }
}

TEST_F(FindVerb, whatALimitCutsIsSaid) {
    const auto all = json({"quotes"})["quotes"];
    ASSERT_GT(all.size(), 2U);
    const auto two = json({"find", "", "--limit", "2"});
    EXPECT_EQ(two["quotes"], (Json{all[0], all[1]}));
    EXPECT_EQ(two["more"], true);
    EXPECT_TRUE(run({"find", "", "--limit", "2"}).out.ends_with("\nThere are more; take a higher limit.\n"));
    EXPECT_EQ(run({"find", ""}).out.find("There are more"), std::string::npos);
}

TEST_F(FindVerb, refusesAStageThereIsNot) {
    const auto outcome = run({"find", "", "--stage", "boiling"});
    EXPECT_EQ(outcome.exit, 1);
    EXPECT_NE(outcome.err.find("“boiling”"), std::string::npos) << outcome.err;
}

} // namespace
