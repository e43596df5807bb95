// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/cost_curve.h"
#include "core/supply/purchase.h"

#include "core/units/currency.h"

#include <cstdint>
#include <optional>

namespace sp::supply {

// What a person reads of a purchase plan besides its own figures. What is divided is rounded half to even to a
// micro-unit.

/// What one of the packs costs.
units::Money packEach(const PlannedPack& pack);

/// Goods and shipping.
units::Money orderTotal(const PlannedOrder& order);

/// The plan's cost for one of `pieces`, 1 or more; what is left over is not taken off.
units::Money costEach(const PurchasePlan& plan, std::int64_t pieces);

/// The same of a way of buying; none where there is no such way.
std::optional<units::Money> costEach(const StrategyCost& strategy, std::int64_t pieces);

/// At most so much less than the plan could it be bought for; zero when it is proven.
units::Money unprovenGap(const PurchasePlan& plan);

/// The bound in the currency's minor units: the cost where it is proven, else told too low rather than too high.
units::Money boundInMinor(const PurchasePlan& plan, const units::Currency& currency);

} // namespace sp::supply
