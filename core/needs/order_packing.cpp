// SPDX-License-Identifier: MIT
#include "core/needs/order_packing.h"

#include <algorithm>

namespace sp::needs {

std::vector<OrderPacking> orderPackingOf(std::span<const catalogue::OrderLine> lines,
                                         const std::vector<catalogue::PackingUse>& ofShop) {
    std::vector<OrderPacking> all;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        for (const auto& use : catalogue::packingOf(lines[i], ofShop)) {
            if (use.per != catalogue::PackingPer::Order) continue;
            auto known = std::ranges::find(all, use.material, &OrderPacking::material);
            if (known == all.end()) known = all.insert(all.end(), {use.material, {}, {}});
            known->amount = std::max(known->amount, use.amount);
            if (known->lines.empty() || known->lines.back() != i) known->lines.push_back(i);
        }
    }
    return all;
}

} // namespace sp::needs
