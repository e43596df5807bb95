// SPDX-License-Identifier: MIT
#include "core/pricing/ladder.h"

#include <algorithm>

namespace sp::pricing {

base::Result<std::vector<LadderPrice>> ladderFor(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                                 bool exempt, layout::FitMemo& fits) {
    auto quantities = book.shop.ladderQuantities;
    quantities.push_back(line.quantity);
    std::sort(quantities.begin(), quantities.end());
    quantities.erase(std::unique(quantities.begin(), quantities.end()), quantities.end());
    std::vector<LadderPrice> ladder;
    for (const auto quantity : quantities) {
        auto step = line;
        step.quantity = quantity;
        step.sizes.clear();
        const bool own = quantity == line.quantity;
        if (!own) step.typedEach.reset();
        const auto priced = priceLine(step, book, exempt, fits);
        if (!priced) return base::fail(priced.error());
        ladder.push_back({quantity, priced->each, priced->setUp, priced->goods + priced->setUp, own});
    }
    return ladder;
}

} // namespace sp::pricing
