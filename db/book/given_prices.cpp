// SPDX-License-Identifier: MIT
#include "db/book/given_prices.h"

#include "core/pricing/paid_off_sets.h"

#include <utility>

namespace sp::db {

using base::Result;
using pricing::PriceComparison;

namespace {

/// Puts the figures of the lines as they were sealed in the place of those reckoned again.
Result<PriceComparison> asGiven(Result<PriceComparison> compared, const Quote& quote) {
    if (!compared || !quote.result) return compared;
    const auto& given = quote.result->figures.lines;
    if (given.size() != compared->lines.size()) return compared;
    for (std::size_t i = 0; i < given.size(); ++i) {
        compared->lines[i].eachThen = given[i].each;
        compared->lines[i].chargedThen = given[i].charged;
    }
    return compared;
}

/// The choice that was taken alone: the others were let go.
catalogue::Order takenOf(const Quote& quote) {
    return quote.choiceTaken ? catalogue::withChoice(quote.order, *quote.choiceTaken) : quote.order;
}

} // namespace

Result<PriceComparison> pricesSince(const Quote& quote, catalogue::PriceBook today, layout::FitMemo& fits,
                                    const units::NumberStyle& style) {
    // What this order itself has paid off since is no change of its price.
    if (catalogue::isAgreedTo(quote.stage)) pricing::takeOutSold(today, quote.order);
    return asGiven(pricing::comparePrices(quote.order, *quote.frozen, today, fits, style, quote.sealedTotal), quote);
}

catalogue::Order repeatOf(const Quote& quote, const catalogue::PriceBook& today, units::Date day) {
    auto order = pricing::repeatOf(takenOf(quote), quote.stage, day);
    order.customer = today.customer ? today.customer->id : base::Id();
    return order;
}

Result<PriceComparison> pricesOfRepeat(const Quote& quote, const catalogue::Order& repeat,
                                       const catalogue::PriceBook& today, layout::FitMemo& fits,
                                       const units::NumberStyle& style) {
    auto given = takenOf(quote);
    given.customer = repeat.customer;
    return asGiven(pricing::compareRepeat(given, *quote.frozen, repeat, today, fits, style, quote.sealedTotal), quote);
}

} // namespace sp::db
