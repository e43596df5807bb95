// SPDX-License-Identifier: MIT
// Whole orders without a window. The sums are worked by hand beside them, from prices and a tax that are the demo's,
// so invented.
#include "app/demo/demo_book.h"
#include "app/verbs/verbs.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <sstream>

using namespace sp;
using Json = nlohmann::json;

namespace {

/// Lantern: 24 at 6.80 are 163.20; 30 at the 4.50 asked are 135.00; 298.20 less a tenth 268.38; 7.25 % of it is
/// 19.45755.
constexpr const char* kTwoLines = R"({
    "day": "2026-12-01",
    "discount": {"share": "0.1"},
    "lines": [
        {"design": "Lantern", "pieces": 24},
        {"title": "Paw", "size": "2x2in", "stones": [{"stone": "Jet SS10", "count": 40}], "pieces": "30",
         "on": "Clear decal backing 9 × 12 in", "price_each": "4.50"}
    ]
})";

class Orders : public testing::Test {
  protected:
    Orders() {
        m_helpers.environment = m_clock.environment();
        EXPECT_TRUE(demo::createDemoBook(book(), m_clock.environment()));
    }

    std::string book() const { return (m_folder / "demo.jobbook").string(); }

    verbs::Outcome run(const char* verb, const std::string& order, std::vector<std::string> more = {}) {
        const auto file = m_folder / "order.json";
        std::ofstream(file) << order;
        std::vector<std::string> words{verb, "--book", book(), "--order", file.string()};
        words.insert(words.end(), more.begin(), more.end());
        return verbs::run(words, m_helpers);
    }
    Json priced(const std::string& order) {
        const auto outcome = run("price", order, {"--json"});
        EXPECT_EQ(outcome.exit, 0) << outcome.err;
        return Json::parse(outcome.out, nullptr, false);
    }

    test::TempFolder m_folder;
    test::HeldClock m_clock;
    verbs::Helpers m_helpers;
};

} // namespace

TEST_F(Orders, pricesAndGivesEveryChoice) {
    const std::string choices = R"({"day": "2026-12-01", "choices": [
        {"lines": [{"design": "Lantern", "pieces": 24}]},
        {"title": "For the whole team", "discount": {"share": "0.1"}, "lines": [{"design": "Lantern", "pieces": 36}]}]})";
    const auto answered = priced(choices);
    ASSERT_EQ(answered["choices"].size(), 2U);
    EXPECT_EQ(answered["choices"][0]["difference"], "24 pieces");
    const auto one = priced(R"({"day": "2026-12-01", "lines": [{"design": "Lantern", "pieces": 24}]})");
    const auto two = priced(
        R"({"day": "2026-12-01", "discount": {"share": "0.1"}, "lines": [{"design": "Lantern", "pieces": 36}]})");
    EXPECT_EQ(answered["choices"][0]["total"], one["total"]);
    EXPECT_EQ(answered["choices"][0]["lines"], one["lines"]);
    EXPECT_EQ(answered["choices"][1]["total"], two["total"]);
    EXPECT_EQ(answered["choices"][1]["difference"], "For the whole team");
    const auto given = run("quote", choices, {"--json"});
    ASSERT_EQ(given.exit, 0) << given.err;
    const auto sealed = Json::parse(given.out);
    EXPECT_EQ(sealed["total"], one["total"]);
    EXPECT_EQ(sealed["choices"][1]["total"], two["total"]);
}

TEST_F(Orders, goFromYesToPaid) {
    const auto run = [&](std::vector<std::string> words) {
        words.insert(words.begin() + 1, {"--book", book(), "--quote", "2026-0001"});
        words.push_back("--json");
        return verbs::run(words, m_helpers);
    };
    const auto given = this->run("quote", R"({"choices": [{"lines": [{"design": "Lantern", "pieces": 24}]},
        {"lines": [{"design": "Lantern", "pieces": 36}]}]})",
                                 {"--json"});
    ASSERT_EQ(given.exit, 0) << given.err;
    EXPECT_EQ(run({"agree"}).exit, 1) << "which choice?";
    EXPECT_EQ(run({"pay", "--amount", "1"}).exit, 1);
    EXPECT_EQ(run({"agree", "--choice", "3"}).exit, 1);
    ASSERT_EQ(run({"agree", "--choice", "1"}).exit, 0);
    // 175.03 by the tests of the Counter; half of it, up to the next 5, is the deposit of 90.00.
    const auto paid = Json::parse(run({"pay", "--amount", "90", "--kind", "Card"}).out);
    EXPECT_EQ(paid["deposit"], "90.00");
    EXPECT_EQ(paid["deposit_left"], "0.00");
    EXPECT_EQ(paid["left"], "85.03");
    EXPECT_EQ(run({"pay", "--amount", "100"}).exit, 1) << "more than is left";
    EXPECT_EQ(run({"refund", "--amount", "90.01"}).exit, 1) << "more than was paid";
    EXPECT_EQ(run({"pay", "--amount", "-1"}).exit, 1);
    const auto back = Json::parse(run({"refund", "--amount", "5.03"}).out);
    EXPECT_EQ(back["left"], "90.06");
    EXPECT_EQ(back["given_back"], "5.03");
    EXPECT_FALSE(back.contains("taken"));
    for (const char* verb : {"start", "ready", "collect"}) EXPECT_EQ(run({verb}).exit, 0) << verb;
    const auto owed =
        Json::parse(verbs::run(std::vector<std::string>{"owed", "--book", book(), "--json"}, m_helpers).out);
    EXPECT_EQ(owed["sum"], "90.06");
    const auto slip = run({"pay", "--amount", "100"});
    EXPECT_EQ(slip.exit, 1) << "a slip, until somebody says what it is";
    EXPECT_NE(slip.err.find("change"), std::string::npos) << slip.err;
    EXPECT_EQ(run({"pay", "--amount", "100", "--change", "--credit"}).exit, 1);
    EXPECT_EQ(run({"pay", "--amount", "100", "--change", "--kind", "Card"}).exit, 1) << "change is cash";
    const auto changed = Json::parse(run({"pay", "--amount", "100", "--change"}).out);
    EXPECT_EQ(changed["taken"], "100.00");
    EXPECT_EQ(changed["change"], "9.94");
    EXPECT_EQ(changed["left"], "0.00");
    ASSERT_EQ(run({"refund", "--amount", "90.06"}).exit, 0);
    const auto all = Json::parse(run({"pay", "--amount", "100", "--credit"}).out);
    EXPECT_EQ(all["left"], "0.00");
    EXPECT_EQ(all["credit"], "9.94");
    const auto nothing = verbs::run(std::vector<std::string>{"owed", "--book", book()}, m_helpers);
    EXPECT_EQ(nothing.out, "Nothing is owed.\n");
}

TEST_F(Orders, refusesMoreChoicesThanFour) {
    const std::string choice = R"({"lines": [{"design": "Lantern", "pieces": 1}]})";
    const auto five = "{\"choices\": [" + choice + "," + choice + "," + choice + "," + choice + "," + choice + "]}";
    EXPECT_EQ(run("price", five).err, "choices must hold one to four choices.\n");
    EXPECT_EQ(run("price", R"({"choices": []})").err, "choices must hold one to four choices.\n");
    const auto both = R"({"lines": [], "choices": [)" + choice + "]}";
    EXPECT_EQ(run("price", both).exit, 1);
}

// The lanterns cost 98.54 beside the paws, with which they warm up and test the press: at 65 % 6.7746 each, 6.75 to the
// nearest five cents. 24 of them and 135.00 are 297.00; less a tenth 267.30, with 7.25 % 286.68.
TEST_F(Orders, comeToWhatIsWorkedByHand) {
    const auto answer = priced(kTwoLines);
    ASSERT_EQ(answer["lines"].size(), 2U);
    EXPECT_EQ(answer["day"], "2026-12-01");
    EXPECT_EQ(answer["lines"][0]["price_each"], "6.75");
    EXPECT_EQ(answer["lines"][0]["price_is_typed"], false);
    EXPECT_EQ(answer["lines"][0]["charged"], "162.00");
    EXPECT_EQ(answer["lines"][1]["title"], "Paw");
    EXPECT_EQ(answer["lines"][1]["price_each"], "4.50");
    EXPECT_EQ(answer["lines"][1]["price_is_typed"], true);
    EXPECT_EQ(answer["lines"][1]["charged"], "135.00");
    EXPECT_EQ(answer["goods"], "297.00");
    EXPECT_EQ(answer["discount"], "29.70");
    EXPECT_EQ(answer["subtotal"], "267.30");
    EXPECT_EQ(answer["tax"], "19.38");
    EXPECT_EQ(answer["tax_standing"], "charged");
    EXPECT_EQ(answer["total"], "286.68");
}

// 24 at 8.00 are 192.00 and 13.92 of tax. The demo asks for a deposit, so the card takes 2.9 % of 205.92 and twice
// 0.30: 6.57168.
TEST_F(Orders, sayWhatTheCardTakes) {
    constexpr const char* kLine = R"({"lines":[{"design":"Lantern","pieces":24,"price_each":"8.00"}]})";
    const auto without = priced(kLine)["earnings"];
    EXPECT_EQ(without["card_fee"], "0.00");
    EXPECT_EQ(without["floor"], without["paid_out"]);
    {
        auto opened = db::Book::open(book(), m_clock.environment());
        ASSERT_TRUE(opened);
        auto shop = (*opened)->shop().value();
        shop.rules.cardFee.charged = true;
        ASSERT_TRUE((*opened)->save(shop));
    }
    const auto answer = priced(kLine);
    const auto earnings = answer["earnings"];
    EXPECT_EQ(earnings["card_fee"], "6.57");
    EXPECT_EQ(earnings["cost"], without["cost"]);
    const auto amount = [](const Json& text) { return std::stod(text.get<std::string>()); };
    EXPECT_NEAR(amount(earnings["profit"]), amount(without["profit"]) - 6.57, 1e-6);
    // What is paid out is left of (paid out + 0.60) ÷ (1 − 0.029 × 1.0725).
    EXPECT_NEAR(amount(earnings["floor"]), (amount(earnings["paid_out"]) + 0.6) / 0.9688975, 1e-5);
    EXPECT_EQ(answer["lines"][0]["card_fee_each"], "0.27375");
    EXPECT_NEAR(amount(answer["lines"][0]["floor_each"]), amount(earnings["floor"]) / 24, 1e-5);
    EXPECT_THAT(run("price", kLine).out, testing::HasSubstr("Of the price the card takes 6.57\n"));
    const auto one = verbs::run(
        std::vector<std::string>{"price", "--book", book(), "--design", "Lantern", "--quantity", "24", "--json"},
        m_helpers);
    // 24 at 7.00, the calculated price, are 168.00 and 12.18: 5.22522 + 0.60.
    EXPECT_EQ(Json::parse(one.out, nullptr, false)["card_fee"], "5.83");
}

// Two tissue sheets at 4.20 for 100 and a care card at 18.75 for 250 with each of twelve, 1.008 and 0.90, and one
// carton at 9.50 for ten: 0.95. Of its own choice three bags at 6.20 for 100 with each: 2.232.
TEST_F(Orders, areCostedWithTheirPacking) {
    const auto answer = priced(R"({"lines": [{"design": "Studio crest", "pieces": 12}]})");
    const auto& line = answer["lines"][0];
    ASSERT_EQ(line["packing"].size(), 3U);
    EXPECT_EQ(line["packing"][2]["packing"], "Carton");
    EXPECT_EQ(line["packing"][2]["per"], "order");
    const auto packing = [](const auto& cost) {
        for (const auto& part : cost["children"])
            if (part["label"] == "Packing") return part["amount"].template get<std::string>();
        return std::string();
    };
    EXPECT_EQ(packing(line["cost"]), "2.858");
    const auto own = priced(R"({"lines": [{"design": "Studio crest", "pieces": 12,
                                           "packing": [{"packing": "Clear bag", "amount": 3}]}]})");
    EXPECT_EQ(packing(own["lines"][0]["cost"]), "2.232");
}

// Lantern 170.40 at 7.25 % are 12.354, the second line at 4 % 6.816.
TEST_F(Orders, areTaxedByTheRatesTheyName) {
    const auto answer = priced(R"({"lines": [{"design": "Lantern", "pieces": 24, "price_each": "7.10"},
        {"design": "Lantern", "pieces": 24, "price_each": "7.10", "tax_rate": "Sales tax, garments"}]})");
    ASSERT_EQ(answer["taxes"].size(), 2U);
    EXPECT_EQ(answer["taxes"][0]["name"], "Sales tax");
    EXPECT_EQ(answer["taxes"][0]["tax"], "12.35");
    EXPECT_EQ(answer["taxes"][1]["rate"], "0.04");
    EXPECT_EQ(answer["taxes"][1]["on"], "170.40");
    EXPECT_EQ(answer["taxes"][1]["tax"], "6.82");
    EXPECT_EQ(answer["tax"], "19.17");
}

// The demo expects 3 % to be spoiled: 100 × 3 ÷ 97 = 3.09 are four spares, 12 × 3 ÷ 97 = 0.37 none.
TEST_F(Orders, sayTheirSpares) {
    const auto spares =
        priced(R"({"lines":[{"design":"crest","pieces":100},{"design":"Lantern","pieces":12}]})")["lines"];
    EXPECT_EQ(spares[0]["spares"]["pieces"], 4);
    EXPECT_EQ(spares[0]["spares"]["of_pieces"], 100);
    EXPECT_EQ(spares[0]["spares"]["says"], "Spares: 4, as 3.09 of 100 are expected to be spoiled.");
    EXPECT_EQ(spares[1]["spares"]["pieces"], 0);
    EXPECT_EQ(spares[1]["spares"]["says"], "No spares: only 0.37 of 12 is expected to be spoiled.");
    EXPECT_THAT(run("price", R"({"lines":[{"design":"Lantern","pieces":24}]})").out,
                testing::HasSubstr("Spares: 1, as 0.74 of 24 are expected to be spoiled.\n"));
}

TEST_F(Orders, mayBeAtNoCharge) {
    const auto line = priced(R"({"lines": [{"design": "Lantern", "pieces": 24, "price_each": "7.10"},
                                           {"design": "Lantern", "pieces": 2, "at_no_charge": true}]})");
    EXPECT_EQ(line["goods"], "170.40");
    EXPECT_EQ(line["lines"][1]["at_no_charge"], true);
    EXPECT_EQ(line["lines"][1]["charged"], "0.00");
    EXPECT_EQ(line["lines"][1]["earnings"]["coverage"], "below_floor");
    const auto order = priced(R"({"at_no_charge": true, "lines": [{"design": "Lantern", "pieces": 2}]})");
    EXPECT_EQ(order["total"], "0.00");
    EXPECT_EQ(order["minimum_order_charge"], "0.00");
    EXPECT_EQ(order["earnings"]["own_tax"], "0.00");
}

TEST_F(Orders, ofOneLineComeToWhatItsOptionsComeTo) {
    const auto outcome = verbs::run(std::vector<std::string>{"price", "--book", book(), "--design", "Studio crest",
                                                             "--quantity", "12", "--due", "2026-12-02", "--json"},
                                    m_helpers);
    ASSERT_EQ(outcome.exit, 0) << outcome.err;
    const auto one = Json::parse(outcome.out, nullptr, false);
    const auto whole = priced(R"({"due":"2026-12-02","lines":[{"design":"crest","pieces":12}]})");
    const auto& line = whole["lines"][0];
    for (const auto* key : {"cost", "cost_each", "price_each"}) EXPECT_EQ(line[key], one[key]) << key;
    for (const auto* key : {"currency", "subtotal", "tax", "total", "deposit", "balance"})
        EXPECT_EQ(whole[key], one[key]) << key;
    ASSERT_EQ(line["ladder"].size(), one["ladder"].size());
    for (std::size_t i = 0; i < one["ladder"].size(); ++i) {
        EXPECT_EQ(line["ladder"][i]["pieces"], one["ladder"][i]["pieces"]);
        EXPECT_EQ(line["ladder"][i]["total"], one["ladder"][i]["total"]);
    }
}

TEST_F(Orders, chargeForSizesAndFreeTheExempt) {
    // The demo's hoodie asks 2.75 more for each 2XL: 3 × 2.75.
    const auto sizes = priced(
        R"({"lines":[{"design":"crest","pieces":12,"sizes":[{"size":"2XL","pieces":3}]}]})")["lines"][0]["sizes"];
    ASSERT_EQ(sizes.size(), 1U);
    EXPECT_EQ(sizes[0]["pieces"], 3);
    EXPECT_EQ(sizes[0]["each"], "2.75");
    EXPECT_EQ(sizes[0]["amount"], "8.25");
    const auto untaxed = priced(R"({"lines":[{"design":"Lantern","pieces":24,"taxable":false}]})");
    EXPECT_EQ(untaxed["tax"], "0.00");
    EXPECT_EQ(untaxed["total"], "163.20");
    const auto wished = priced(R"({"exempt":true,"lines":[{"design":"Lantern","pieces":24}]})");
    EXPECT_EQ(wished["tax_standing"], "exemption_missing");
    EXPECT_EQ(wished["total"], "175.03");
}

TEST_F(Orders, areGivenAsTheyArePriced) {
    const auto outcome = run("quote", kTwoLines, {"--json"});
    ASSERT_EQ(outcome.exit, 0) << outcome.err;
    const auto issued = Json::parse(outcome.out, nullptr, false);
    EXPECT_EQ(issued["total"], "286.68");
    const auto opened = db::Book::open(book(), m_clock.environment());
    ASSERT_TRUE(opened.has_value());
    const auto quote = (*opened)->quoteNumbered(issued["number"].get<std::string>());
    ASSERT_TRUE(quote.has_value());
    ASSERT_EQ(quote->order.lines.size(), 2U);
    EXPECT_EQ(quote->order.lines[1].title, "Paw");
    EXPECT_EQ(quote->sealedTotal, units::Money::fromMicros(286'680'000));
}

TEST_F(Orders, areReadFromTheStandardInput) {
    std::istringstream typed(kTwoLines);
    auto* const before = std::cin.rdbuf(typed.rdbuf());
    const auto outcome = verbs::run(std::vector<std::string>{"price", "--book", book(), "--order=-"}, m_helpers);
    std::cin.rdbuf(before);
    EXPECT_EQ(outcome.exit, 0) << outcome.err;
    EXPECT_THAT(outcome.out, testing::HasSubstr("286.68"));
}

TEST_F(Orders, areRefusedInOneSentence) {
    struct Bad {
        const char* order;
        const char* said;
    };
    for (const auto& bad :
         {Bad{"{", "The file is not JSON: check its brackets, commas and quotes."},
          Bad{"[]", "The file must be an object in braces."}, Bad{"{}", "lines is missing."},
          Bad{R"({"lines":[]})", "Nothing is ordered yet; type a design or add a one-off."},
          Bad{R"({"lines":[{"design":"Moth","pieces":1}]})",
              "There is no design named “Moth” in this book; check the spelling."},
          Bad{R"({"lines":[{"design":"Lantern"}]})", "lines[0].pieces is missing."},
          Bad{R"({"lines":[{"design":"Lantern","pieces":"two"}]})",
              "lines[0].pieces must be a number, as in 12 or \"12.50\"."},
          Bad{R"({"lines":[{"design":"Lantern","pieces":2,"peices":3}]})",
              "lines[0].peices is not known here: check its spelling or leave it out."},
          Bad{R"({"lines":[{"design":"Lantern","pieces":1}],"discount":{"share":"0.1","amount":"3"}})",
              "discount must have either a share or an amount, as in {\"share\":\"0.1\"}."},
          Bad{R"({"lines":[{"design":"Lantern","pieces":1}],"discount":{"share":"1.01"}})",
              "A discount is from 0 to 100 %; type another."},
          Bad{R"({"lines":[{"design":"crest","pieces":1,"customers_garment":true,"on":"Hoodie, navy"}]})",
              "lines[0].on goes with no customer’s garment: leave one of the two out."},
          Bad{R"({"lines":[{"design":"crest","pieces":1,"on":"Jet SS10"}]})",
              "There is no backing or blank named “Jet SS10” in this book; check the spelling."},
          Bad{R"({"lines": [{"design": "Lantern", "pieces": 1, "packing": [{"packing": "Jet SS10"}]}]})",
              "There is no packing named “Jet SS10” in this book; check the spelling."},
          Bad{R"({"lines": [{"design": "Lantern", "pieces": 1, "packing": [{"packing": "Care card", "per": "box"}]}]})",
              "lines[0].packing[0].per must be “piece” or “order”."},
          Bad{R"({"lines": [{"design": "Lantern", "pieces": 1, "tax_rate": "Books"}]})",
              "There is no tax rate “Books” in the shop any more; choose another for “Lantern”."}}) {
        const auto outcome = run("price", bad.order);
        EXPECT_EQ(outcome.exit, 1) << bad.order;
        EXPECT_EQ(outcome.err, std::string(bad.said) + "\n") << bad.order;
        EXPECT_EQ(run("quote", bad.order).exit, 1) << bad.order;
    }
    EXPECT_EQ(
        verbs::run(std::vector<std::string>{"price", "--book", book(), "--order", "x.json", "--design", "Lantern"},
                   m_helpers)
            .exit,
        2);
}
