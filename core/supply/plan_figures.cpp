// SPDX-License-Identifier: MIT
#include "core/supply/plan_figures.h"

#include "core/units/apportion.h"

namespace sp::supply {

using units::Count;
using units::Money;

Money packEach(const PlannedPack& pack) { return units::eachOf(pack.goods, pack.count); }

Money orderTotal(const PlannedOrder& order) { return order.goods + order.shipping; }

Money costEach(const PurchasePlan& plan, std::int64_t pieces) { return units::eachOf(plan.cost, Count::of(pieces)); }

std::optional<Money> costEach(const StrategyCost& strategy, std::int64_t pieces) {
    if (!strategy.cost) return std::nullopt;
    return units::eachOf(*strategy.cost, Count::of(pieces));
}

Money unprovenGap(const PurchasePlan& plan) { return plan.cost - plan.bound; }

units::Money boundInMinor(const PurchasePlan& plan, const units::Currency& currency) {
    if (plan.proven) return units::toMinor(plan.cost.exact(), currency);
    return units::Money::fromMicros(plan.bound.micros() - plan.bound.micros() % currency.microsPerMinor());
}

} // namespace sp::supply
