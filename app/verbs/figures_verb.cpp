// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "app/words/names.h"
#include "core/figures/break_even.h"
#include "core/figures/split.h"
#include "core/units/text.h"
#include "db/book/earned_jobs.h"

#include <fmt/format.h>

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace sp::verbs {

namespace {

using figures::By;
using figures::Earned;
using figures::Group;
using units::Date;
using units::Money;

constexpr std::array<std::pair<std::string_view, By>, 6> kWays{{{"month", By::Month},
                                                                {"week", By::Week},
                                                                {"design", By::Design},
                                                                {"customer", By::Customer},
                                                                {"quantity", By::Quantity},
                                                                {"blank", By::Blank}}};

base::Result<By> wayOf(const std::string& word) {
    for (const auto& [name, by] : kWays)
        if (name == word) return by;
    return words::fail(base::Code::Invalid, "--by",
                       QT_TRANSLATE_NOOP("App", "--by is month, week, design, customer, quantity or blank, not %1."),
                       word);
}

/// "12-23", "24+", and of charges "0".
std::string spanWord(const figures::QuantitySpan& span) {
    if (!span.to) return fmt::format("{}+", span.from.value());
    if (*span.to == span.from) return fmt::format("{}", span.from.value());
    return fmt::format("{}-{}", span.from.value(), span.to->value());
}

std::string nameOf(const Group& group, By by) {
    switch (by) {
    case By::Month: return group.begins.iso().substr(0, 7);
    case By::Week: return group.begins.iso();
    case By::Quantity: return spanWord(group.quantities);
    case By::Design:
    case By::Customer:
    case By::Blank: break;
    }
    return group.name;
}

/// Hours at the bench to a hundredth.
std::string hoursOf(units::Duration time) {
    const auto hundredths = (time.milliseconds() * 100 + units::kMillisecondsPerHour / 2) / units::kMillisecondsPerHour;
    return fmt::format("{}.{:02}", hundredths / 100, hundredths % 100);
}

/// A whole month, or one as far as it has come: only that can be held against what a month costs.
bool isOneMonth(const Days& days, Date today) {
    const auto month = figures::monthOf(days.from);
    const bool isToItsEnd = figures::monthOf(days.to.plusDays(1)) != month || today <= days.to;
    return days.from == month && figures::monthOf(days.to) == month && isToItsEnd;
}

/// All that is told of a span of days.
class Figures {
  public:
    Figures(const db::EarnedJobs& earned, const std::vector<figures::OfferedLine>& offered, const catalogue::Shop& shop,
            By by)
        : m_currency(shop.currency) {
        addHead();
        for (const auto& group : figures::split(earned.lines, by, shop.ladderQuantities)) addGroup(group, by);
        const auto all = figures::together(earned.lines);
        m_total = json(all.earned, all);
        addRow(told(QT_TRANSLATE_NOOP("App", "together")), all);
        if (!all.earned.isBenchKnown)
            m_text += line(QT_TRANSLATE_NOOP("App", "Hours of some jobs are not known any more: they were priced by an "
                                                    "earlier version."));
        m_leftOut = earned.leftOut;
        for (const auto& number : earned.leftOut)
            m_text += line(QT_TRANSLATE_NOOP("App", "Left out: %1, of which the cost is not known any more."), number);
        addAnswers(figures::answersTo(offered, shop.ladderQuantities));
    }

    void addBreakEven(const figures::BreakEven& even) {
        m_breakEven = {{"fixed_per_month", exact(even.fixed)},
                       {"contribution", exact(even.contribution)},
                       {"to_go", exact(even.toGo)},
                       {"pieces_to_go", even.pieces ? Json(even.pieces->value()) : Json(nullptr)},
                       {"hours_to_go", even.bench ? Json(hoursOf(*even.bench)) : Json(nullptr)}};
        m_text +=
            "\n" + line(QT_TRANSLATE_NOOP("App", "Of %1 that the month costs anyway, %2 is carried, %3 is to go."),
                        shown(even.fixed), shown(even.contribution), shown(even.toGo));
        if (even.pieces)
            m_text +=
                line(QT_TRANSLATE_NOOP("App", "That is %1 more of this kind."),
                     words::counted(words::Thing::Piece, even.pieces->value(), QString::number(even.pieces->value()))
                         .toStdString());
        if (even.bench)
            m_text += line(QT_TRANSLATE_NOOP("App", "That is %1 hours more at the bench of this kind."),
                           hoursOf(*even.bench));
    }

    Json json() const {
        return {{"currency", m_currency.code()}, {"groups", m_groups},  {"total", m_total},
                {"left_out", m_leftOut},         {"quotes", m_answers}, {"break_even", m_breakEven}};
    }
    const std::string& text() const { return m_text; }

  private:
    std::string exact(Money amount) const { return units::formatExact(amount, m_currency); }
    std::string shown(Money amount) const { return units::formatMoney(amount, m_currency); }
    Json orNull(const std::optional<Money>& amount) const { return amount ? Json(exact(*amount)) : Json(nullptr); }

    Json json(const Earned& earned, const Group& group) const {
        const auto margin = earned.margin();
        const bool isTimed = earned.isBenchKnown;
        return {{"jobs", group.jobs},
                {"pieces", earned.pieces.value()},
                {"income", exact(earned.income)},
                {"cost", exact(earned.cost)},
                {"paid_out", exact(earned.paidOut)},
                {"card_fee", exact(earned.cardFee)},
                {"left", exact(earned.left())},
                {"margin_percent", margin ? Json(units::formatRate(*margin)) : Json(nullptr)},
                {"bench_hours", isTimed ? Json(hoursOf(earned.bench)) : Json(nullptr)},
                {"per_bench_hour", orNull(earned.perBenchHour())}};
    }

    void addHead() {
        m_text = fmt::format("{:<24} {:>6} {:>12} {:>12} {:>12} {:>8} {:>10}\n",
                             told(QT_TRANSLATE_NOOP("App", "in %1"), m_currency.code()),
                             told(QT_TRANSLATE_NOOP("App", "pieces")), told(QT_TRANSLATE_NOOP("App", "income")),
                             told(QT_TRANSLATE_NOOP("App", "cost")), told(QT_TRANSLATE_NOOP("App", "left")),
                             told(QT_TRANSLATE_NOOP("App", "hours")), told(QT_TRANSLATE_NOOP("App", "an hour")));
    }

    void addRow(const std::string& name, const Group& group) {
        const auto& earned = group.earned;
        const auto hour = earned.perBenchHour();
        m_text += fmt::format("{:<24} {:>6} {:>12} {:>12} {:>12} {:>8} {:>10}\n", name, earned.pieces.value(),
                              shown(earned.income), shown(earned.cost + earned.cardFee), shown(earned.left()),
                              earned.isBenchKnown ? hoursOf(earned.bench) : "?", hour ? shown(*hour) : "");
    }

    void addGroup(const Group& group, By by) {
        const auto name = nameOf(group, by);
        auto row = json(group.earned, group);
        row["name"] = name;
        if (by == By::Design || by == By::Customer || by == By::Blank)
            row["id"] = group.key.isNone() ? Json(nullptr) : Json(group.key.text());
        m_groups.push_back(std::move(row));
        addRow(name.empty() ? "-" : name, group);
    }

    void addAnswers(const std::vector<figures::Answers>& all) {
        if (!all.empty()) m_text += "\n";
        for (const auto& answers : all) {
            const auto share = answers.shareWon();
            m_answers.push_back({{"quantity", spanWord(answers.quantities)},
                                 {"won", answers.won},
                                 {"lost", answers.lost},
                                 {"open", answers.open},
                                 {"won_percent", share ? Json(units::formatRate(*share)) : Json(nullptr)},
                                 {"won_at", orNull(answers.wonAt)},
                                 {"lost_at", orNull(answers.lostAt)}});
            m_text += told(QT_TRANSLATE_NOOP("App", "lines of %1: %2 won, %3 lost, %4 open"),
                           spanWord(answers.quantities), answers.won, answers.lost, answers.open);
            if (answers.wonAt)
                m_text += told(QT_TRANSLATE_NOOP("App", "; the middle price won: %1"), shown(*answers.wonAt));
            if (answers.lostAt)
                m_text += told(QT_TRANSLATE_NOOP("App", "; the middle price lost: %1"), shown(*answers.lostAt));
            m_text += "\n";
        }
    }

    const units::Currency m_currency;
    std::string m_text;
    Json m_groups = Json::array();
    Json m_answers = Json::array();
    Json m_total;
    Json m_breakEven = nullptr;
    std::vector<std::string> m_leftOut;
};

} // namespace

Outcome figuresVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto days = daysOf(arguments);
    if (!days) return refused(days.error());
    const auto by = wayOf(arguments.value("--by").value_or("month"));
    if (!by) return refused(by.error());
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    db::EarnedReader reader;
    const auto earned = reader.earned(**book, days->from, days->to);
    if (!earned) return refused(earned.error());
    const auto offered = reader.offered(**book, days->from, days->to);
    if (!offered) return refused(offered.error());
    Figures figures(*earned, *offered, *shop, *by);
    if (isOneMonth(*days, helpers.environment.today()))
        figures.addBreakEven(figures::breakEven(shop->rates.overheadPerMonth, figures::together(earned->lines).earned));
    Json json{{"from", days->from.iso()}, {"to", days->to.iso()}, {"by", arguments.value("--by").value_or("month")}};
    json.update(figures.json());
    return answer(arguments, json, figures.text());
}

} // namespace sp::verbs
