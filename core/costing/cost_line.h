// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"

namespace sp::costing {

/// What the line costs the shop, for all its pieces, with every part of it. `cardFixed` is the line's share of the
/// fixed part of a card fee (an order's payment is one), used only where the shop charges card fees.
///
/// Every figure is exact until it is rounded once, half to even, to a micro-unit; nodes are sums of their children.
/// Loss and spoilage divide by one minus their share: a share is of what is consumed, not of what is good.
/// Errors: what needs::requirementsOf refuses; TooLarge when a piece does not fit its sheet or a figure outgrows the
/// program.
base::Result<CostSheet> costLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                 layout::FitMemo& fits, units::Money cardFixed = {});

/// The same figures without their parts, for pricing: no memory is asked for.
base::Result<LineCost> costFigures(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                   layout::FitMemo& fits, units::Money cardFixed = {});

} // namespace sp::costing
