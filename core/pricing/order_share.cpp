// SPDX-License-Identifier: MIT
#include "core/pricing/order_share.h"

#include "core/base/overflow.h"
#include "core/costing/cost_line.h"
#include "core/needs/order_packing.h"
#include "core/needs/order_prices.h"
#include "core/needs/shared_sets.h"
#include "core/pricing/card_fee.h"
#include "core/pricing/messages.h"
#include "core/pricing/paid_off_sets.h"
#include "core/units/apportion.h"

#include <map>
#include <utility>

namespace sp::pricing {

namespace {

using units::Count;
using units::Fraction;
using units::Money;

/// The pieces of each design over the lines that it is the first of.
std::map<base::Id, Count> piecesByDesign(const catalogue::Order& order) {
    std::map<base::Id, Count> pieces;
    for (const auto& line : order.lines)
        if (!line.isCharge() && !line.first().design.isNone()) pieces[line.first().design] += line.quantity;
    return pieces;
}

class Sharing {
  public:
    Sharing(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits, std::int64_t rules)
        : m_order(order)
        , m_book(book)
        , m_fits(fits)
        , m_rules(rules)
        , m_lines(order.lines.size()) {}

    base::Result<std::vector<CostedLine>> run() {
        const bool areTogether = m_rules >= 3;
        const auto byDesign =
            areTogether && m_book.shop.countsDesignOverLines ? piecesByDesign(m_order) : std::map<base::Id, Count>();
        for (std::size_t i = 0; i < m_lines.size(); ++i) {
            m_lines[i].share.cardFixed = cardFeeShare(m_order, i, m_book.shop.rules, m_rules);
            const auto& line = m_order.lines[i];
            const auto found = line.isCharge() ? byDesign.end() : byDesign.find(line.first().design);
            m_lines[i].counted = found == byDesign.end() ? line.quantity : found->second;
        }
        if (areTogether) {
            shareSets();
            m_paidOff = setShares(m_order, m_book);
            takeWorkOut();
        }
        if (auto ok = takeAll(areTogether); !ok) return base::fail(ok.error());
        const auto pressed = areTogether ? pressedLines() : std::vector<std::size_t>();
        for (const auto line : pressed) m_lines[line].share.press.emplace(); // shared out below
        for (std::size_t i = 0; i < m_lines.size(); ++i) {
            auto cost =
                costing::costFigures(m_order.lines[i], m_book, std::move(m_takes[i]), m_lines[i].share, m_rules);
            if (!cost) return base::fail(cost.error());
            m_lines[i].cost = std::move(*cost);
        }
        std::vector<Money> costs;
        for (const auto& line : m_lines) costs.push_back(line.cost.total);
        sharePacking(costs);
        sharePress(pressed, costs);
        if (auto ok = costOddWearAnew(pressed); !ok) return base::fail(ok.error());
        return std::move(m_lines);
    }

  private:
    void shareSets() {
        m_sets = needs::sharedSets(m_order.lines, m_book);
        for (std::size_t i = 0; i < m_sets.size(); ++i)
            for (const auto& set : m_sets[i]) m_lines[i].share.setPieces.push_back(Count::of(set.pieces));
    }

    /// Where a set is paid off with its work, no line does any of it.
    void takeWorkOut() {
        for (std::size_t i = 0; i < m_paidOff.size(); ++i)
            for (std::size_t k = 0; k < m_paidOff[i].size(); ++k) {
                if (m_paidOff[i][k].planned.isZero() || !m_paidOff[i][k].holdsWork) continue;
                auto& setPieces = m_lines[i].share.setPieces;
                if (setPieces.empty()) setPieces.assign(m_paidOff[i].size(), m_order.lines[i].quantity);
                setPieces[k] = {};
            }
    }

    base::Done payOffSets() {
        if (auto ok = addTodaysCosts(m_paidOff, m_order, m_book, m_fits, m_prices); !ok) return ok;
        for (std::size_t i = 0; i < m_paidOff.size(); ++i) m_lines[i].share.sets = std::move(m_paidOff[i]);
        return {};
    }

    /// What the lines take, and what that much of it costs.
    base::Done takeAll(bool areTogether) {
        m_takes.reserve(m_lines.size());
        for (std::size_t i = 0; i < m_lines.size(); ++i) {
            const auto& line = m_order.lines[i];
            auto takes = costing::requirementsOf(line, m_book, m_fits, m_lines[i].share);
            if (!takes) return base::fail(takes.error());
            m_takes.push_back(std::move(*takes));
        }
        if (!areTogether) return {};
        const auto prices = needs::orderPrices(m_order.lines, m_takes, m_sets, m_book, m_fits);
        if (!prices) return base::fail(prices.error());
        m_prices = *prices;
        if (m_prices)
            for (auto& line : m_lines) line.share.prices = m_prices;
        return payOffSets();
    }

    /// None where one line uses the press by itself.
    std::vector<std::size_t> pressedLines() const {
        std::vector<std::size_t> pressed;
        for (std::size_t i = 0; i < m_lines.size(); ++i)
            if (!m_order.lines[i].isCharge()) pressed.push_back(i);
        if (pressed.size() < 2) pressed.clear();
        return pressed;
    }

    /// The shares of the lines, by what they cost without it; it is in their cost then.
    std::vector<Money> shared(Money amount, const std::vector<std::size_t>& lines, const std::vector<Money>& costs,
                              bool isPaidOut = true) {
        std::vector<Money> weights;
        for (const auto line : lines) weights.push_back(costs[line]);
        auto parts = units::inProportion(amount, std::move(weights));
        for (std::size_t i = 0; i < lines.size(); ++i) {
            auto& cost = m_lines[lines[i]].cost;
            cost.total += parts[i];
            if (isPaidOut) cost.outOfPocket += parts[i];
        }
        return parts;
    }

    void sharePacking(const std::vector<Money>& costs) {
        for (const auto& [material, amount, lines] : needs::orderPackingOf(m_order.lines, m_book.shop.packing)) {
            const auto& priced = *m_book.find(material); // costing has refused a material without a price
            const auto& price = m_prices && m_prices->contains(material) ? m_prices->at(material).price : *priced.price;
            const auto goods = Money::fromExact(price.each() * Fraction::of(amount.value()));
            const auto freight = m_rules < 3 ? Money{} : Money::fromExact(goods.exact() * priced.freight.ratio());
            const auto parts = shared(goods, lines, costs);
            const auto freights = shared(freight, lines, costs);
            for (std::size_t i = 0; i < lines.size(); ++i) {
                m_lines[lines[i]].share.packing += parts[i];
                m_lines[lines[i]].share.freight += freights[i];
            }
        }
    }

    void sharePress(const std::vector<std::size_t>& pressed, const std::vector<Money>& costs) {
        if (pressed.empty()) return;
        const auto& press = m_book.bench.press;
        const auto running = [&](units::Duration time, std::int64_t times) {
            return Money::fromExact(press.runningPerHour.exact() * Fraction::of(times) *
                                    Fraction::ratio(time.milliseconds(), units::kMillisecondsPerHour));
        };
        const auto wear = Money::fromExact((press.price - press.salvage).exact() *
                                           Fraction::ratio(press.testPresses, press.lifePresses));
        const auto warmUps = shared(running(press.warmUp, 1), pressed, costs);
        const auto tests = shared(running(press.dwell + press.handling, press.testPresses), pressed, costs);
        const auto wears = shared(wear, pressed, costs, false);
        for (std::size_t i = 0; i < pressed.size(); ++i)
            m_lines[pressed[i]].share.press = {warmUps[i], tests[i], wears[i]};
    }

    /// Whether the line's own wear, of all its presses, lies midway between two micro-units.
    bool isWearATie(const costing::LineCost& cost) const {
        const auto& press = m_book.bench.press;
        Fraction presses;
        for (const auto& place : cost.places)
            presses = presses + Fraction::of(place.press.cycles) + place.press.secondPresses;
        const auto twice = (press.price - press.salvage).exact() * presses * Fraction::ratio(2, press.lifePresses);
        return twice == Fraction::of(twice.floor()) && twice.floor() % 2 != 0;
    }

    /// A line's own wear and its share of that of tests are one part, rounded once, half to even: a tie falls the other
    /// way beside an odd share than by itself.
    base::Done costOddWearAnew(const std::vector<std::size_t>& pressed) {
        for (const auto i : pressed) {
            auto& line = m_lines[i];
            if (line.share.press->testWear.micros() % 2 == 0 || !isWearATie(line.cost)) continue;
            auto cost = costing::costFigures(m_order.lines[i], m_book, m_fits, line.share, m_rules);
            if (!cost) return base::fail(cost.error());
            line.cost = std::move(*cost);
        }
        return {};
    }

    const catalogue::Order& m_order;
    const catalogue::PriceBook& m_book;
    layout::FitMemo& m_fits;
    std::int64_t m_rules;
    std::vector<CostedLine> m_lines;
    std::vector<std::vector<needs::SharedSet>> m_sets;
    std::vector<needs::Requirements> m_takes; ///< of the lines, until they are costed
    std::shared_ptr<const needs::OrderPrices> m_prices;
    std::vector<std::vector<costing::SetShare>> m_paidOff;
};

} // namespace

base::Result<std::shared_ptr<const needs::OrderPrices>> needsOf(const catalogue::Order& order,
                                                                const std::vector<CostedLine>& costed,
                                                                const catalogue::PriceBook& book,
                                                                layout::FitMemo& fits) {
    std::vector<needs::Requirements> takes;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        auto one = costing::requirementsOf(order.lines[i], book, fits, costed[i].share);
        if (!one) return base::fail(one.error());
        takes.push_back(std::move(*one));
    }
    try {
        return needs::orderPrices(order.lines, takes, needs::sharedSets(order.lines, book), book, fits,
                                  needs::PricedBy::Anything);
    } catch (const base::Overflow&) { return base::fail(Fault::OrderTooLarge, "order"); }
}

base::Result<std::vector<CostedLine>> costLines(const catalogue::Order& order, const catalogue::PriceBook& book,
                                                layout::FitMemo& fits, std::int64_t rules) {
    try {
        return Sharing(order, book, fits, rules).run();
    } catch (const base::Overflow&) { return base::fail(Fault::OrderTooLarge, "order"); }
}

} // namespace sp::pricing
