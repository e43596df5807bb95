// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"

#include <vector>

namespace sp::pricing {

/// What each line of an order bears of what is paid once for all of it. The fixed sums of a card fee are divided evenly
/// (cardFeeShare). Of packing that goes once with the order, each material is paid for the most that a line
/// names of it, and shared over the lines that name it by what these cost without it. Its freight is shared
/// likewise. The shares add up to what is shared, to the micro-unit. Source: common practice, no source.
/// Errors: as costLine; TooLarge when a sum outgrows the program.
base::Result<std::vector<costing::OrderShare>> orderShares(const catalogue::Order& order,
                                                           const catalogue::PriceBook& book, layout::FitMemo& fits,
                                                           std::int64_t rules = catalogue::kRulesVersion);

} // namespace sp::pricing
