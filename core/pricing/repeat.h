// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/stage.h"
#include "core/pricing/compare.h"

namespace sp::pricing {

/// The same order once more, on `today`. What was asked for that once does not come along: the day it was wanted, a
/// price in place of the reckoned one (a charge keeps its own), and that it cost nothing. Templates are on the wall
/// where the job was made, or being made (`stage`). Its choices are those of the order.
catalogue::Order repeatOf(const catalogue::Order& order, catalogue::Stage stage, units::Date today);

/// The order of a given quote as its revision begins: as it is, on `today`, at the prices of that day. A day on which
/// it was wanted does not come along once it is past.
catalogue::Order revisionOf(const catalogue::Order& order, units::Date today);

/// What an order came to with the book it was given with, and what its repeat comes to with another, and why: first
/// what comparePrices finds, then what of the order itself is not as it was. Causes add up to the difference; both
/// orders have the same lines. Errors: those of comparePrices.
base::Result<PriceComparison> compareRepeat(const catalogue::Order& order, const catalogue::PriceBook& then,
                                            const catalogue::Order& repeat, const catalogue::PriceBook& now,
                                            layout::FitMemo& fits, const units::NumberStyle& style = {},
                                            std::optional<units::Money> given = std::nullopt);

} // namespace sp::pricing
