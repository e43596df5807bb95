// SPDX-License-Identifier: MIT
#include "core/supply/purchase.h"

#include "core/base/overflow.h"
#include "core/supply/messages.h"
#include "core/supply/purchase_model.h"
#include "core/supply/purchase_plain.h"
#include "core/supply/purchase_search.h"

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

PurchaseAnswer nothingToBuy(const PurchaseProblem& problem, Modelled& made) {
    PurchaseAnswer answer;
    answer.warnings = std::move(made.warnings);
    answer.plan = priced(problem, {});
    answer.plan->proven = true;
    addLeft(problem, made, {}, *answer.plan);
    return answer;
}

} // namespace

base::Result<PurchaseAnswer> planPurchase(const PurchaseProblem& problem, const OutOfTime& outOfTime) {
    try {
        auto made = modelled(problem);
        if (!made) return base::fail(made.error());
        PurchaseAnswer answer;
        if (made->impossible) {
            answer.impossible = std::move(made->impossible);
            answer.warnings = std::move(made->warnings);
            return answer;
        }
        const Model& model = made->model;
        if (std::all_of(model.needs.begin(), model.needs.end(), [](int64_t need) { return need == 0; }) &&
            !model.isReduced)
            return nothingToBuy(problem, *made);
        SearchResult found = searchPurchase(model, outOfTime);
        if (found.counts.empty()) found = plainPurchase(model);
        if (found.counts.empty()) return base::fail(Fault::NoPlanInTime, "packs");
        std::vector<int64_t> counts(problem.packs.size(), 0);
        for (std::size_t i = 0; i < model.packs.size(); ++i)
            counts[model.packs[i].source] = found.counts[i] + model.bought[i];
        PurchasePlan plan = priced(problem, counts);
        const Money searched = Money::fromMicros(found.bound * model.granule);
        plan.bound = std::min(plan.cost, searched);
        plan.proven = plan.bound == plan.cost;
        addLeft(problem, *made, counts, plan);
        answer.warnings = std::move(made->warnings);
        answer.plan = std::move(plan);
        return answer;
    } catch (const base::Overflow&) { return base::fail(Fault::PurchaseTooLarge, "needs"); }
}

} // namespace sp::supply
