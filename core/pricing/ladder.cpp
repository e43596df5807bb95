// SPDX-License-Identifier: MIT
#include "core/pricing/ladder.h"

#include <algorithm>

namespace sp::pricing {

base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::Order& order, std::size_t number,
                                                 const catalogue::PriceBook& book, bool exempt, layout::FitMemo& fits,
                                                 std::int64_t rules) {
    const auto& line = order.lines.at(number);
    const auto cardFee = cardFeeShare(order, number, book.shop.rules, rules);
    auto quantities = book.shop.ladderQuantities;
    quantities.push_back(line.quantity);
    std::sort(quantities.begin(), quantities.end());
    quantities.erase(std::unique(quantities.begin(), quantities.end()), quantities.end());
    std::vector<LadderPrice> ladder;
    for (const auto quantity : quantities) {
        auto step = line;
        step.quantity = quantity;
        const bool own = quantity == line.quantity;
        if (!own) {
            step.sizes.clear();
            step.overrideEach.reset();
        }
        const auto priced = priceLine(step, book, exempt, fits, cardFee, rules);
        if (!priced) return base::fail(priced.error());
        ladder.push_back({quantity, priced->each, priced->setUp, priced->goods + priced->setUp, own});
    }
    return ladder;
}

std::optional<MoreForLess> moreForLess(const catalogue::Order& order, const PricedOrder& priced, std::size_t number,
                                       const catalogue::PriceBook& book, layout::FitMemo& fits) {
    const auto& line = order.lines.at(number);
    const auto ordered = priced.lines.at(number).charged;
    if (line.overrideEach || !priced.minimumOrderCharge.isZero() || priced.subtotal.isZero()) return std::nullopt;
    const auto cardFee = cardFeeShare(order, number, book.shop.rules, priced.rules);
    std::optional<MoreForLess> best;
    auto more = line;
    for (const auto& step : book.shop.rules.ladder) {
        if (step.from <= line.quantity) continue;
        more.quantity = step.from;
        const auto at = priceLine(more, book, priced.taxStanding == TaxStanding::Exempt, fits, cardFee, priced.rules);
        if (at && at->charged < ordered && (!best || at->charged <= best->charged))
            best = {step.from, at->charged, ordered};
    }
    return best;
}

} // namespace sp::pricing
