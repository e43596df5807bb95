// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/job.h"
#include "core/units/unit_price.h"

#include <array>

namespace sp::supply {

/// What lies on the shelf when the job is done, and what that is worth at the least bulk price there is for it.
struct LeftOver {
    std::string material;
    units::Count count;
    std::optional<units::UnitPrice> price; ///< none: nobody sells it in bulk
    units::Money worth;
};

/// A job bought in one way.
struct StrategyPlan {
    std::optional<PurchasePlan> plan;
    std::optional<base::Message> impossible; ///< the reason where there is no plan
    bool isLate = false;                     ///< there is no plan because time ran out, not because there can be none
    std::vector<LeftOver> left;
    units::Money leftWorth; ///< their sum
};

/// The three ways side by side.
struct JobPlans {
    std::vector<MaterialCount> needs;
    std::array<StrategyPlan, 3> strategies; ///< by Way
    /// The cheapest; Mix only when it is cheaper than either alone. None when nothing covers the job, or nothing has to
    /// be bought.
    std::optional<Strategy> winner;
    bool isOnShelf = false; ///< nothing has to be bought

    const StrategyPlan& of(Strategy strategy) const { return strategies[static_cast<std::size_t>(strategy)]; }
};

/// Plans the job in one way: with kits only blanks and packing are bought in bulk, for no kit holds them.
/// Errors as planPurchase, but for time: a search that found nothing in time is a WayPlan that isLate.
base::Result<StrategyPlan> planStrategy(const Job& job, Strategy strategy, const OutOfTime& outOfTime);

/// Puts the three together, given by Way. Where time cut one short, it takes over what another has shown: a plan that
/// buys only what both may buy, and that nothing costs less than the least mix.
JobPlans compared(const Job& job, std::array<StrategyPlan, 3> strategies);

/// The same as a point of the curve, for job.pieces().
CostCurvePoint pointOf(const Job& job, const JobPlans& plans);

} // namespace sp::supply
