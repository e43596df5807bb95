// SPDX-License-Identifier: MIT
// Revisions by verbs.
#include "app/demo/demo_book.h"
#include "app/verbs/verbs.h"
#include "core/units/text.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/test_data.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

using namespace sp;
using Json = nlohmann::json;
using testing::HasSubstr;

namespace {

class ReviseVerb : public testing::Test {
  protected:
    ReviseVerb() {
        m_helpers.environment = m_clock.environment();
        m_helpers.writeSheet = [this](db::Book&, const db::Quote& quote, const std::string&,
                                      db::IfThere) -> base::Done {
            m_written = quote.number;
            m_mark = quote.replacedBy ? quote.replacedBy->number : std::string();
            return {};
        };
        EXPECT_TRUE(demo::createDemoBook(book(), m_clock.environment()));
        m_quote =
            json({"quote", "--design", "Lantern", "--quantity", "24", "--customer", "Juniper Hill Swim Club"})["number"]
                .get<std::string>();
    }
    std::string book() const { return (m_folder / "demo.jobbook").string(); }
    verbs::Outcome run(std::vector<std::string> words) {
        words.insert(words.end(), {"--book", book()});
        return verbs::run(words, m_helpers);
    }
    Json json(std::vector<std::string> words) {
        words.push_back("--json");
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    }
    std::string refusal(std::vector<std::string> words) {
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 1) << outcome.out;
        return outcome.err;
    }
    std::string order(const char* text) {
        const auto file = m_folder / "order.json";
        test::writeBytes(file, text);
        return file.string();
    }
    void expectSound() { EXPECT_EQ(verbs::run(std::vector<std::string>{"check", book()}, m_helpers).exit, 0); }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
    std::string m_quote;
    std::string m_written;
    std::string m_mark;
};

std::int64_t micros(const Json& amount) {
    return units::parseMoney(amount.get<std::string>(), units::Currency{}).value().micros();
}

std::int64_t sumOf(const Json& answer) {
    std::int64_t sum = 0;
    for (const auto& line : answer["lines"]) sum += micros(line["difference"]);
    for (const auto& amount : answer["amounts"]) sum += micros(amount["difference"]);
    return sum;
}

constexpr const char* kMore = R"({"lines": [{"design": "Lantern", "pieces": 30},
                                            {"design": "Heron", "pieces": 2}]})";

TEST_F(ReviseVerb, saysTheDifferenceLineByLineAndGivesNothing) {
    const auto told = json({"revise", "--quote", m_quote, "--order", order(kMore)});
    EXPECT_EQ(told["revises"], m_quote);
    EXPECT_TRUE(told["number"].is_null());
    ASSERT_EQ(told["lines"].size(), 2U);
    EXPECT_EQ(told["lines"][0]["fate"], "changed");
    EXPECT_EQ(told["lines"][0]["was"]["pieces"], 24);
    EXPECT_EQ(told["lines"][0]["is"]["pieces"], 30);
    EXPECT_EQ(told["lines"][0]["parts"][0]["was"], "24");
    EXPECT_EQ(told["lines"][1]["fate"], "added");
    EXPECT_TRUE(told["lines"][1]["was"].is_null());
    EXPECT_TRUE(told["order"].empty()) << "for the customer the quote was for";
    EXPECT_EQ(sumOf(told), micros(told["difference"]));
    EXPECT_EQ(micros(told["total"]) - micros(told["total_was"]), micros(told["difference"]));
    EXPECT_EQ(micros(told["as_it_was_differs_today"]), 0);
    EXPECT_EQ(json({"quotes"})["quotes"].size(), 1U);
    const auto said = run({"revise", "--quote", m_quote, "--order", order(kMore)});
    EXPECT_THAT(said.out, HasSubstr("30 × Lantern: quantity: 30 (was 24)"));
    EXPECT_THAT(said.out, HasSubstr("2 × Heron: added"));
}

TEST_F(ReviseVerb, givesTheNextRevisionAndKeepsTheFirst) {
    json({"agree", "--quote", m_quote});
    json({"pay", "--quote", m_quote, "--amount", "20"});
    const auto given = json({"revise", "--quote", m_quote, "--order", order(kMore), "--give"});
    const auto second = m_quote + "-2";
    EXPECT_EQ(given["number"], second);
    const auto list = json({"quotes"})["quotes"];
    ASSERT_EQ(list.size(), 1U);
    EXPECT_EQ(list[0]["number"], second);
    EXPECT_EQ(list[0]["total"], given["total"]);
    EXPECT_EQ(list[0]["stage"], "Quoted") << "nobody has agreed to it yet";
    EXPECT_THAT(refusal({"agree", "--quote", m_quote}),
                HasSubstr("Quote " + m_quote + " was replaced by " + second + "; say that number instead."));
    json({"agree", "--quote", second});
    EXPECT_EQ(json({"owed"})["owed"][0]["paid"], "20.00");
    const auto papers = json({"papers", "--quote", m_quote});
    EXPECT_EQ(papers["quote"], second);
    ASSERT_EQ(papers["quotes"].size(), 2U);
    EXPECT_EQ(papers["quotes"][0]["replaced_by"], second);
    EXPECT_TRUE(papers["quotes"][1]["replaced_by"].is_null());
    const auto pdf = (m_folder / "out.pdf").string();
    EXPECT_EQ(json({"sheet", "--quote", m_quote, "--pdf", pdf})["replaced_by"], second);
    EXPECT_EQ(m_written, m_quote);
    EXPECT_EQ(m_mark, second);
    json({"sheet", "--quote", second, "--pdf", pdf});
    EXPECT_EQ(m_mark, "");
    expectSound();
}

TEST_F(ReviseVerb, givesALapsedQuoteAnewAtTodaysPrices) {
    m_clock.now += std::chrono::days(90);
    m_helpers.environment = m_clock.environment();
    const auto told = json({"revise", "--quote", m_quote, "--give"});
    EXPECT_EQ(told["number"], m_quote + "-2");
    EXPECT_EQ(micros(told["as_it_was_differs_today"]), micros(told["difference"])) << "nothing else is different";
    expectSound();
}

TEST_F(ReviseVerb, refusesInOneSentence) {
    EXPECT_THAT(refusal({"revise", "--quote", "2026-0999"}), HasSubstr("2026-0999"));
    json({"letgo", "--quote", m_quote});
    EXPECT_THAT(refusal({"revise", "--quote", m_quote, "--give"}),
                HasSubstr("Quote " + m_quote + " was let go and is not revised; order it again instead."));
    EXPECT_EQ(json({"quotes"})["quotes"].size(), 1U) << "no draft is left behind";
    EXPECT_THAT(refusal({"revise", "--quote", m_quote, "--order", "nowhere.json"}), HasSubstr("let go"));
    expectSound();
}

TEST_F(ReviseVerb, saysHowAnInvoicedJobIsSettled) {
    json({"agree", "--quote", m_quote});
    json({"invoice", "--quote", m_quote});
    const auto told = json({"revise", "--quote", m_quote, "--order", order(kMore), "--give"});
    EXPECT_THAT(told["note"].get<std::string>(), HasSubstr("is invoiced"));
    expectSound();
}

} // namespace
