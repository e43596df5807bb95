// SPDX-License-Identifier: MIT
#include "tests/reference/purchase_check.h"

#include <algorithm>
#include <map>

namespace sp::reference {

std::string faultOf(const supply::PurchasePlan& plan, const supply::PurchaseProblem& problem) {
    std::map<std::string, std::int64_t> have;
    for (const auto& lying : problem.shelf) have[lying.material] += lying.count.value();
    std::map<std::string, std::int64_t> goods; // micro-units by supplier
    for (const auto& bought : plan.packs) {
        const auto pack = std::ranges::find(problem.packs, bought.id, &supply::Pack::id);
        if (pack == problem.packs.end()) return bought.id + " is not for sale";
        const auto count = bought.count.value();
        if (count < 1 || (pack->atMost && count > pack->atMost->value())) return bought.id + ": too many or none";
        const supply::PackPrice* price = nullptr; // the highest step that the count reaches
        for (const auto& step : pack->prices)
            if (step.from.value() <= count && (price == nullptr || step.from > price->from)) price = &step;
        if (price == nullptr) return bought.id + ": fewer than are sold";
        goods[pack->supplier] += price->each.micros() * count;
        for (const auto& given : pack->gives) have[given.material] += given.count.value() * count;
    }
    std::map<std::string, std::int64_t> needs;
    for (const auto& need : problem.needs) needs[need.material] += need.count.value();
    for (const auto& [material, need] : needs)
        if (have[material] < need) return "too little " + material;
    std::int64_t cost = 0;
    for (const auto& supplier : problem.suppliers) {
        const auto sum = goods.find(supplier.id);
        if (sum == goods.end()) continue;
        if (sum->second < supplier.minimum.micros()) return "below the minimum of " + supplier.id;
        const bool isFree = supplier.freeFrom && sum->second >= supplier.freeFrom->micros();
        cost += sum->second + (isFree ? 0 : supplier.shipping.micros());
    }
    return cost == plan.cost.micros() ? std::string() : "its cost adds up to another sum";
}

} // namespace sp::reference
