// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/shop.h"
#include "core/units/duration.h"
#include "core/units/fraction.h"
#include "core/units/money.h"

#include <optional>
#include <span>

namespace sp::pricing {

// Mark-up is on cost, margin is of the price: m = (price − cost) / cost, g = (price − cost) / price. Source: OpenStax
// Contemporary Mathematics m00058 (mark-up), Principles of Accounting m68115 (margin).

/// The mark-up of the highest step not above `quantity`; none below the first step (an empty ladder adds nothing).
units::Rate markUpFor(std::span<const catalogue::MarkUpStep> ladder, units::Count quantity);

/// cost × (1 + m), exactly, in micro-units.
units::Fraction priceAtMarkUp(const units::Fraction& cost, units::Rate markUp);

/// (price − cost) / cost to a millionth, half to even; nothing when the cost is nothing.
std::optional<units::Rate> markUpOf(units::Money price, units::Money cost);
/// (price − cost) / price to a millionth, half to even; nothing when the price is nothing.
std::optional<units::Rate> marginOf(units::Money price, units::Money cost);

/// g = m / (1 + m), mark-up −100 % or more. What is given away, at −100 %, has no margin.
std::optional<units::Rate> marginFromMarkUp(units::Rate markUp);

/// What an hour at the bench brings the one who works there: (profit + labour) ÷ hours, half to even to a micro-unit;
/// none without such time. `labour` is the own work in the cost that the profit is above.
std::optional<units::Money> perBenchHour(units::Money profit, units::Money labour, units::Duration bench);

} // namespace sp::pricing
