// SPDX-License-Identifier: MIT
#include "core/pricing/paid_off_sets.h"

#include "core/costing/cost_line.h"
#include "core/pricing/order_share.h"

#include <algorithm>

namespace sp::pricing {

namespace {

using catalogue::Order;
using catalogue::Placement;
using catalogue::PriceBook;
using costing::SetShare;
using units::Count;

/// The pieces that a design is on, place by place, in all lines; of designs with planned pieces.
std::unordered_map<base::Id, std::int64_t> plannedPieces(const Order& order) {
    std::unordered_map<base::Id, std::int64_t> pieces;
    for (const auto& line : order.lines)
        for (const auto& place : line.places)
            if (place.plannedPieces && !place.design.isNone()) pieces[place.design] += line.quantity.value();
    return pieces;
}

SetShare shareOf(const Placement& place, std::int64_t pieces, const PriceBook& book) {
    SetShare share{.planned = *place.plannedPieces,
                   .sold = {},
                   .carried = {},
                   .ofPieces = Count::of(pieces),
                   .cost = {},
                   .isKept = false,
                   .holdsWork = book.shop.paysOffWork};
    if (const auto known = book.sets.find(place.design); known != book.sets.end() && !place.design.isNone()) {
        const auto& set = known->second;
        share.sold = set.sold;
        share.isKept = set.cost.has_value();
        share.cost = set.cost.value_or(catalogue::SetCost{});
        share.holdsWork = share.isKept ? share.holdsWork || !share.cost.work.isZero() : share.holdsWork;
    }
    const auto left = std::max<std::int64_t>(0, share.planned.value() - share.sold.value());
    share.carried = Count::of(std::min(pieces, left));
    if (left == 0 && !place.templatesOnWall) return {};
    return share;
}

bool areMadeAlike(const Placement& a, const Placement& b) {
    return a.design == b.design && a.width == b.width && a.height == b.height && a.stones == b.stones &&
           a.artTime == b.artTime;
}

} // namespace

std::vector<std::vector<SetShare>> setShares(const Order& order, const PriceBook& book) {
    const auto isPlanned = [](const auto& line) {
        return std::ranges::any_of(line.places, [](const auto& place) { return place.plannedPieces.has_value(); });
    };
    if (std::ranges::none_of(order.lines, isPlanned)) return {};
    const auto pieces = plannedPieces(order);
    std::vector<std::vector<SetShare>> sets(order.lines.size());
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const auto& line = order.lines[i];
        if (!isPlanned(line)) continue;
        for (const auto& place : line.places) {
            auto& share = sets[i].emplace_back();
            if (!place.plannedPieces || place.plannedPieces->value() < 1) continue; // costing refuses it
            share = shareOf(place, place.design.isNone() ? line.quantity.value() : pieces.at(place.design), book);
        }
    }
    return sets;
}

base::Done addTodaysCosts(std::vector<std::vector<SetShare>>& sets, const Order& order, const PriceBook& book,
                          layout::FitMemo& fits, const std::shared_ptr<const needs::OrderPrices>& prices) {
    costing::OrderShare bought;
    bought.prices = prices;
    std::vector<std::pair<const Placement*, catalogue::SetCost>> known;
    for (std::size_t i = 0; i < sets.size(); ++i)
        for (std::size_t k = 0; k < sets[i].size(); ++k) {
            auto& set = sets[i][k];
            if (set.planned.isZero() || set.isKept) continue;
            const auto& place = order.lines[i].places[k];
            auto found = std::ranges::find_if(known, [&](const auto& row) { return areMadeAlike(*row.first, place); });
            if (found == known.end()) {
                const auto cost = costing::setCostOf(order.lines[i], k, book, fits, bought);
                if (!cost) return base::fail(cost.error());
                found = known.insert(known.end(), {&place, *cost});
            }
            set.cost = found->second;
            if (!set.holdsWork) set.cost.work = {};
        }
    return {};
}

base::Result<std::unordered_map<base::Id, catalogue::SetCost>> setCosts(const Order& order, const PriceBook& book,
                                                                        layout::FitMemo& fits) {
    std::unordered_map<base::Id, catalogue::SetCost> costs;
    const auto lines = costLines(order, book, fits);
    if (!lines) return base::fail(lines.error());
    for (std::size_t i = 0; i < lines->size(); ++i) {
        const auto& sets = (*lines)[i].share.sets;
        for (std::size_t k = 0; k < sets.size(); ++k)
            if (const auto& design = order.lines[i].places[k].design; !design.isNone() && !sets[k].planned.isZero())
                costs.try_emplace(design, sets[k].cost);
    }
    return costs;
}

void takeOutSold(PriceBook& book, const Order& order) {
    for (const auto& line : order.lines)
        for (const auto& place : line.places)
            if (const auto known = book.sets.find(place.design); known != book.sets.end())
                known->second.sold =
                    Count::of(std::max<std::int64_t>(0, known->second.sold.value() - line.quantity.value()));
}

units::Money paidOf(const catalogue::DesignSet& set, Count planned) {
    if (!set.cost || planned.value() < 1) return {};
    return units::Money::fromExact(set.cost->total().exact() *
                                   units::Fraction::ratio(std::min(set.sold, planned).value(), planned.value()));
}

} // namespace sp::pricing
