// SPDX-License-Identifier: MIT
#include "app/demo/demo_book.h"
#include "app/verbs/size_words.h"
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/json_schema.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <set>

using namespace sp;
using Json = nlohmann::json;
using testing::HasSubstr;

namespace {

class Verbs : public testing::Test {
  protected:
    Verbs() {
        m_helpers.environment = m_clock.environment();
        EXPECT_TRUE(demo::createDemoBook(book(), m_clock.environment()));
    }

    std::string book() const { return (m_folder / "demo.jobbook").string(); }
    verbs::Outcome run(std::vector<std::string> words) { return verbs::run(words, m_helpers); }
    Json json(std::vector<std::string> words) {
        words.push_back("--json");
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        EXPECT_TRUE(outcome.err.empty());
        return Json::parse(outcome.out, nullptr, false);
    }
    Json price(std::vector<std::string> more) {
        std::vector<std::string> words{"price", "--book", book()};
        words.insert(words.end(), more.begin(), more.end());
        return json(words);
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
};

/// A decimal string as whole micro-units, without floating point.
std::int64_t micros(const Json& amount) {
    return units::parseMoney(amount.get<std::string>(), units::Currency{}).value().micros();
}

void expectAddsUp(const Json& node) {
    EXPECT_FALSE(node["label"].get<std::string>().empty());
    EXPECT_FALSE(node["rule"].get<std::string>().empty()) << node["label"];
    if (node["children"].empty()) return;
    std::int64_t sum = 0;
    for (const auto& child : node["children"]) {
        expectAddsUp(child);
        sum += micros(child["amount"]);
    }
    EXPECT_EQ(sum, micros(node["amount"])) << node["label"];
}

TEST_F(Verbs, designsAreListed) {
    const auto answer = json({"designs", "--book", book()});
    ASSERT_EQ(answer["designs"].size(), 6u);
    EXPECT_EQ(answer["designs"][2]["name"], "Lantern");
}

TEST_F(Verbs, priceAddsUpForEveryDesign) {
    const auto designs = json({"designs", "--book", book()}); // outlives the loop over it
    for (const auto& design : designs["designs"])
        for (const auto* quantity : {"1", "7", "24", "1000"}) {
            const auto answer = price({"--design", design["name"], "--quantity", quantity});
            expectAddsUp(answer["cost"]);
            std::int64_t lines = 0;
            for (const auto& line : answer["lines"]) lines += micros(line["amount"]);
            EXPECT_EQ(lines, micros(answer["subtotal"]));
            EXPECT_EQ(micros(answer["subtotal"]) + micros(answer["tax"]), micros(answer["total"]));
            EXPECT_EQ(micros(answer["deposit"]) + micros(answer["balance"]), micros(answer["total"]));
            const double markUp = std::stod(answer["markup"].get<std::string>());
            const double margin = std::stod(answer["margin"].get<std::string>());
            EXPECT_NEAR(margin, markUp / (1 + markUp), 2e-6);
            EXPECT_EQ(micros(answer["profit"]), micros(answer["net"]) - micros(answer["cost"]["amount"]));
            EXPECT_LE(micros(answer["paid_out"]), micros(answer["cost"]["amount"]));
            EXPECT_EQ(answer["coverage"], "pays");
        }
}

TEST_F(Verbs, priceSaysWhatIsNotInIt) {
    EXPECT_TRUE(price({"--design", "Studio crest", "--quantity", "24"})["not_in_the_price"].empty());
    EXPECT_THAT(run({"price", "--book", book(), "--design", "Studio crest", "--quantity", "24"}).out,
                testing::Not(HasSubstr("Not in the price")));
    {
        auto opened = db::Book::open(book(), m_clock.environment());
        ASSERT_TRUE(opened);
        auto shop = (*opened)->shop().value();
        shop.usualTemplate = {};
        shop.rates.overheadPerMonth = {};
        ASSERT_TRUE((*opened)->save(shop));
    }
    EXPECT_EQ(price({"--design", "Studio crest", "--quantity", "24"})["not_in_the_price"],
              Json::parse(R"([{"code":"NoTemplate","says":"No template sheet is chosen","field":"Shop.usual_template"},
                              {"code":"NoOverhead","says":"Overhead is 0.00 a month",
                               "field":"ShopRates.overhead_per_month_micros"}])"));
    EXPECT_THAT(run({"price", "--book", book(), "--design", "Studio crest", "--quantity", "24"}).out,
                HasSubstr("Not in the price\n  No template sheet is chosen\n  Overhead is 0.00 a month\n"));
}

// 23 at 7.20 are 165.60, 24 at 6.80 are 163.20.
TEST_F(Verbs, priceOffersMoreWhereItCostsLess) {
    const auto answer = price({"--design", "Lantern", "--quantity", "23"})["more_for_less"];
    EXPECT_EQ(answer, (Json{{"pieces", 24}, {"total", "163.20"}, {"ordered", "165.60"}}));
    EXPECT_TRUE(price({"--design", "Lantern", "--quantity", "24"})["more_for_less"].is_null());
    const auto text = run({"price", "--book", book(), "--design", "Lantern", "--quantity", "23"}).out;
    EXPECT_NE(text.find("24 cost less than 23, 163.20 instead of 165.60: offer 24."), std::string::npos) << text;
}

// What is put on the order for the rush is earned: 60 % within two days.
TEST_F(Verbs, priceSaysWhatTheOrderEarns) {
    const auto plain = price({"--design", "Lantern", "--quantity", "24"});
    const auto rush = price({"--design", "Lantern", "--quantity", "24", "--due", "2026-11-27"});
    EXPECT_EQ(micros(plain["net"]), micros(plain["subtotal"]));
    EXPECT_EQ(micros(rush["net"]), micros(rush["subtotal"]));
    EXPECT_EQ(micros(rush["profit"]) - micros(plain["profit"]), micros(plain["subtotal"]) * 6 / 10);
    EXPECT_GT(micros(rush["earned_per_bench_hour"]), micros(plain["earned_per_bench_hour"]));
    const auto text =
        run({"price", "--book", book(), "--design", "Lantern", "--quantity", "24", "--due", "2026-11-27"}).out;
    EXPECT_NE(text.find("Leaves " + rush["profit"].get<std::string>().substr(0, 5)), std::string::npos) << text;
}

TEST_F(Verbs, priceTakesItsOptions) {
    const auto plain = price({"--design", "Paper boat", "--quantity", "24"});
    const auto onWall = price({"--design", "Paper boat", "--quantity", "24", "--wall-templates"});
    EXPECT_LT(micros(onWall["total"]), micros(plain["total"]));
    const auto rush = price({"--design", "Paper boat", "--quantity", "24", "--due", "2026-11-27"});
    EXPECT_EQ(micros(rush["subtotal"]) * 10, micros(plain["subtotal"]) * 16); // 60 % within two days
    const auto onTote = price({"--design", "Paper boat", "--quantity", "24", "--on", "Tote bag, canvas"});
    EXPECT_GT(micros(onTote["cost"]["amount"]), micros(plain["cost"]["amount"]));
}

TEST_F(Verbs, priceRefusesInOneSentence) {
    struct Row {
        std::vector<std::string> words;
        const char* says;
    };
    for (const Row& row : std::vector<Row>{
             {{"--design", "Nothing", "--quantity", "3"}, "no design named"},
             {{"--design", "Lantern", "--quantity", "0"}, "0 pieces"},
             {{"--design", "Lantern", "--quantity", "-4"}, "-4"},
             {{"--design", "Lantern", "--quantity", "2.5"}, "2.5"},
             {{"--design", "Lantern", "--quantity", "1e9"}, "1e9"},
             {{"--design", "Lantern", "--quantity", "99999999"}, "1,000,000"},
             {{"--design", "Lantern", "--quantity", "24", "--due", "soon"}, "soon"},
             {{"--design", "Lantern", "--quantity", "24", "--due", "2026-11-24"}, "lies before"},
             {{"--design", "Lantern", "--quantity", "24", "--on", "Jet SS10"}, "no backing or blank"},
             {{"--design", "Lantern", "--quantity", "24", "--on", "clear decal"}, "could be"},
         }) {
        std::vector<std::string> words{"price", "--book", book()};
        words.insert(words.end(), row.words.begin(), row.words.end());
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 1) << row.says;
        EXPECT_TRUE(outcome.out.empty());
        EXPECT_THAT(outcome.err, HasSubstr(row.says));
        EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 1) << outcome.err;
    }
}

TEST_F(Verbs, wrongUseIsTwo) {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {},
             {"sing"},
             {"price"},
             {"price", "--book"},
             {"price", "--book", book(), "--design", "Lantern"},
             {"price", "--book", book(), "--design", "Lantern", "--quantity", "3", "--colour", "red"},
             {"designs", "--book", book(), "extra"},
             {"demo"},
             {"check"},
             {"fit", "--sheet", "9x12in"},
             {"designs", "--book", book(), "--book", book()}}) {
        const auto outcome = run(words);
        EXPECT_EQ(outcome.exit, 2);
        EXPECT_FALSE(outcome.err.empty());
    }
}

TEST_F(Verbs, aGivenQuoteIsListedAndNumbered) {
    const auto given =
        json({"quote", "--book", book(), "--design", "Lantern", "--quantity", "24", "--customer", "larkspur"});
    const auto list = json({"quotes", "--book", book()})["quotes"];
    ASSERT_EQ(list.size(), 1u);
    EXPECT_EQ(list[0]["number"], given["number"]);
    EXPECT_EQ(list[0]["total"], given["total"]);
    EXPECT_EQ(list[0]["customer"], "Larkspur Lane Dance Studio");
    const auto report = json({"check", book()});
    EXPECT_EQ(report["sealed_quotes"], 1);
    EXPECT_EQ(report["sound"], true);
}

TEST_F(Verbs, repeatSaysWhatAQuoteComesToOnceMoreAndWhy) {
    const std::string number = json(
        {"quote", "--book", book(), "--design", "Paper boat", "--quantity", "24", "--due", "2026-11-27"})["number"];
    for (const auto* verb : {"agree", "start"}) json({verb, "--book", book(), "--quote", number});
    const auto told = json({"repeat", "--book", book(), "--quote", number});
    EXPECT_EQ(told["repeats"], number);
    EXPECT_TRUE(told["number"].is_null()) << "nothing is given by asking";
    std::int64_t sum = 0;
    std::vector<std::string> causes;
    for (const auto& cause : told["causes"]) {
        sum += micros(cause["on_total"]);
        causes.push_back(cause["what"]);
    }
    EXPECT_EQ(causes, (std::vector<std::string>{"Wanted by a day", "Templates of Paper boat are on the wall"}));
    EXPECT_EQ(sum, micros(told["total"]) - micros(told["total_then"]));
    EXPECT_EQ(sum, micros(told["difference"]));
    // The same by the verb that prices: no day, templates on the wall.
    EXPECT_EQ(told["total"], price({"--design", "Paper boat", "--quantity", "24", "--wall-templates"})["total"]);
    EXPECT_EQ(json({"quotes", "--book", book()})["quotes"].size(), 1U);

    const auto given = json({"repeat", "--book", book(), "--quote", number, "--give"});
    EXPECT_EQ(given["total"], told["total"]);
    EXPECT_NE(given["number"], number);
    EXPECT_EQ(json({"quotes", "--book", book()})["quotes"].size(), 2U);
    const auto said = run({"repeat", "--book", book(), "--quote", number});
    EXPECT_THAT(said.out, HasSubstr("Wanted by a day, was 2026-11-27"));
    EXPECT_THAT(run({"repeat", "--book", book(), "--quote", "2026-0999"}).err, HasSubstr("2026-0999"));
}

TEST_F(Verbs, exportsEverythingWithASchemaThatHolds) {
    const auto shop = (m_folder / "shop.jobbook").string();
    json({"demo", shop});
    const auto out = (m_folder / "out").string();
    const auto answer = json({"export", "--book", shop, "--dir", out});
    std::set<std::string> files;
    for (const auto& file : answer["files"]) files.insert(file);
    for (const auto* file : {"book.json", "book.schema.json", "customers.csv", "designs_stones.csv", "jobs.csv",
                             "jobs_lines_places_stones.csv", "materials.csv", "papers.csv", "payments.csv", "shop.csv"})
        EXPECT_TRUE(files.contains(file)) << file;
    const auto read = [&](const char* name) {
        std::ifstream file(std::filesystem::path(out) / name);
        return Json::parse(file, nullptr, false);
    };
    const auto schema = read("book.schema.json");
    auto book = read("book.json");
    ASSERT_FALSE(schema.is_discarded() || book.is_discarded());
    const test::Validator validator(schema);
    EXPECT_TRUE(validator.accepts(book));
    EXPECT_EQ(schema["$defs"]["ShopRates"]["properties"]["labour_per_hour_micros"]["description"], "labour rate");
    const auto quotes = json({"quotes", "--book", shop});
    const auto given =
        std::ranges::count_if(quotes["quotes"], [](const auto& quote) { return !quote["number"].is_null(); });
    const auto replaced = std::ranges::count_if(quotes["quotes"], [](const auto& quote) {
        return quote["number"].is_string() && quote["number"].template get<std::string>().ends_with("-2");
    });
    EXPECT_EQ(replaced, 1) << "one was revised";
    EXPECT_EQ(book["papers"].size(), static_cast<std::size_t>(given + replaced));
    EXPECT_EQ(book["jobs"].size(), quotes["quotes"].size());
    // The schema would notice.
    book["materials"][0]["unheard_of"] = 1;
    EXPECT_FALSE(validator.accepts(book));
    const auto again = run({"export", "--book", shop, "--dir", out});
    EXPECT_EQ(again.exit, 1);
    EXPECT_THAT(again.err, HasSubstr("is there already"));
}

TEST_F(Verbs, demoMakesAShopInTheMiddleOfItsJobs) {
    const auto shop = (m_folder / "shop.jobbook").string();
    EXPECT_EQ(json({"demo", shop})["demo"], true);
    EXPECT_GT(json({"quotes", "--book", shop})["quotes"].size(), 20u);
    EXPECT_EQ(json({"check", shop})["sound"], true);
    EXPECT_EQ(json({"owed", "--book", shop})["owed"].empty(), false);
}

// Of the demo's season: the replacement for the club is late, the paper boats wait for their deposit, a quote of 28
// days ago ends in two, the florists owe for their totes; what is ready was so today. A day on it waits to be
// collected.
TEST_F(Verbs, todaySaysWhatAsksForAttention) {
    EXPECT_EQ(run({"today", "--book", book()}).out, "Nothing asks for anything today.\n");
    const auto shop = (m_folder / "shop.jobbook").string();
    ASSERT_EQ(run({"demo", shop}).exit, 0);
    const auto asked = [&] {
        std::multiset<std::string> kinds;
        const auto today = json({"today", "--book", shop});
        for (const auto& job : today["jobs"]) kinds.insert(job["asks"].get<std::string>());
        return kinds;
    };
    EXPECT_THAT(asked(), testing::ElementsAre("deposit_missing", "lapsing", "owed", "wanted"));
    EXPECT_THAT(run({"today", "--book", shop}).out, HasSubstr("Wren and Daughter, florists, Clover row: collected, "));
    m_clock.now += std::chrono::hours(24);
    EXPECT_EQ(asked().count("not_collected"), 1u);
}

TEST_F(Verbs, todayNamesCertificatesThatEnd) {
    {
        auto opened = db::Book::open(book(), m_clock.environment());
        ASSERT_TRUE(opened);
        auto customers = (*opened)->customers().value();
        for (auto& customer : customers) {
            if (!customer.certificate) continue;
            customer.certificate->expiresOn = m_clock.environment().today().plusDays(30);
            ASSERT_TRUE((*opened)->save(customer));
        }
    }
    const auto ends = [&] { return json({"today", "--book", book()})["certificates"]; };
    ASSERT_EQ(ends().size(), 1u);
    EXPECT_EQ(ends()[0]["ends"], "2026-12-25");
    m_clock.now -= std::chrono::hours(24);
    EXPECT_TRUE(ends().empty());
}

TEST_F(Verbs, demoNeverReplacesABook) {
    const auto before = test::bytesOf(m_folder / "demo.jobbook");
    const auto outcome = run({"demo", book()});
    EXPECT_EQ(outcome.exit, 1);
    EXPECT_EQ(test::bytesOf(m_folder / "demo.jobbook"), before);
}

TEST_F(Verbs, missingAndForeignBooksAreNamed) {
    EXPECT_THAT(run({"designs", "--book", (m_folder / "none.jobbook").string()}).err, HasSubstr("none.jobbook"));
    test::writeBytes(m_folder / "text.jobbook", "Dear diary, this is not a book.");
    const auto outcome = run({"check", (m_folder / "text.jobbook").string()});
    EXPECT_EQ(outcome.exit, 1);
    EXPECT_THAT(outcome.err, HasSubstr("text.jobbook"));
}

TEST_F(Verbs, fitAnswersThePublishedInstances) {
    // E. G. Birgin, R. D. Lobato, R. Morabito, JORS 61 (2010): quadruples (L, W, l, w) and their optima.
    struct Row {
        const char* sheet;
        const char* piece;
        int count;
    };
    for (const Row& row : {Row{"40x25mm", "7x3mm", 47}, Row{"52x33mm", "9x4mm", 47}, Row{"57x44mm", "12x5mm", 41},
                           Row{"43x26mm", "7x3mm", 53}, Row{"49x28mm", "8x3mm", 57}}) {
        const auto answer = json({"fit", "--sheet", row.sheet, "--piece", row.piece});
        EXPECT_EQ(answer["count"], row.count) << row.sheet;
        EXPECT_EQ(answer["positions"].size(), static_cast<std::size_t>(row.count));
        EXPECT_EQ(answer["proven"], answer["count"] == answer["bound"]);
    }
    EXPECT_EQ(run({"fit", "--sheet", "9x12in", "--piece", "13x14in"}).exit, 1);
    EXPECT_EQ(run({"fit", "--sheet", "9x12", "--piece", "1x1"}).exit, 1);
    for (const char* option : {"--margin", "--gap"}) { // whatever the sheet is written in
        const auto bare = run({"fit", "--sheet", "9x12in", "--piece", "1x1in", option, "3"});
        EXPECT_EQ(bare.exit, 1);
        EXPECT_THAT(bare.err, HasSubstr("says no unit"));
    }
    EXPECT_EQ(run({"fit", "--sheet", "9x12in", "--piece", "1x1in", "--gap", "0"}).exit, 0);
    EXPECT_THAT(run({"estimate", "none.svg", "--stone", "SS10", "--pitch", "3.1", "--style", "fill"}).err,
                HasSubstr("says no unit"));
    EXPECT_THAT(run({"count", "none.svg", "--hole-allowance", "0.3"}).err, HasSubstr("says no unit"));
    EXPECT_EQ(run({"fit", "--sheet", "9x12in", "--piece", "0x1in"}).exit, 1);
}

TEST(SizeWords, readBothSides) {
    const auto inch = units::Length::fromInch64ths(64);
    for (const auto* text :
         {"9x12in", "9 x 12 in", "9in x 12in", "9×12in", "228.6x304.8mm", "9inx304.8mm", "9\"x12\""}) {
        const auto size = verbs::parseSize(text);
        ASSERT_TRUE(size.has_value()) << text << ": " << describe(size.error());
        EXPECT_EQ(size->width.nanometres(), 9 * inch.nanometres()) << text;
        EXPECT_EQ(size->height.nanometres(), 12 * inch.nanometres()) << text;
    }
    for (const auto* text : {"", "9", "9x", "x12in", "9x12", "9x12x3in", "axbin"})
        EXPECT_FALSE(verbs::parseSize(text).has_value()) << text;
}

TEST_F(Verbs, countsSeveralFilesAndSaysWhichItCannot) {
    const auto file = [this](const std::string& name, const std::string& text) {
        const auto path = (m_folder / name).string();
        std::ofstream(path) << text;
        return path;
    };
    const auto svg = file("a.svg", "<svg width='9mm' viewBox='0 0 9 9'><circle cx='4' cy='4' r='1.4'/></svg>");
    const auto plot = file("b.plt", "IN;SP1;PU100,200;CI56;PU300,200;CI56;SP0;");
    const auto both = json({"count", svg, plot})["files"];
    ASSERT_EQ(both.size(), 2);
    EXPECT_EQ(both[0]["file"], svg);
    EXPECT_EQ(both[0]["stones"][0]["count"], 1);
    EXPECT_EQ(both[1]["stones"][0]["count"], 2);
    EXPECT_EQ(both[1]["stones"][0]["size"], "SS10");
    const auto told = run({"count", svg, file("c.pdf", "%PDF-1.4"), plot});
    EXPECT_EQ(told.exit, 1);
    EXPECT_THAT(told.err, HasSubstr("is a PDF"));
    EXPECT_THAT(told.out, testing::AllOf(HasSubstr("a.svg:\n"), HasSubstr("b.plt:\n"), HasSubstr("SS10")));
    EXPECT_TRUE(json({"count", svg}).contains("stones")); // one alone is answered as itself
    EXPECT_EQ(run({"count"}).exit, 2);
}

TEST_F(Verbs, printTheirSchemas) {
    for (const char* verb : {"yield", "buy", "pack"})
        EXPECT_THAT(Json::parse(run({"schema", verb}).out)["title"].get<std::string>(), HasSubstr(verb));
    EXPECT_EQ(run({"schema", "price"}).exit, 1);
}

// A list as suppliers write it: common practice, no source.
TEST_F(Verbs, readsAPriceListAndTakesItOverWhenAsked) {
    const auto list = (m_folder / "list.csv").string();
    std::ofstream(list) << "Item No;Description;Size;Colour;Pack;Price\n"
                           "KR-1;Hot-fix stone;SS10;Jet;10 gross;7,20\n"
                           "KR-2;Hot-fix stone;SS16;Opal;1 gross;2,40\n"
                           "KR-3;Heat tool;;;each;14,00\n";
    const std::vector<std::string> words{"pricelist", list, "--book", book(), "--supplier", "kestrel"};
    auto reading = json(words);
    EXPECT_EQ(reading["columns"]["item"], "Item No");
    EXPECT_EQ(reading["decimal_comma"], true);
    ASSERT_EQ(reading["changes"].size(), 1U);
    EXPECT_EQ(reading["changes"][0]["material"], "Jet SS10");
    EXPECT_EQ(reading["changes"][0]["prices"][0]["each"], "7.20");
    EXPECT_EQ(reading["missing_stones"], 1);
    EXPECT_EQ(reading["not_taken"].size(), 2U);
    EXPECT_EQ(reading["taken"], false);
    EXPECT_EQ(json(words), reading) << "nothing is changed yet";
    auto taking = words;
    taking.insert(taking.end(), {"--make-missing", "--take"});
    const auto taken = json(taking);
    EXPECT_EQ(taken["changes"].size(), 2U);
    EXPECT_EQ(taken["changes"][1]["made"], true);
    EXPECT_EQ(taken["changes"][1]["material"], "Opal SS16");
    EXPECT_THAT(run({"materials", "--book", book()}).out, HasSubstr("Opal SS16"));
    reading = json(words);
    EXPECT_EQ(reading["changes"].size(), 0U);
    EXPECT_EQ(reading["as_they_were"], 2);
    EXPECT_THAT(run(words).out, HasSubstr("Nothing is changed yet"));
    EXPECT_EQ(run({"pricelist", list, "--book", book(), "--supplier", "Nobody"}).exit, 1);
    EXPECT_EQ(run({"pricelist", list + "x", "--book", book(), "--supplier", "Kestrel"}).exit, 1);
    EXPECT_EQ(run({"pricelist", list, "--book", book()}).exit, 2);
}

} // namespace
