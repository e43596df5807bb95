// SPDX-License-Identifier: MIT
// What a shop is told of what it earned, in a terminal.
#include "app/demo/demo_book.h"
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <map>
#include <string>

using namespace sp;
using Json = nlohmann::json;
using testing::HasSubstr;

namespace {

class FiguresVerb : public testing::Test {
  protected:
    FiguresVerb() {
        m_helpers.environment = m_clock.environment();
        EXPECT_EQ(run({"demo", m_book}).exit, 0);
    }
    verbs::Outcome run(std::vector<std::string> words) { return verbs::run(words, m_helpers); }
    Json figures(const std::vector<std::string>& more) {
        std::vector<std::string> words{"figures",    "--book", m_book,       "--from",
                                       "2000-01-01", "--to",   "2099-12-31", "--json"};
        words.insert(words.end(), more.begin(), more.end());
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out);
    }
    static std::int64_t micros(const Json& amount) {
        auto text = amount.get<std::string>();
        const auto point = text.find('.');
        text.append(6 - (text.size() - point - 1), '0');
        text.erase(point, 1);
        return std::stoll(text);
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
    const std::string m_book = (m_folder / "demo.jobbook").string();
};

TEST_F(FiguresVerb, addsUpToTheWholeWhicheverWayItIsSplit) {
    const auto all = figures({})["total"];
    EXPECT_GT(micros(all["income"]), 1'000'000'000) << "the demo has three months behind it";
    EXPECT_EQ(micros(all["income"]) - micros(all["cost"]) - micros(all["card_fee"]), micros(all["left"]));
    for (const auto* by : {"month", "week", "design", "customer", "quantity", "blank"}) {
        const auto told = figures({"--by", by});
        EXPECT_EQ(told["by"], by);
        EXPECT_EQ(told["total"], all);
        EXPECT_GT(told["groups"].size(), 1U) << by;
        std::int64_t pieces = 0;
        std::int64_t income = 0;
        for (const auto& group : told["groups"]) {
            pieces += group["pieces"].get<std::int64_t>();
            income += micros(group["income"]);
        }
        EXPECT_EQ(pieces, all["pieces"].get<std::int64_t>());
        EXPECT_EQ(income, micros(all["income"])) << by;
    }
}

TEST_F(FiguresVerb, saysWhatBecameOfQuotesAndHowFarAMonthIsCarried) {
    const auto told = figures({});
    EXPECT_TRUE(told["break_even"].is_null()) << "of more than a month it is not said";
    ASSERT_FALSE(told["quotes"].empty());
    const auto month = figures({})["groups"].back()["name"].get<std::string>();
    const auto outcome = run({"figures", "--book", m_book, "--from", month + "-01", "--to", month + "-28", "--json"});
    ASSERT_EQ(outcome.exit, 0) << outcome.err;
    const auto even = Json::parse(outcome.out)["break_even"];
    const auto open = db::Book::open(m_book, m_clock.environment());
    const auto overhead = (*open)->shop().value().rates.overheadPerMonth;
    EXPECT_EQ(micros(even["fixed_per_month"]), overhead.micros());
    EXPECT_EQ(micros(even["to_go"]),
              std::max<std::int64_t>(0, micros(even["fixed_per_month"]) - micros(even["contribution"])));
}

TEST_F(FiguresVerb, namesThingsByTheirIdsToo) {
    std::map<std::string, std::string> names;
    {
        const auto open = db::Book::open(m_book, m_clock.environment()); // while it is open the verb finds it taken
        const auto designs = (*open)->designs().value();
        const auto customers = (*open)->customers().value();
        for (const auto& design : designs) names[design.id.text()] = design.name;
        for (const auto& customer : customers) names[customer.id.text()] = customer.name;
    }
    for (const auto* by : {"design", "customer"}) {
        int known = 0;
        const auto told = figures({"--by", by});
        for (const auto& group : told["groups"]) {
            if (group["id"].is_null()) continue; // a charge, or nobody
            EXPECT_EQ(names[group["id"].get<std::string>()], group["name"].get<std::string>());
            ++known;
        }
        EXPECT_GT(known, 1) << by;
    }
    EXPECT_FALSE(figures({"--by", "month"})["groups"][0].contains("id"));
}

TEST_F(FiguresVerb, refusesWhatItCannotTell) {
    EXPECT_THAT(run({"figures", "--book", m_book, "--from", "2026-12-01", "--to", "2026-11-01"}).err,
                HasSubstr("turn the two round"));
    EXPECT_THAT(run({"figures", "--book", m_book, "--from", "2026-11-01", "--to", "2026-12-01", "--by", "moon"}).err,
                HasSubstr("--by is month, week, design, customer, quantity or blank, not moon."));
    const auto none = run({"figures", "--book", m_book, "--from", "2001-01-01", "--to", "2001-01-31"});
    EXPECT_EQ(none.exit, 0) << none.err;
    EXPECT_THAT(none.out, HasSubstr("together"));
}

} // namespace
