// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"

#include <memory>
#include <unordered_map>
#include <vector>

namespace sp::pricing {

// A set of templates that is paid off over the planned pieces of its design: it costs what it did when it was first
// cut, and each piece of an agreed job carries its share, until as many are sold. Common practice, no source.

/// How the sets of an order are paid off, line by line and place by place; a line without such a place has none, and
/// where no line has one the whole is empty. An order carries what is left of the plan at the most, its lines of a
/// design together. Where nothing is left, a set that hangs on the wall is paid; one that has to be cut anew is paid by
/// the job. The costs of sets that were not cut yet are left open, see addTodaysCosts.
std::vector<std::vector<costing::SetShare>> setShares(const catalogue::Order& order, const catalogue::PriceBook& book);

/// Fills in what sets that were not cut yet would cost today; `prices` as in costing::OrderShare.
/// Errors: as costing::setCostOf.
base::Done addTodaysCosts(std::vector<std::vector<costing::SetShare>>& sets, const catalogue::Order& order,
                          const catalogue::PriceBook& book, layout::FitMemo& fits,
                          const std::shared_ptr<const needs::OrderPrices>& prices);

/// What the sets of designs that an order pays off cost, by design: what is kept with them when the order is agreed.
/// Errors: as costLines.
base::Result<std::unordered_map<base::Id, catalogue::SetCost>>
setCosts(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits);

/// The prices without the pieces of an order among those sold: for what that order, once it is agreed, is compared
/// with.
void takeOutSold(catalogue::PriceBook& book, const catalogue::Order& order);

/// What of a set is paid: its cost × pieces sold up to the plan ÷ planned pieces.
units::Money paidOf(const catalogue::DesignSet& set, units::Count planned);

} // namespace sp::pricing
