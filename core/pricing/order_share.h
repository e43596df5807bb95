// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/rules_version.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"

#include <vector>

namespace sp::pricing {

/// A line of an order as it is costed there.
struct CostedLine {
    costing::OrderShare share; ///< what it bears of what is paid once for the order
    units::Count counted;      ///< the pieces that say on which step of the mark-ups it is
    costing::LineCost cost;    ///< with the share
};

/// Costs the lines of an order together. The fixed sums of a card fee are divided evenly (cardFeeShare). Lines with one
/// set share what is done once for it by their pieces (needs::sharedSets). Of packing that goes once with the order,
/// each material is paid for the most that a line names of it, and shared with its freight over the lines that name it;
/// the press is warmed up once, for all lines that are pressed: both by what these lines cost without either, to the
/// micro-unit. A material whose price goes by the packs costs what all lines together take of it
/// (needs::orderPrices). Sets with planned pieces are paid off (paid_off_sets.h). Pieces are counted over the lines
/// whose first place has the same design, where the shop wants that. Before rules 3 every line has its own set and
/// warms up the press itself, counts its own pieces and pays the price of one pack. Source: common practice, no source.
/// Errors: as costLine; TooLarge when a sum outgrows the program.
base::Result<std::vector<CostedLine>> costLines(const catalogue::Order& order, const catalogue::PriceBook& book,
                                                layout::FitMemo& fits, std::int64_t rules = catalogue::kRulesVersion);

/// What the order takes of each material and what that costs, for whoever explains a cost; `costed` by costLines.
/// Errors: as costLines.
base::Result<std::shared_ptr<const needs::OrderPrices>> needsOf(const catalogue::Order& order,
                                                                const std::vector<CostedLine>& costed,
                                                                const catalogue::PriceBook& book,
                                                                layout::FitMemo& fits);

} // namespace sp::pricing
