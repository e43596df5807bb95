// SPDX-License-Identifier: MIT
#include "app/verbs/owner_answer.h"

#include "app/verbs/verb_kit.h"
#include "app/words/owner_words.h"

#include <fmt/format.h>

namespace sp::verbs {

Json earningsJson(const pricing::Earnings& earned, const units::Currency& currency) {
    const auto money = [&](units::Money amount) { return units::formatExact(amount, currency); };
    return {{"net", money(earned.net)},
            {"cost", money(earned.cost)},
            {"paid_out", money(earned.paidOut)},
            {"own_tax", money(earned.ownTax)},
            {"card_fee", money(earned.cardFee)},
            {"floor", money(earned.floor)},
            {"profit", money(earned.profit)},
            {"markup", orNull(earned.markUp)},
            {"margin", orNull(earned.margin)},
            {"earned_per_bench_hour", earned.perBenchHour ? Json(money(*earned.perBenchHour)) : Json(nullptr)},
            {"coverage", codeOf(earned.coverage)}};
}

const char* codeOf(pricing::PriceCoverage coverage) {
    switch (coverage) {
    case pricing::PriceCoverage::Pays: return "pays";
    case pricing::PriceCoverage::BelowCost: return "below_cost";
    case pricing::PriceCoverage::BelowFloor: return "below_floor";
    }
    return "";
}

std::string earnedText(const pricing::Earnings& earned, const units::Currency& currency) {
    const auto percent = [](const std::optional<units::Rate>& rate) {
        return rate ? fmt::format("{:.1f} %", static_cast<double>(rate->ppm()) / 10'000)
                    : told(QT_TRANSLATE_NOOP("App", "none"));
    };
    const auto profit = units::formatMoney(earned.profit, currency);
    auto text =
        earned.perBenchHour
            ? line(QT_TRANSLATE_NOOP("App", "Leaves %1: mark-up %2, margin %3, earned per bench hour %4"), profit,
                   percent(earned.markUp), percent(earned.margin), units::formatMoney(*earned.perBenchHour, currency))
            : line(QT_TRANSLATE_NOOP("App", "Leaves %1: mark-up %2, margin %3"), profit, percent(earned.markUp),
                   percent(earned.margin));
    if (!earned.ownTax.isZero())
        text += line(QT_TRANSLATE_NOOP("App", "Of the cost %1 is tax on what is given away"),
                     units::formatMoney(earned.ownTax, currency));
    if (!earned.cardFee.isZero())
        text += line(QT_TRANSLATE_NOOP("App", "Of the price the card takes %1"),
                     units::formatMoney(earned.cardFee, currency));
    const auto warning =
        words::orderCoverage(earned.coverage, QString::fromStdString(units::formatMoney(earned.floor, currency)));
    if (!warning.isEmpty()) text += warning.toStdString() + "\n";
    return text;
}

Json leftOutJson(const std::vector<pricing::LeftOut>& leftOut) {
    Json rows = Json::array();
    for (const auto& one : leftOut)
        rows.push_back({{"code", one.what.id.name}, {"says", words::text(one.what)}, {"field", one.field->id()}});
    return rows;
}

std::string leftOutText(const std::vector<pricing::LeftOut>& leftOut) {
    if (leftOut.empty()) return {};
    auto text = "\n" + line(QT_TRANSLATE_NOOP("App", "Not in the price"));
    for (const auto& one : leftOut) text += fmt::format("  {}\n", words::text(one.what));
    return text;
}

Json moreJson(const std::optional<pricing::MoreForLess>& more, const units::Currency& currency) {
    if (!more) return nullptr;
    return {{"pieces", more->quantity.value()},
            {"total", units::formatExact(more->charged, currency)},
            {"ordered", units::formatExact(more->ordered, currency)}};
}

std::string moreText(const std::optional<pricing::MoreForLess>& more, units::Count pieces,
                     const units::Currency& currency) {
    if (!more) return {};
    const auto shown = [&](units::Money amount) {
        return QString::fromStdString(units::formatMoney(amount, currency));
    };
    const auto counted = [](units::Count count) { return QString::fromStdString(units::formatCount(count)); };
    return words::moreForLess(counted(more->quantity), counted(pieces), shown(more->charged), shown(more->ordered))
               .toStdString() +
           "\n";
}

} // namespace sp::verbs
