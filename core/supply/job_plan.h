// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/job.h"
#include "core/supply/purchase_program.h"
#include "core/units/unit_price.h"

#include <array>
#include <string_view>

namespace sp::supply {

/// What lies on the shelf when the job is done, and what that is worth at the least bulk price there is for it.
struct LeftOver {
    std::string material;
    units::Count count;
    std::optional<units::UnitPrice> price; ///< none: nobody sells it in bulk
    std::optional<units::Money> worth;     ///< none where there is no price
};

/// A job bought in one way.
struct StrategyPlan {
    std::optional<PurchasePlan> plan;
    std::optional<base::Message> impossible; ///< the reason where there is no plan
    bool isUnsolved = false;                 ///< no plan was found, which does not say that there is none
    std::vector<LeftOver> left;
    std::optional<units::Money> leftWorth; ///< the sum of those known; none where none is
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
/// Errors as planPurchase, but for a search that found nothing: that is a plan that isUnsolved.
base::Result<StrategyPlan> planStrategy(const Job& job, Strategy strategy, const PlanEffort& effort = {});

/// The purchase that planStrategy plans for.
PurchaseProblem purchaseOf(const Job& job, Strategy strategy);

/// Takes over what a solver found for that purchase, where it is cheaper or proves the plan (purchase_program.h).
void takeSolution(const Job& job, Strategy strategy, std::string_view solution, StrategyPlan& plan);

/// Puts the three together, given by Way. Where the effort was too little for one, it takes over what another has
/// shown: a plan that buys only what both may buy, and that nothing costs less than the least mix.
JobPlans compared(const Job& job, std::array<StrategyPlan, 3> strategies);

/// The same as a point of the curve, for job.pieces().
CostCurvePoint pointOf(const Job& job, const JobPlans& plans);

} // namespace sp::supply
