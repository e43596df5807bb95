// SPDX-License-Identifier: MIT
#include "core/pricing/ladder.h"

#include <algorithm>

namespace sp::pricing {

base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::Order& order, std::size_t number,
                                                 const catalogue::PriceBook& book, bool exempt, layout::FitMemo& fits,
                                                 std::int64_t rules) {
    const auto& line = order.lines.at(number);
    const auto cardFee = cardFeeShare(order, number, book.shop.rules);
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

} // namespace sp::pricing
