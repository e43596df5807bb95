// SPDX-License-Identifier: MIT
#include "core/supply/job_plan.h"

#include "core/supply/messages.h"

#include <algorithm>

namespace sp::supply {

using base::Code;
using units::Count;
using units::Fraction;
using units::Money;

namespace {

std::vector<Pack> packsOf(const Job& job, Strategy strategy) {
    switch (strategy) {
    case Strategy::Bulk: return job.bulk;
    case Strategy::Kits:
    case Strategy::Mix: break;
    }
    std::vector<Pack> packs = job.kits;
    const auto& others = strategy == Strategy::Kits ? job.besides : job.bulk;
    packs.insert(packs.end(), others.begin(), others.end());
    return packs;
}

bool isReadyCut(const Job& job, const std::string& material) {
    for (const auto& line : job.lines)
        for (const auto& take : line.takes)
            if (take.material == material) return take.kind == needs::NeedKind::ReadyCut;
    return false;
}

base::Message whyLacking(const Job& job, Strategy strategy, const std::string& material) {
    if (isReadyCut(job, material))
        return base::say(strategy == Strategy::Bulk ? Note::OnlyWithAKit : Note::WithNoKit, material);
    const auto isOfIt = [&](const UnpricedPack& pack) { return pack.material == material; };
    if (strategy != Strategy::Kits && std::any_of(job.unpriced.begin(), job.unpriced.end(), isOfIt))
        return base::say(Note::PacksWithoutPrice, material);
    if (strategy != Strategy::Kits) return base::say(Note::NoSupplierSells, material);
    if (!job.hasKits) return base::say(Note::NoKitInTheBook);
    return base::say(Note::NoKitHolds, material);
}

/// The first material that must be bought and that no pack of this way gives; nothing when there is none.
std::optional<base::Message> lacking(const Job& job, Strategy strategy, const std::vector<MaterialCount>& needs,
                                     const std::vector<Pack>& packs) {
    for (const auto& need : needs) {
        Count onShelf;
        for (const auto& item : job.shelf)
            if (item.material == need.material) onShelf += item.count;
        if (need.count <= onShelf) continue;
        const bool isGiven = std::any_of(packs.begin(), packs.end(), [&](const Pack& pack) {
            return std::any_of(pack.gives.begin(), pack.gives.end(),
                               [&](const MaterialCount& give) { return give.material == need.material; });
        });
        if (!isGiven) return whyLacking(job, strategy, need.material);
    }
    return std::nullopt;
}

std::optional<units::UnitPrice> leastPrice(const Job& job, const std::string& material) {
    std::optional<units::UnitPrice> least;
    for (const auto& pack : job.bulk) {
        if (pack.gives.front().material != material) continue;
        for (const auto& price : pack.prices) {
            const units::UnitPrice one{price.each, pack.gives.front().count};
            if (!least || one.each() < least->each()) least = one;
        }
    }
    return least;
}

void valueLeft(const Job& job, StrategyPlan& strategy) {
    strategy.leftWorth = Money();
    bool isKnown = false;
    for (const auto& left : strategy.plan->left) {
        if (left.count.isZero() || isReadyCut(job, left.material)) continue;
        LeftOver over{left.material, left.count, leastPrice(job, left.material), std::nullopt};
        if (over.price) {
            over.worth = Money::fromExact(over.price->each() * Fraction::of(left.count.value()));
            *strategy.leftWorth += *over.worth;
            isKnown = true;
        }
        strategy.left.push_back(std::move(over));
    }
    if (!isKnown && !strategy.left.empty()) strategy.leftWorth.reset();
}

StrategyCost costOf(const StrategyPlan& strategy) {
    if (!strategy.plan) return {};
    return {strategy.plan->cost, strategy.plan->bound};
}

} // namespace

PurchaseProblem purchaseOf(const Job& job, Strategy strategy) {
    return {needsOf(job), job.shelf, packsOf(job, strategy), job.suppliers};
}

void takeSolution(const Job& job, Strategy strategy, std::string_view solution, StrategyPlan& plan) {
    if (!plan.plan) return;
    takeSolution(purchaseOf(job, strategy), solution, *plan.plan);
    plan.left.clear();
    valueLeft(job, plan);
}

base::Result<StrategyPlan> planStrategy(const Job& job, Strategy strategy, const PlanEffort& effort) {
    const auto needs = needsOf(job);
    auto packs = packsOf(job, strategy);
    StrategyPlan out;
    out.impossible = lacking(job, strategy, needs, packs);
    if (out.impossible) return out;
    auto answer = planPurchase({needs, job.shelf, std::move(packs), job.suppliers}, effort);
    if (!answer && answer.error().code == Code::Failed) {
        out.impossible = answer.error().message();
        out.isUnsolved = true;
        return out;
    }
    if (!answer) return base::fail(answer.error());
    out.impossible = std::move(answer->impossible);
    out.plan = std::move(answer->plan);
    if (out.plan) valueLeft(job, out);
    return out;
}

namespace {

void raiseBound(StrategyPlan& strategy, Money least) {
    strategy.plan->bound = std::min(std::max(strategy.plan->bound, least), strategy.plan->cost);
    strategy.plan->proven = strategy.plan->bound == strategy.plan->cost;
}

/// Gives a way the plan of another where that is cheaper; its own bound stays.
void takeOver(StrategyPlan& strategy, const StrategyPlan& other) {
    const Money bound = strategy.plan ? strategy.plan->bound : Money();
    if (!strategy.plan || other.plan->cost < strategy.plan->cost) strategy = other;
    strategy.plan->bound = Money();
    raiseBound(strategy, bound);
}

/// Whether a plan buys nothing but what that way may buy.
bool isOfStrategy(const Job& job, Strategy strategy, const PurchasePlan& plan) {
    const auto packs = packsOf(job, strategy);
    return std::all_of(plan.packs.begin(), plan.packs.end(), [&](const PlannedPack& bought) {
        return std::any_of(packs.begin(), packs.end(), [&](const Pack& pack) { return pack.id == bought.id; });
    });
}

} // namespace

JobPlans compared(const Job& job, std::array<StrategyPlan, 3> strategies) {
    JobPlans plans{needsOf(job), std::move(strategies), std::nullopt, false};
    // A search that was cut short may have missed what another one found.
    auto& mix = plans.strategies[static_cast<std::size_t>(Strategy::Mix)];
    for (const Strategy alone : {Strategy::Kits, Strategy::Bulk})
        if (plans.of(alone).plan) takeOver(mix, plans.of(alone));
    for (const Strategy alone : {Strategy::Kits, Strategy::Bulk}) {
        auto& strategy = plans.strategies[static_cast<std::size_t>(alone)];
        if (!mix.plan || (!strategy.plan && !strategy.isUnsolved)) continue;
        if (isOfStrategy(job, alone, *mix.plan)) takeOver(strategy, mix);
        if (strategy.plan) raiseBound(strategy, mix.plan->bound); // what no mix costs less than, neither does it
    }
    // What the shelf lets pass for kits without buying one is bulk.
    const auto& kits = plans.of(Strategy::Kits).plan;
    const bool buysKit = kits && std::any_of(kits->packs.begin(), kits->packs.end(), [&](const PlannedPack& bought) {
                             const auto* offer = job.offer(bought.id);
                             return offer && offer->material.empty();
                         });
    std::optional<Money> least;
    for (const Strategy strategy : {Strategy::Kits, Strategy::Bulk, Strategy::Mix})
        if (const auto& plan = plans.of(strategy).plan;
            plan && (strategy != Strategy::Kits || buysKit) && (!least || plan->cost < *least)) {
            least = plan->cost;
            plans.winner = strategy;
        }
    plans.isOnShelf = mix.plan && mix.plan->packs.empty();
    if (plans.isOnShelf) plans.winner.reset();
    return plans;
}

CostCurvePoint pointOf(const Job& job, const JobPlans& plans) {
    CostCurvePoint point;
    point.pieces = job.pieces();
    point.kits = costOf(plans.of(Strategy::Kits));
    point.bulk = costOf(plans.of(Strategy::Bulk));
    point.mix = costOf(plans.of(Strategy::Mix));
    point.winner = plans.winner;
    point.proven = std::all_of(plans.strategies.begin(), plans.strategies.end(), [](const StrategyPlan& strategy) {
        return strategy.plan ? strategy.plan->proven : !strategy.isUnsolved;
    });
    return point;
}

} // namespace sp::supply
