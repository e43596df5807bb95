// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/order_difference.h"
#include "core/pricing/repeat.h"
#include "db/book/book.h"

// A given quote beside the prices of another day. `today` are those of its customer, as they are then.
namespace sp::db {

/// What the quote would come to with those prices, and why; what it came to is said as it was given. Errors: those of
/// pricing::comparePrices. The quote must have been given.
base::Result<pricing::PriceComparison> pricesSince(const Quote& quote, catalogue::PriceBook today,
                                                   layout::FitMemo& fits, const units::NumberStyle& style = {});

/// The order of the quote once more, on `day` (see pricing::repeatOf), for whom its customer is by then. Of several
/// choices it has the one that was taken, or all.
catalogue::Order repeatOf(const Quote& quote, const catalogue::PriceBook& today, units::Date day);

/// What that comes to, and why not what the quote came to. Errors: those of pricing::compareRepeat.
base::Result<pricing::PriceComparison> pricesOfRepeat(const Quote& quote, const catalogue::Order& repeat,
                                                      const catalogue::PriceBook& today, layout::FitMemo& fits,
                                                      const units::NumberStyle& style = {});

/// The order of the quote as its revision begins on `day` (see pricing::revisionOf). Of several choices it has the one
/// that was taken, or all.
catalogue::Order revisionOf(const Quote& quote, units::Date day);

/// The prices that a revision of the quote goes by: without its own pieces among those sold.
catalogue::PriceBook pricesOfRevision(const Quote& quote, catalogue::PriceBook today);

/// What tells an order that is to revise the quote, at those prices, from what was given. Where the quote offers
/// several choices, the one of the same number is looked at, if there is one. Errors: those of pricing::priceOrder.
base::Result<pricing::OrderDifference> differenceOf(const Quote& quote, const catalogue::Order& revised,
                                                    const catalogue::PriceBook& prices, layout::FitMemo& fits,
                                                    const units::NumberStyle& style = {});
/// The same of two given quotes of a job, both as they were given.
pricing::OrderDifference differenceOf(const Quote& was, const Quote& is, layout::FitMemo& fits,
                                      const units::NumberStyle& style = {});

} // namespace sp::db
