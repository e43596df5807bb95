// SPDX-License-Identifier: MIT
// Customers in, out and erased by a verb.
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>

using namespace sp;
using Json = nlohmann::json;
using testing::HasSubstr;

namespace {

class CustomersVerb : public testing::Test {
  protected:
    CustomersVerb() {
        m_helpers.environment = m_clock.environment();
        m_helpers.writeSheet = [this](db::Book&, const db::Quote& quote, const std::string&,
                                      db::IfThere) -> base::Done {
            m_written.insert(quote.number);
            return {};
        };
        m_helpers.writeBill = [this](const db::IssuedBill& bill, const std::string&, db::IfThere) -> base::Done {
            m_written.insert(bill.number);
            return {};
        };
        const std::vector<std::string> demo{"demo", book()};
        EXPECT_EQ(verbs::run(demo, m_helpers).exit, 0);
    }
    std::string book() const { return (m_folder / "demo.jobbook").string(); }
    std::string at(const char* name) const { return (m_folder / name).string(); }
    std::string file(const char* name, const std::string& text) const {
        std::ofstream(m_folder / name) << text;
        return at(name);
    }
    verbs::Outcome run(std::vector<std::string> words, const std::string& of = {}) {
        words.insert(words.begin(), "customers");
        words.insert(words.end(), {"--book", of.empty() ? book() : of});
        return verbs::run(words, m_helpers);
    }
    Json json(std::vector<std::string> words, const std::string& of = {}) {
        words.push_back("--json");
        const auto outcome = run(words, of);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    }
    std::string refusal(const std::vector<std::string>& words) {
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 1) << outcome.out;
        return outcome.err;
    }
    bool isSound() {
        const auto outcome = verbs::run(std::vector<std::string>{"check", book(), "--json"}, m_helpers);
        return Json::parse(outcome.out, nullptr, false)["sound"] == true;
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
    std::set<std::string> m_written;
};

TEST_F(CustomersVerb, listsFindsAndShowsOne) {
    const auto all = json({})["customers"];
    EXPECT_GT(all.size(), 2U);
    const auto found = json({"--find", "wren"})["customers"];
    ASSERT_EQ(found.size(), 1U);
    const auto one = json({"--customer", "wren"});
    EXPECT_EQ(one["name"], found[0]["name"]);
    EXPECT_FALSE(one["jobs"].empty());
    EXPECT_TRUE(one.contains("owed"));
    EXPECT_THAT(refusal({"--customer", "nobody like that"}), HasSubstr("no customer"));
}

TEST_F(CustomersVerb, writesAllOfOneIntoAFolder) {
    const auto answer = json({"--customer", "wren", "--dir", at("out")});
    std::ifstream file(m_folder / "out" / "customer.json");
    const auto all = Json::parse(file, nullptr, false);
    std::set<std::string> papers;
    for (const auto& job : all["jobs"])
        for (const auto& paper : job["papers"]) papers.insert(paper["number"].get<std::string>());
    EXPECT_FALSE(papers.empty());
    EXPECT_EQ(papers, m_written);
    EXPECT_EQ(papers.size(), answer["papers"].get<std::size_t>());
    EXPECT_EQ(all["jobs"].size(), json({"--customer", "wren"})["jobs"].size());
    EXPECT_THAT(refusal({"--customer", "wren", "--dir", at("out")}), HasSubstr("there already"));
    EXPECT_THAT(refusal({"--customer", "wren", "--dir", at("no/such/out")}), HasSubstr("cannot be made"));
}

// Out of one book into another that has nobody: the same people, as a table with all, as cards but for certificates.
TEST_F(CustomersVerb, whatIsWrittenIsReadIntoAnotherBook) {
    const auto before = json({})["customers"];
    for (const char* name : {"people.csv", "people.vcf"}) {
        json({"--export", at(name)});
        const auto other = at(name) + ".jobbook";
        ASSERT_TRUE(db::Book::create(other, m_clock.environment()));
        EXPECT_EQ(json({"--import", at(name)}, other)["written"], false);
        EXPECT_TRUE(json({}, other)["customers"].empty()) << "nothing is done before it is meant";
        json({"--import", at(name), "--yes"}, other);
        auto after = json({}, other)["customers"];
        auto expected = before;
        if (std::string(name).ends_with(".vcf"))
            for (auto& one : expected) one["certificate"] = nullptr;
        EXPECT_EQ(after, expected) << name;
        const auto again = json({"--import", at(name)}, other);
        EXPECT_FALSE(again["contacts"].empty());
        for (const auto& row : again["contacts"]) EXPECT_EQ(row["becomes"], "known");
    }
    EXPECT_THAT(refusal({"--export", at("people.csv")}), HasSubstr("--force"));
    EXPECT_THAT(refusal({"--export", at("people.txt")}), HasSubstr(".vcf"));
}

TEST_F(CustomersVerb, saysWhatReadingWillDo) {
    const auto known = json({})["customers"][0];
    const auto path = file("mixed.csv", "name,telephone,mail\n" + known["name"].get<std::string>() +
                                            ",1 2 3 4 5 6 7,other@example.org\nAda Quince,555 0101,\n" +
                                            std::string(300, 'x') + ",,\n");
    const auto rows = json({"--import", path, "--yes"})["contacts"];
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[1]["becomes"], "new");
    EXPECT_EQ(rows[2]["becomes"], "refused");
    EXPECT_EQ(json({"--find", "Ada Quince"})["customers"][0]["telephone"], "555 0101");
    EXPECT_THAT(refusal({"--import", file("old.vcf", "BEGIN:VCARD\nVERSION:2.1\nEND:VCARD\n")}), HasSubstr("2.1"));
    EXPECT_THAT(refusal({"--import", file("nothing.csv", "phone\n1\n")}), HasSubstr("no column"));
    EXPECT_THAT(refusal({"--import", at("missing.vcf")}), HasSubstr("missing.vcf"));
}

TEST_F(CustomersVerb, erasesForGoodOnceThatIsMeant) {
    json({"--import", file("one.csv", "name,note\nOttoline Quillfeather,likes Jet\n"), "--yes"});
    const auto asked = run({"--erase", "Ottoline Quillfeather"});
    EXPECT_EQ(asked.exit, 0);
    EXPECT_THAT(asked.out, HasSubstr("Nothing was changed; add --yes"));
    EXPECT_FALSE(json({"--find", "Quillfeather"})["customers"].empty());
    EXPECT_EQ(json({"--erase", "Ottoline Quillfeather", "--yes"})["erased"], true);
    EXPECT_TRUE(json({"--find", "Quillfeather"})["customers"].empty());
    EXPECT_TRUE(isSound());
    EXPECT_THAT(refusal({"--erase", "Ottoline"}), HasSubstr("whole name"));
    // Somebody whose jobs are under way stays.
    EXPECT_THAT(refusal({"--erase", json({"--find", "wren"})["customers"][0]["name"].get<std::string>(), "--yes"}),
                testing::AnyOf(HasSubstr("still open"), HasSubstr("not quits")));
}

TEST_F(CustomersVerb, writesEachRevisionThatWasGivenToThem) {
    const auto verb = [&](std::vector<std::string> words) {
        words.insert(words.end(), {"--book", book(), "--json"});
        const auto outcome = verbs::run(words, m_helpers);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    };
    const auto first =
        verb({"quote", "--design", "Lantern", "--quantity", "24", "--customer", "Larkspur Lane Dance Studio"})["number"]
            .get<std::string>();
    const auto revise = [&](const std::string& number, const char* customer, const char* pieces) {
        const auto order = file("order.json", std::string(R"({"customer": ")") + customer +
                                                  R"(", "lines": [{"design": "Lantern", "pieces": )" + pieces + "}]}");
        return verb({"revise", "--quote", number, "--order", order, "--give"})["number"].get<std::string>();
    };
    const auto second = revise(first, "Juniper Hill Swim Club", "30");
    const auto third = revise(second, "Juniper Hill Swim Club", "36");
    m_written.clear();
    json({"--customer", "Juniper Hill Swim Club", "--dir", at("out")});
    EXPECT_TRUE(m_written.contains(second)) << "it was replaced, and is theirs";
    EXPECT_TRUE(m_written.contains(third));
    EXPECT_FALSE(m_written.contains(first)) << "somebody else's";
}

TEST_F(CustomersVerb, saysWhereACertificateIsFilledIn) {
    json({"--import", file("bare.csv", "name\nOttoline Quillfeather\n"), "--yes"});
    const auto path = file("more.csv", "name,certificate,certificate_place,certificate_issued_on\n"
                                       "Ottoline Quillfeather,77-01,Westmark,2026-02-01\n");
    const auto rows = json({"--import", path})["contacts"];
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0]["becomes"], "filled_in");
    EXPECT_EQ(rows[0].value("certificate_filled_in", false), true);
    EXPECT_THAT(run({"--import", path}).out, HasSubstr("certificate of exemption: Ottoline Quillfeather"));
}

TEST_F(CustomersVerb, namesTheCopiesThatHoldThePerson) {
    m_helpers.backups = {m_folder / "backups", m_folder / "stick"};
    std::string name;
    std::filesystem::path second;
    {
        auto opened = db::Book::open(book(), m_clock.environment());
        ASSERT_TRUE(opened);
        const auto mark = (*opened)->mark().value();
        const auto folder = db::backupFolder(m_helpers.backups.root, "demo", mark);
        std::filesystem::create_directories(folder);
        second = db::backupFolder(m_helpers.backups.second, "demo", mark);
        name = db::backupName("demo", mark, std::chrono::floor<std::chrono::seconds>(m_clock.now));
        ASSERT_TRUE((*opened)->copyTo(folder / name));
        catalogue::Customer made;
        made.name = "Ottoline Quillfeather";
        ASSERT_TRUE((*opened)->save(made));
    }
    const auto asked = json({"--erase", "Ottoline Quillfeather"});
    EXPECT_EQ(asked["second_place_away"], true);
    const auto away = HasSubstr("“" + at("stick") + "”, is not there now");
    EXPECT_THAT(run({"--erase", "Ottoline Quillfeather"}).out, away);
    const auto copies = asked["copies"];
    ASSERT_EQ(copies.size(), 1U);
    EXPECT_THAT(copies[0]["file"].get<std::string>(), HasSubstr(name));
    // Every day one more, from Monday's week on: gone once two months are over.
    const auto day = units::Date::parse(copies[0]["goes_on"].get<std::string>()).value();
    const auto days = m_clock.environment().today().daysUntil(day);
    EXPECT_GT(days, 10);
    EXPECT_LE(days, 62);
    std::filesystem::create_directories(second);
    std::filesystem::copy_file(copies[0]["file"].get<std::string>(), second / name);
    const auto both = json({"--erase", "Ottoline Quillfeather"});
    EXPECT_EQ(both["second_place_away"], false);
    ASSERT_EQ(both["copies"].size(), 2U);
    EXPECT_EQ(both["copies"][1]["file"], (second / name).string());
    EXPECT_EQ(both["copies"][1]["goes_on"], both["copies"][0]["goes_on"]);
    EXPECT_THAT(run({"--erase", "Ottoline Quillfeather"}).out, testing::Not(away));
}

} // namespace
