// SPDX-License-Identifier: MIT
#include "core/pricing/repeat.h"

#include "core/base/ensure.h"
#include "core/pricing/messages.h"
#include "core/units/values.h"

#include <algorithm>
#include <utility>

namespace sp::pricing {

using catalogue::Order;
using catalogue::OrderLine;
using catalogue::Stage;

namespace {

bool hasTemplatesCut(Stage stage) {
    return stage == Stage::InProduction || stage == Stage::Ready || stage == Stage::Collected;
}

void makeAgain(std::vector<OrderLine>& lines, bool templatesAreCut) {
    for (auto& line : lines) {
        line.atNoCharge = false;
        if (!line.isCharge()) line.overrideEach.reset();
        if (!templatesAreCut) continue;
        for (auto& place : line.places) place.templatesOnWall = true;
    }
}

/// Turns the order into its repeat, one thing after another, and notes what each does to the total.
class Steps {
  public:
    Steps(Order order, const Order& repeat, const catalogue::PriceBook& book, layout::FitMemo& fits, units::Money total)
        : m_order(std::move(order))
        , m_repeat(repeat)
        , m_book(book)
        , m_fits(fits)
        , m_total(total) {}

    std::vector<PriceCause> causes(const units::NumberStyle& style) {
        day();
        note(Note::WasAtNoCharge, {}, [](Order& order, const Order& repeat) { order.atNoCharge = repeat.atNoCharge; });
        for (std::size_t i = 0; i < m_order.lines.size(); ++i) line(i, style);
        return std::move(m_causes);
    }

  private:
    /// Does one thing to the order; it is a cause where that changes anything of it. An order that cannot be priced
    /// half way leaves its effect to the next thing.
    template<class Change>
    void note(Note what, const std::string& of, Change change, base::Value was = {}, base::Value now = {}) {
        const auto before = m_order;
        change(m_order, m_repeat);
        if (m_order == before) return;
        const auto priced = priceOrder(m_order, m_book, m_fits);
        const auto total = priced ? priced->total : m_total;
        auto message = of.empty() ? base::say(what) : base::say(what, of);
        m_causes.push_back({std::move(message), std::move(was), std::move(now), total - m_total});
        m_total = total;
    }

    void day() {
        // A day to hurry for and the day it is counted from go together.
        const auto wanted = m_order.wantedBy;
        note(
            Note::DayWanted, {}, [](Order& order, const Order& repeat) { order.wantedBy = repeat.wantedBy; },
            wanted ? units::asValue(*wanted) : base::Value());
        note(
            Note::DayQuoted, {}, [](Order& order, const Order& repeat) { order.quotedOn = repeat.quotedOn; },
            units::asValue(m_order.quotedOn), units::asValue(m_repeat.quotedOn));
    }

    void line(std::size_t i, const units::NumberStyle& style) {
        const auto& title = m_repeat.lines[i].title;
        note(Note::LineWasAtNoCharge, title,
             [i](Order& order, const Order& repeat) { order.lines[i].atNoCharge = repeat.lines[i].atNoCharge; });
        const auto typed = m_order.lines[i].overrideEach;
        note(
            Note::TypedPrice, title,
            [i](Order& order, const Order& repeat) { order.lines[i].overrideEach = repeat.lines[i].overrideEach; },
            typed ? base::asValue(exactText(*typed, m_book.shop.currency, style)) : base::Value());
        note(Note::TemplatesOnWall, title, [i](Order& order, const Order& repeat) {
            for (std::size_t at = 0; at < order.lines[i].places.size(); ++at)
                order.lines[i].places[at].templatesOnWall = repeat.lines[i].places[at].templatesOnWall;
        });
    }

    Order m_order; ///< becomes `m_repeat`
    const Order& m_repeat;
    const catalogue::PriceBook& m_book;
    layout::FitMemo& m_fits;
    units::Money m_total;
    std::vector<PriceCause> m_causes;
};

} // namespace

Order repeatOf(const Order& order, Stage stage, units::Date today) {
    Order again = order;
    again.quotedOn = today;
    again.wantedBy.reset();
    again.atNoCharge = false;
    makeAgain(again.lines, hasTemplatesCut(stage));
    for (auto& other : again.others) makeAgain(other.lines, hasTemplatesCut(stage));
    return again;
}

Order revisionOf(const Order& order, units::Date today) {
    Order revised = order;
    revised.quotedOn = today;
    if (revised.wantedBy && *revised.wantedBy < today) revised.wantedBy.reset();
    return revised;
}

base::Result<PriceComparison> compareRepeat(const Order& order, const catalogue::PriceBook& then, const Order& repeat,
                                            const catalogue::PriceBook& now, layout::FitMemo& fits,
                                            const units::NumberStyle& style, std::optional<units::Money> given) {
    base::ensure(order.lines.size() == repeat.lines.size(), "an order and its repeat have the same lines");
    auto compared = comparePrices(order, then, now, fits, style, given);
    if (!compared) return compared;
    const auto again = priceOrder(repeat, now, fits);
    if (!again) return base::fail(again.error());
    auto causes = Steps(order, repeat, now, fits, compared->totalNow).causes(style);
    // What the program reckons otherwise stays the last, beside the total.
    auto& all = compared->causes;
    const bool isLast = !all.empty() && all.back().what.id == idOf(Note::ReckonedOtherwise);
    all.insert(all.end() - (isLast ? 1 : 0), std::make_move_iterator(causes.begin()),
               std::make_move_iterator(causes.end()));
    compared->totalNow = again->total;
    for (std::size_t i = 0; i < compared->lines.size(); ++i) {
        compared->lines[i].eachNow = again->lines[i].each;
        compared->lines[i].chargedNow = again->lines[i].charged;
    }
    return compared;
}

} // namespace sp::pricing
