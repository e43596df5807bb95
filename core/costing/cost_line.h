// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/rules_version.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"

namespace sp::costing {

/// What the line costs the shop, for the pieces handed over, with every part of it: the rows of the table in parts.cpp,
/// each by the formula that stands beside its name in part.h. `share` is what the line bears of its order's own costs.
/// `rules` below catalogue::kRulesVersion: as it was costed then.
///
/// Every figure is exact until it is rounded once, half to even, to a micro-unit; nodes are sums of their children.
/// Loss and spoilage divide by one minus their share: a share is of what is consumed, not of what is good. Set-up,
/// floor, labour and what spoilage loses are sums over the tags of the table. Errors: what needs::requirementsOf
/// refuses; OutOfRange for rates and lives of the shop outside their ranges; TooLarge when a figure outgrows the
/// program.
base::Result<CostSheet> costLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                 layout::FitMemo& fits, const OrderShare& share = {},
                                 std::int64_t rules = catalogue::kRulesVersion);

/// What the line takes for the pieces handed over. Errors: as needs::requirementsOf.
base::Result<needs::Requirements> requirementsOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                                 layout::FitMemo& fits, const OrderShare& share);

/// The same figures without their parts, for pricing: no memory is asked for. `takes` is what the line takes of the
/// materials of the book, see needs::requirementsOf.
base::Result<LineCost> costFigures(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                   needs::Requirements takes, const OrderShare& share, std::int64_t rules);
base::Result<LineCost> costFigures(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                   layout::FitMemo& fits, const OrderShare& share = {},
                                   std::int64_t rules = catalogue::kRulesVersion);

/// What the set of a place of the line would cost today, whole: the parts of it that fall away with the templates on
/// the wall, as a job by itself; the templates at the price of `share`. Errors: as costLine.
base::Result<catalogue::SetCost> setCostOf(const catalogue::OrderLine& line, std::size_t place,
                                           const catalogue::PriceBook& book, layout::FitMemo& fits,
                                           const OrderShare& share = {});

} // namespace sp::costing
