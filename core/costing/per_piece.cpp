// SPDX-License-Identifier: MIT
#include "core/costing/per_piece.h"

#include "core/units/apportion.h"

namespace sp::costing {

using units::Money;

Money costEach(const LineCost& cost, units::Count pieces) { return units::eachOf(cost.total, pieces); }

std::vector<Money> shownForOneOf(const CostSheet& sheet, units::Count pieces, const units::Currency& currency) {
    const auto& nodes = sheet.nodes;
    std::vector<Money> shown(nodes.size());
    if (nodes.empty()) return shown;
    shown.front() = units::shownEachOf(nodes.front().amount, pieces, currency);
    for (std::size_t parent = 0; parent < nodes.size(); ++parent) {
        std::vector<std::size_t> children;
        std::vector<Money> amounts;
        for (std::size_t i = parent + 1; i < nodes.size() && nodes[i].depth > nodes[parent].depth; ++i) {
            if (nodes[i].depth != nodes[parent].depth + 1) continue;
            children.push_back(i);
            amounts.push_back(nodes[i].amount);
        }
        const auto shares = units::apportion(shown[parent], amounts, currency);
        for (std::size_t i = 0; i < children.size(); ++i) shown[children[i]] = shares[i];
    }
    return shown;
}

} // namespace sp::costing
