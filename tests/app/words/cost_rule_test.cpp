// SPDX-License-Identifier: MIT
//
// The rule beside a figure is the only formula that the owner sees: what it says is reckoned and must be the figure.
#include "app/words/cost_words.h"
#include "core/units/expression.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <functional>
#include <regex>

using namespace sp;
using catalogue::Step;
using costing::Part;
using sample::cents;
using sample::idOf;
using units::Count;
using units::Duration;
using units::Fraction;
using units::Length;
using units::Money;
using units::Rate;
using words::CostTree;

namespace {

void replaceAll(std::string& text, std::string_view what, std::string_view instead) {
    for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += instead.size())
        text.replace(at, what.size(), instead);
}

/// "1 h 20 min" as a sum of hours, for rates are by the hour.
std::string inHours(std::string text) {
    static const std::regex kTime(R"((?:(\d+) h\b ?)?(?:(\d+) min\b ?)?(?:([\d.]+) s\b)?)");
    std::string out;
    std::smatch found;
    while (std::regex_search(text, found, kTime)) {
        if (found.length() == 0) { // nothing here: on to the next place
            out += text.substr(0, 1);
            text.erase(0, 1);
            if (text.empty()) break;
            continue;
        }
        const auto part = [&](std::size_t i) { return found[i].matched ? found[i].str() : std::string("0"); };
        out += found.prefix().str() + "(" + part(1) + "+" + part(2) + "/60+" + part(3) + "/3600) ";
        text = found.suffix();
    }
    return out + text;
}

/// A rule as arithmetic alone. `named` is the amount that a rule names in words ("all the above").
std::string arithmeticOf(std::string rule, Money named) {
    const std::string amount = "(" + std::to_string(named.micros()) + "/1000000)";
    rule = std::regex_replace(rule, std::regex(R"(\([a-z ]+\))"), ""); // where the price is from
    rule = std::regex_replace(rule, std::regex(R"(.*(pieces|packed) (?=× \(1 ÷))"),
                              amount + " "); // what is lost with the pieces
    if (const auto at = rule.rfind(" = "); at != std::string::npos) rule.erase(0, at + 3);
    if (const auto at = rule.rfind(": "); at != std::string::npos) rule.erase(0, at + 2);
    rule = std::regex_replace(rule, std::regex(R"(of \w*[A-Z]\w*)"), "");                  // 3 of 2XL
    rule = std::regex_replace(rule, std::regex(R"(([\d.]+) % of ([\d,]+))"), "$1 % × $2"); // of the pieces
    rule = std::regex_replace(rule, std::regex(R"((\d+) of (\d+) planned)"), "$1 ÷ $2");   // of the planned ones
    rule = std::regex_replace(rule, std::regex(R"(off a roll of)"), "÷");                  // of its length
    rule = std::regex_replace(rule, std::regex(R"((\d+) in\b)"), "$1");
    rule = std::regex_replace(rule, std::regex(R"((\d),(\d))"), "$1$2");
    rule = std::regex_replace(rule, std::regex(R"(/ (\d+))"), "÷ $1");
    rule = inHours(rule);
    replaceAll(rule, "%", "/100");
    rule = std::regex_replace(rule, std::regex("[A-Za-z,]+"), "");
    replaceAll(rule, "×", "*");
    replaceAll(rule, "÷", "/");
    replaceAll(rule, " ", "");
    replaceAll(rule, "−", " - "); // without spaces 3-1/2 is three and a half
    return rule;
}

units::Grammar plainNumbers() {
    units::Grammar grammar{};
    grammar.kind = units::Note::AnAmount;
    grammar.example = units::Note::AmountExample;
    grammar.thousandsExpected = true;
    return grammar;
}

Money worthOf(const std::string& rule, Money named = {}) {
    const auto arithmetic = arithmeticOf(rule, named);
    const auto grammar = plainNumbers();
    const auto text = units::takeIn(arithmetic, grammar);
    EXPECT_TRUE(text.has_value()) << rule << " is read as " << arithmetic;
    if (!text) return {};
    const auto worth = units::evaluate(*text, text->folded.size(), grammar, {});
    EXPECT_TRUE(worth.has_value()) << rule << " is read as " << arithmetic;
    return worth ? Money::fromExact(*worth * Fraction::of(1'000'000)) : Money{};
}

/// Whether the amount follows from the words alone.
bool isReckoned(Part part) {
    constexpr std::array sums{Part::Job,  Part::Stones,   Part::Packing, Part::Press,
                              Part::Wear, Part::Overhead, Part::Spoilage};
    return std::ranges::find(sums, part) == sums.end();
}

void expectRules(const catalogue::OrderLine& line, const catalogue::PriceBook& book, std::size_t least) {
    const auto sheet = sample::costed(line, book);
    const auto root = words::explain(line, book, sheet);
    const auto valueOf = [&](Part part, std::size_t index = 0) {
        return sample::findAmount(sheet, part, index).value_or(Money{});
    };
    Money pieceLabour;
    for (const auto step : catalogue::kSteps)
        if (!catalogue::isOncePerJob(step) && step != catalogue::Step::Pack)
            pieceLabour += valueOf(Part::LabourStep, static_cast<std::size_t>(step));
    const Money tests = Money::fromExact(
        Fraction::ratio((book.bench.press.price - book.bench.press.salvage).micros() * book.bench.press.testPresses,
                        book.bench.press.lifePresses));
    const auto& rates = book.shop.rates;
    const Money overhead =
        Money::fromExact(rates.overheadPerMonth.exact() * Fraction::ratio(sheet.bench.untilPacked().milliseconds(),
                                                                          rates.productivePerMonth.milliseconds()));
    std::size_t reckoned = 0;
    const std::function<void(const CostTree&)> check = [&](const CostTree& node) {
        for (const auto& child : node.children) check(child);
        if (!isReckoned(node.part) || (node.part == Part::Base && !node.children.empty())) return;
        Money named; // what the words name without a number
        if (node.part == Part::SpoiledMaterials)
            named = line.customersGarment ? valueOf(Part::Stones)
                                          : valueOf(Part::Stones) + valueOf(Part::Tape) + valueOf(Part::Base) +
                                                valueOf(Part::PressCycles) + valueOf(Part::SecondPress);
        if (node.part == Part::SpoiledWork)
            named = line.customersGarment ? pieceLabour : pieceLabour + valueOf(Part::PressWear) - tests + overhead;
        if (node.part == Part::Template && line.first().templatesOnWall) return;
        ++reckoned;
        EXPECT_NEAR(static_cast<double>(worthOf(node.rule, named).micros()), static_cast<double>(node.amount.micros()),
                    1)
            << node.label << ": " << node.rule << " is read as " << arithmeticOf(node.rule, named);
    };
    check(root);
    EXPECT_GE(reckoned, least);
}

/// The sample shop with every part of the cost in it.
catalogue::PriceBook book() {
    auto made = sample::priceBook();
    auto& press = made.bench.press;
    press.secondPressShare = Rate::fromPercent(15);
    press.secondDwell = Duration::fromSeconds(5);
    press.testPresses = 2;
    made.bench.cutter.salvage = cents(5'000);
    made.bench.of(Step::Lift) = {Duration::fromSeconds(90), {}, Duration::fromSeconds(20), {}};
    return made;
}

catalogue::SheetTraits& sheetOf(catalogue::PriceBook& made, std::string_view name) {
    return made.materials[idOf(name)].material.sheet;
}

TEST(Rule, ofEveryPartSaysTheFigure) { expectRules(sample::lantern(), book(), 19); }

TEST(Rule, ofPlannedTemplatesAndOneTestSaysTheFigure) {
    auto line = sample::square(25);
    line.first().plannedPieces = Count::of(96);
    line.first().artTime = Duration::fromMinutes(35);
    auto made = book();
    made.bench.press.testPresses = 1;
    sheetOf(made, "Tape").basis = catalogue::ShareBasis::WholeSheets;
    expectRules(line, made, 19);
    line.first().plannedPieces = Count::of(12);
    expectRules(line, made, 19);
}

TEST(Rule, ofSharesByPositionSaysTheFigure) {
    auto made = book();
    for (const auto* name : {"Tape", "Template", "Backing"})
        sheetOf(made, name).basis = catalogue::ShareBasis::ByPosition;
    expectRules(sample::square(25), made, 19);
}

TEST(Rule, ofRollsSaysTheFigure) {
    auto made = book();
    for (const auto* name : {"Tape", "Template", "Backing"}) {
        sheetOf(made, name).form = catalogue::SheetForm::Roll;
        sheetOf(made, name).height = Length::fromInch64ths(64 * 120);
    }
    expectRules(sample::square(25), made, 19);
}

TEST(Rule, ofBlanksAndLargePiecesSaysTheFigure) {
    auto line = sample::square(25);
    line.baseMaterial = idOf("Hoodie");
    line.sizes = {{"M", Count::of(10)}, {"2XL", Count::of(3)}};
    auto made = book();
    expectRules(line, made, 20);
    made.bench.press.platenWidth = made.bench.press.platenHeight = Length::fromInch64ths(64 * 3);
    expectRules(line, made, 20);
}

TEST(Rule, ofTemplatesOnTheWallAndACustomersGarmentSaysTheFigure) {
    auto line = sample::square(25);
    line.customersGarment = true;
    line.baseMaterial = {};
    expectRules(line, book(), 19);
    line.first().templatesOnWall = true;
    expectRules(line, book(), 12);
}

// What a reader of rules must tell apart, so that it cannot agree with anything.
TEST(RuleReader, reckonsWhatIsWritten) {
    EXPECT_EQ(worthOf("212 a piece × 24 pieces ÷ (1 − 2 % loss) × 9.99 / 1,440 (sample supplier)").micros(),
              36'018'367);
    EXPECT_EQ(worthOf("1 h 20 min × 540.00 a month ÷ 120 h of bench time").micros(), 6'000'000);
    EXPECT_EQ(worthOf("25 % of 24 pieces × (5 s dwell + 20 s handling) × 36.00 an hour").micros(), 1'500'000);
    EXPECT_EQ(worthOf("labour of the pieces × (1 ÷ (1 − 20 %) − 1)", cents(800)).micros(), 2'000'000);
}

} // namespace
