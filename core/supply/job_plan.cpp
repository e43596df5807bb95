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

std::vector<Pack> packsOf(const Job& job, Way way) {
    switch (way) {
    case Way::Bulk: return job.bulk;
    case Way::Kits:
    case Way::Mix: break;
    }
    std::vector<Pack> packs = job.kits;
    const auto& others = way == Way::Kits ? job.besides : job.bulk;
    packs.insert(packs.end(), others.begin(), others.end());
    return packs;
}

bool isReadyCut(const Job& job, const std::string& material) {
    for (const auto& line : job.lines)
        for (const auto& take : line.takes)
            if (take.material == material) return take.kind == needs::NeedKind::ReadyCut;
    return false;
}

base::Message whyLacking(const Job& job, Way way, const std::string& material) {
    if (isReadyCut(job, material)) return base::say(way == Way::Bulk ? Note::OnlyWithAKit : Note::WithNoKit, material);
    if (way != Way::Kits) return base::say(Note::NoSupplierSells, material);
    if (!job.hasKits) return base::say(Note::NoKitInTheBook);
    return base::say(Note::NoKitHolds, material);
}

/// The first material that must be bought and that no pack of this way gives; nothing when there is none.
std::optional<base::Message> lacking(const Job& job, Way way, const std::vector<MaterialCount>& needs,
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
        if (!isGiven) return whyLacking(job, way, need.material);
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

void valueLeft(const Job& job, WayPlan& way) {
    for (const auto& left : way.plan->left) {
        if (left.count.isZero() || isReadyCut(job, left.material)) continue;
        LeftOver over{left.material, left.count, leastPrice(job, left.material), {}};
        if (over.price) over.worth = Money::fromExact(over.price->each() * Fraction::of(left.count.value()));
        way.leftWorth += over.worth;
        way.left.push_back(std::move(over));
    }
}

WayCost costOf(const WayPlan& way) {
    if (!way.plan) return {};
    return {way.plan->cost, way.plan->bound};
}

} // namespace

base::Result<WayPlan> planWay(const Job& job, Way way, const OutOfTime& outOfTime) {
    const auto needs = needsOf(job);
    auto packs = packsOf(job, way);
    WayPlan out;
    out.impossible = lacking(job, way, needs, packs);
    if (out.impossible) return out;
    auto answer = planPurchase({needs, job.shelf, std::move(packs), job.suppliers}, outOfTime);
    if (!answer && answer.error().code == Code::Failed) {
        out.impossible = answer.error().message();
        out.isLate = true;
        return out;
    }
    if (!answer) return base::fail(answer.error());
    out.impossible = std::move(answer->impossible);
    out.plan = std::move(answer->plan);
    if (out.plan) valueLeft(job, out);
    return out;
}

namespace {

void raiseBound(WayPlan& way, Money least) {
    way.plan->bound = std::min(std::max(way.plan->bound, least), way.plan->cost);
    way.plan->proven = way.plan->bound == way.plan->cost;
}

/// Gives a way the plan of another where that is cheaper; its own bound stays.
void takeOver(WayPlan& way, const WayPlan& other) {
    const Money bound = way.plan ? way.plan->bound : Money();
    if (!way.plan || other.plan->cost < way.plan->cost) way = other;
    way.plan->bound = Money();
    raiseBound(way, bound);
}

/// Whether a plan buys nothing but what that way may buy.
bool isOfWay(const Job& job, Way way, const PurchasePlan& plan) {
    const auto packs = packsOf(job, way);
    return std::all_of(plan.packs.begin(), plan.packs.end(), [&](const PlannedPack& bought) {
        return std::any_of(packs.begin(), packs.end(), [&](const Pack& pack) { return pack.id == bought.id; });
    });
}

} // namespace

JobPlans compared(const Job& job, std::array<WayPlan, 3> ways) {
    JobPlans plans{needsOf(job), std::move(ways), std::nullopt, false};
    // A search that was cut short may have missed what another one found.
    auto& mix = plans.ways[static_cast<std::size_t>(Way::Mix)];
    for (const Way alone : {Way::Kits, Way::Bulk})
        if (plans.of(alone).plan) takeOver(mix, plans.of(alone));
    for (const Way alone : {Way::Kits, Way::Bulk}) {
        auto& way = plans.ways[static_cast<std::size_t>(alone)];
        if (!mix.plan || (!way.plan && !way.isLate)) continue;
        if (isOfWay(job, alone, *mix.plan)) takeOver(way, mix);
        if (way.plan) raiseBound(way, mix.plan->bound); // what no mix costs less than, neither does it
    }
    // What the shelf lets pass for kits without buying one is bulk.
    const auto& kits = plans.of(Way::Kits).plan;
    const bool buysKit = kits && std::any_of(kits->packs.begin(), kits->packs.end(), [&](const PlannedPack& bought) {
                             const auto* offer = job.offer(bought.id);
                             return offer && offer->material.empty();
                         });
    std::optional<Money> least;
    for (const Way way : {Way::Kits, Way::Bulk, Way::Mix})
        if (const auto& plan = plans.of(way).plan;
            plan && (way != Way::Kits || buysKit) && (!least || plan->cost < *least)) {
            least = plan->cost;
            plans.winner = way;
        }
    plans.isOnShelf = mix.plan && mix.plan->packs.empty();
    if (plans.isOnShelf) plans.winner.reset();
    return plans;
}

StaircasePoint pointOf(const Job& job, const JobPlans& plans) {
    StaircasePoint point;
    point.pieces = job.pieces();
    point.kits = costOf(plans.of(Way::Kits));
    point.bulk = costOf(plans.of(Way::Bulk));
    point.mix = costOf(plans.of(Way::Mix));
    point.winner = plans.winner;
    point.proven = std::all_of(plans.ways.begin(), plans.ways.end(),
                               [](const WayPlan& way) { return way.plan ? way.plan->proven : !way.isLate; });
    return point;
}

} // namespace sp::supply
