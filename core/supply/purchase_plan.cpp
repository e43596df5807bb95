// SPDX-License-Identifier: MIT
#include "core/supply/purchase_plan.h"

#include <algorithm>
#include <unordered_map>

namespace sp::supply {

using std::int64_t;
using units::Count;
using units::Money;

namespace {

Money priceAt(const Pack& pack, int64_t count) {
    Money each;
    Count from;
    for (const auto& price : pack.prices)
        if (price.from.value() <= count && price.from > from) {
            from = price.from;
            each = price.each;
        }
    return each;
}

/// Packs, orders and sums of a plan by number of packs; everything exact.
PurchasePlan priced(const PurchaseProblem& problem, const std::vector<int64_t>& counts) {
    PurchasePlan plan;
    std::unordered_map<std::string_view, std::size_t> suppliers;
    std::vector<PlannedOrder> orders;
    std::vector<bool> used(problem.suppliers.size(), false);
    for (const auto& supplier : problem.suppliers) {
        suppliers.emplace(supplier.id, orders.size());
        orders.push_back({supplier.id, {}, {}});
    }
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 0) continue;
        const Pack& pack = problem.packs[i];
        const Money goods = Money::fromExact(priceAt(pack, counts[i]).exact() * units::Fraction::of(counts[i]));
        plan.packs.push_back({pack.id, pack.supplier, Count::of(counts[i]), goods});
        orders[suppliers.at(pack.supplier)].goods += goods;
        used[suppliers.at(pack.supplier)] = true;
    }
    for (std::size_t s = 0; s < orders.size(); ++s) {
        if (!used[s]) continue;
        const Supplier& supplier = problem.suppliers[s];
        if (!supplier.freeFrom || orders[s].goods < *supplier.freeFrom) orders[s].shipping = supplier.shipping;
        plan.cost += orders[s].goods + orders[s].shipping;
        plan.orders.push_back(std::move(orders[s]));
    }
    return plan;
}

void addLeft(const PurchaseProblem& problem, const Modelled& made, const std::vector<int64_t>& counts,
             PurchasePlan& plan) {
    std::unordered_map<std::string_view, std::size_t> index;
    for (std::size_t m = 0; m < made.materials.size(); ++m) index.emplace(made.materials[m], m);
    std::vector<Count> left(made.materials.size());
    for (std::size_t m = 0; m < made.needs.size(); ++m) left[m] -= made.needs[m].count;
    for (const auto& item : problem.shelf)
        if (const auto at = index.find(item.material); at != index.end() && at->second < made.needs.size())
            left[at->second] += item.count;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 0) continue;
        for (const auto& give : problem.packs[i].gives)
            left[index.at(give.material)] += Count::of(give.count.value() * counts[i]);
    }
    units::Int128 value = 0;
    for (std::size_t m = 0; m < left.size(); ++m) {
        if (m >= made.needs.size() && left[m].isZero()) continue;
        plan.left.push_back({made.materials[m], left[m]});
        value += units::Int128{left[m].value()} * made.valuePerStone[m];
    }
    plan.leftValue = Money::fromExact(units::Fraction::ratio(value, 1000));
}

} // namespace

PurchaseAnswer nothingToBuy(const PurchaseProblem& problem, Modelled& made) {
    PurchaseAnswer answer;
    answer.warnings = std::move(made.warnings);
    answer.plan = priced(problem, {});
    answer.plan->proven = true;
    addLeft(problem, made, {}, *answer.plan);
    return answer;
}

PurchaseAnswer planned(const PurchaseProblem& problem, Modelled& made, const SearchResult& found) {
    std::vector<int64_t> counts(problem.packs.size(), 0);
    for (std::size_t p = 0; p < made.model.packs.size(); ++p) counts[made.model.packs[p].source] = found.counts[p];
    PurchasePlan plan = priced(problem, counts);
    plan.bound = std::min(plan.cost, Money::fromMicros(found.bound * made.model.granule));
    plan.proven = plan.bound == plan.cost;
    addLeft(problem, made, counts, plan);
    PurchaseAnswer answer;
    answer.warnings = std::move(made.warnings);
    answer.plan = std::move(plan);
    return answer;
}

} // namespace sp::supply
