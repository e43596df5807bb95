// SPDX-License-Identifier: MIT
#include "app/verbs/problem_reader.h"
#include "app/verbs/problem_verbs.h"
#include "app/words/words.h"
#include "core/layout/mixed.h"
#include "core/units/apportion.h"
#include "core/units/text.h"

#include <unordered_set>

#include <algorithm>

namespace sp::verbs {

using base::Code;
using units::Length;
using units::LengthUnit;
using units::Money;

namespace {

/// A price for a length of roll, as "0.50/in" or "12/m".
struct LengthPrice {
    Money price;
    Length per;
};

struct Roll {
    std::string id;
    Length width;
    std::optional<LengthPrice> price;
};

struct PackProblem {
    std::vector<layout::MixedSheet> sheets;
    std::optional<Roll> roll;
    std::vector<layout::MixedPiece> pieces;
    layout::FitRules rules;
    std::int64_t budget = 200; ///< milliseconds
    std::unordered_set<std::string> ids{};
    LengthUnit unit = LengthUnit::Inch;
};

LengthPrice lengthPrice(const std::string& text, const std::string& place) {
    const auto slash = text.find('/');
    const std::string unit = slash == std::string::npos ? std::string() : text.substr(slash + 1);
    // A letter first: "in" is one inch; "2in" glued to a 1 would be twelve.
    const bool isUnit = !unit.empty() && unit.front() >= 'a' && unit.front() <= 'z';
    const auto length = units::parseLength("1" + unit, LengthUnit::Inch);
    if (!isUnit || !length || length->isZero())
        throw ProblemError{
            words::makeError(Code::Invalid, place,
                             QT_TRANSLATE_NOOP("App", "%1 must be a price for a length: write it as 0.50/in."), place)};
    const std::int64_t micros = exactDecimal(text.substr(0, slash), 6, place);
    if (micros < 0)
        throw ProblemError{words::makeError(Code::OutOfRange, place,
                                            QT_TRANSLATE_NOOP("App", "%1 must be 0 or more: change it."), place)};
    return {Money::fromMicros(micros), *length};
}

void readSheet(ProblemObject& object, PackProblem& problem) {
    const auto id = object.text("id");
    if (object.has("roll_width")) {
        Roll roll{id, object.length("roll_width"), std::nullopt};
        if (object.has("price_per_length"))
            roll.price = lengthPrice(object.text("price_per_length"), object.place("price_per_length"));
        problem.roll = std::move(roll);
    } else {
        const auto size = object.size("size");
        if (!problem.ids.insert("sheet " + id).second)
            throw ProblemError{words::makeError(
                Code::Ambiguous, id, QT_TRANSLATE_NOOP("App", "Two sheets are called %1: give each its own id."), id)};
        layout::MixedSheet sheet{id, {size.width, size.height}, {}, std::nullopt};
        if (object.has("price")) sheet.price = object.money("price");
        if (object.has("at_most")) sheet.atMost = object.count("at_most").value();
        if (problem.sheets.empty()) problem.unit = size.unit;
        problem.sheets.push_back(std::move(sheet));
    }
    object.done();
}

PackProblem packingOf(ProblemObject& object) {
    PackProblem problem;
    auto sheets = object.list("sheets");
    for (auto& sheet : sheets) readSheet(sheet, problem);
    if (problem.roll && sheets.size() > 1)
        throw ProblemError{
            words::makeError(Code::Invalid, "sheets",
                             QT_TRANSLATE_NOOP("App", "A roll is planned by itself: leave out the other sheets."))};
    if (object.has("margin")) problem.rules.margin = object.length("margin");
    if (object.has("gap")) problem.rules.gap = object.length("gap");
    if (object.has("turn")) problem.rules.oneWay = !object.flag("turn");
    for (auto& piece : object.list("pieces")) {
        const auto id = piece.text("id");
        if (!problem.ids.insert("piece " + id).second)
            throw ProblemError{words::makeError(
                Code::Ambiguous, id, QT_TRANSLATE_NOOP("App", "Two pieces are called %1: give each its own id."), id)};
        const auto size = piece.size("size");
        if (problem.roll && problem.pieces.empty()) problem.unit = size.unit;
        problem.pieces.push_back(
            {id, {size.width, size.height}, piece.has("count") ? piece.count("count").value() : 1});
        piece.done();
    }
    if (object.has("budget_ms")) problem.budget = object.count("budget_ms").value();
    if (problem.budget < 1 || problem.budget > 60'000)
        throw ProblemError{words::makeError(Code::OutOfRange, "budget_ms",
                                            QT_TRANSLATE_NOOP("App", "budget_ms must be 1 to 60,000: change it."))};
    return problem;
}

Json placementsJson(const PackProblem& problem, const std::vector<layout::Placement>& placements,
                    const std::vector<std::size_t>& kinds) {
    Json list = Json::array();
    for (const auto& placement : placements) {
        const auto& of =
            problem.roll ? problem.roll->id : problem.sheets[kinds[static_cast<std::size_t>(placement.sheet)]].id;
        list.push_back({{"sheet", placement.sheet + 1},
                        {"of", of},
                        {"piece", problem.pieces[placement.piece].id},
                        {"x", decimal(placement.at.x, problem.unit) + std::string(units::nameOf(problem.unit))},
                        {"y", decimal(placement.at.y, problem.unit) + std::string(units::nameOf(problem.unit))},
                        {"turned", placement.at.turned}});
    }
    return list;
}

base::Result<Json> sheetsAnswer(const PackProblem& problem, const layout::MixedEffort& effort) {
    const auto plan = layout::packSheets(problem.sheets, problem.pieces, problem.rules, effort);
    if (!plan) return base::fail(plan.error());
    const units::Currency currency;
    Json json{{"sheets", plan->sheets.size()},
              {"cost", units::formatExact(plan->cost, currency)},
              {"bound", plan->sheetBound},
              {"proven", plan->proven}};
    if (problem.sheets.size() > 1) json["cost_bound"] = units::formatExact(plan->costBound, currency);
    json["placements"] = placementsJson(problem, plan->placements, plan->sheets);
    return json;
}

base::Result<Json> rollAnswer(const PackProblem& problem, const layout::MixedEffort& effort) {
    const auto plan = layout::packRoll(problem.roll->width, problem.pieces, problem.rules, effort);
    if (!plan) return base::fail(plan.error());
    const auto written = [&](Length length) {
        return decimal(length, problem.unit) + std::string(units::nameOf(problem.unit));
    };
    Json json{{"length", written(plan->length)}};
    if (problem.roll->price)
        json["cost"] = units::formatExact(
            units::forLength(problem.roll->price->price, problem.roll->price->per, plan->length), units::Currency{});
    json["bound"] = written(plan->bound);
    json["proven"] = plan->proven;
    json["placements"] = placementsJson(problem, plan->placements, {});
    return json;
}

} // namespace

base::Result<Json> packAnswer(std::string_view problemText, std::int64_t mostSteps) {
    const auto problem = readProblem(problemText, packingOf);
    if (!problem) return base::fail(problem.error());
    constexpr std::int64_t kStepsInAMillisecond = 60'000;
    const layout::MixedEffort effort{std::min(mostSteps, problem->budget * kStepsInAMillisecond), {}};
    return problem->roll ? rollAnswer(*problem, effort) : sheetsAnswer(*problem, effort);
}

} // namespace sp::verbs
