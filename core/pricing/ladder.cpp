// SPDX-License-Identifier: MIT
#include "core/pricing/ladder.h"

#include "core/pricing/order_share.h"

#include <algorithm>

namespace sp::pricing {

namespace {

/// A line of an order as it would be priced there.
base::Result<LinePrice> priceLineOf(const catalogue::Order& order, std::size_t number, const catalogue::PriceBook& book,
                                    bool exempt, layout::FitMemo& fits, std::int64_t rules) {
    auto costed = costLines(order, book, fits, rules);
    if (!costed) return base::fail(costed.error());
    return priceLine(order.lines[number], std::move(costed->at(number)), book, exempt, fits, rules);
}

} // namespace

base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::Order& order, std::size_t number,
                                                 const catalogue::PriceBook& book, bool exempt, layout::FitMemo& fits,
                                                 std::int64_t rules) {
    const auto& line = order.lines.at(number);
    if (catalogue::isGivenAway(order, line)) return std::vector<LadderPrice>();
    auto quantities = line.isCharge() ? std::vector<units::Count>() : book.shop.ladderQuantities;
    quantities.push_back(line.quantity);
    std::sort(quantities.begin(), quantities.end());
    quantities.erase(std::unique(quantities.begin(), quantities.end()), quantities.end());
    std::vector<LadderPrice> ladder;
    auto asked = order;
    for (const auto quantity : quantities) {
        auto& step = asked.lines[number];
        step = line;
        step.quantity = quantity;
        const bool own = quantity == line.quantity;
        if (!own) {
            step.sizes.clear();
            step.overrideEach.reset();
        }
        const auto priced = priceLineOf(asked, number, book, exempt, fits, rules);
        if (!priced) return base::fail(priced.error());
        auto total = priced->goods + priced->setUp;
        for (const auto& place : priced->places) total += place.amount;
        ladder.push_back({quantity, priced->each, priced->setUp, total, own});
    }
    return ladder;
}

std::optional<MoreForLess> moreForLess(const catalogue::Order& order, const PricedOrder& priced, std::size_t number,
                                       const catalogue::PriceBook& book, layout::FitMemo& fits) {
    const auto& line = order.lines.at(number);
    const auto ordered = priced.lines.at(number).charged;
    if (line.overrideEach || !priced.minimumOrderCharge.isZero() || priced.subtotal.isZero()) return std::nullopt;
    std::optional<MoreForLess> best;
    auto asked = order;
    for (const auto& step : book.shop.rules.ladder) {
        if (step.from <= line.quantity) continue;
        asked.lines[number].quantity = step.from;
        const auto at = priceLineOf(asked, number, book, priced.taxStanding == TaxStanding::Exempt, fits, priced.rules);
        if (at && at->charged < ordered && (!best || at->charged <= best->charged))
            best = {step.from, at->charged, ordered};
    }
    return best;
}

} // namespace sp::pricing
