// SPDX-License-Identifier: MIT
#include "app/verbs/cost_tree.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

/// The node `at` and what is below it; `at` ends behind them.
void addTree(std::string& text, const words::CostTree& tree, const std::vector<units::Money>& shown, std::size_t& at,
             const units::Currency& currency, int depth) {
    text += fmt::format("{:<{}}{:<{}}{:>12}   {}\n", "", depth * 2, tree.label, 30 - depth * 2,
                        units::formatMoney(shown.at(at++), currency), tree.rule);
    for (const auto& child : tree.children) addTree(text, child, shown, at, currency, depth + 1);
}

} // namespace

Json costJson(const words::CostTree& tree, const units::Currency& currency) {
    Json children = Json::array();
    for (const auto& child : tree.children) children.push_back(costJson(child, currency));
    return {{"label", tree.label},
            {"amount", units::formatExact(tree.amount, currency)},
            {"rule", tree.rule},
            {"children", std::move(children)}};
}

std::string costText(const words::CostTree& tree, const std::vector<units::Money>& shown,
                     const units::Currency& currency) {
    std::string text;
    std::size_t at = 0;
    addTree(text, tree, shown, at, currency, 1);
    return text;
}

} // namespace sp::verbs
