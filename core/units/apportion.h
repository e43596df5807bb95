// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/count.h"
#include "core/units/currency.h"
#include "core/units/fraction.h"
#include "core/units/length.h"
#include "core/units/money.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace sp::units {

// How an exact figure becomes what a person reads, and how what a person reads is shared out. All of these throw
// base::Overflow when a result does not fit.

/// To the currency's minor unit, halves away from zero: what a person sees.
Money toMinor(const Fraction& micros, const Currency& currency);

/// amount ÷ pieces, half to even to a micro-unit; `pieces` 1 or more.
Money eachOf(Money amount, Count pieces);
/// The same as a person sees it: rounded once, from the exact figure, to the minor unit, halves away from zero.
Money shownEachOf(Money amount, Count pieces, const Currency& currency);

/// each × things, exactly.
Money allOf(Money each, Count things);

/// What `length` costs of something that costs `price` for `per`: price × length ÷ per, half to even to a micro-unit;
/// `per` above zero.
Money forLength(Money price, Length per, Length length);

/// Splits `amount` (whole minor units) over the weights so that the shares are whole minor units and add up to it:
/// each running total is rounded, so no share is off by a minor unit or more. All weights zero: the first takes it.
std::vector<Money> apportion(Money amount, std::span<const Money> weights, const Currency& currency);

/// What is known of several amounts as a person sees it: in whole minor units that add up to their sum as that is seen,
/// each running total rounded. One that is not known stays so. Amounts 0 or more.
std::vector<std::optional<Money>> shownParts(std::vector<std::optional<Money>> parts, const Currency& currency);

/// The amount in parts by weight, to the micro-unit, which add up to it: each running total is rounded half to even.
/// Equal parts where all weights are zero; weights 0 or more.
std::vector<Money> inProportion(Money amount, std::vector<Money> weights);

/// Share `part` (from 0) of `amount`, split evenly over so many parts to the micro-unit: the first ones take what does
/// not divide, one micro-unit each, so that the shares add up. `amount` 0 or more, `parts` 1 or more.
Money evenShare(Money amount, std::int64_t part, std::int64_t parts);

} // namespace sp::units
