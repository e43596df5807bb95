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

/// What the quote came to as it was sealed. One from before results were sealed is reckoned again; where that comes to
/// something else, its total alone is known.
pricing::OrderAmounts amountsGiven(const Quote& quote, layout::FitMemo& fits) {
    pricing::OrderAmounts amounts;
    amounts.total = quote.sealedTotal.value();
    if (!quote.result) {
        const auto again = pricing::priceOrder(quote.order, *quote.frozen, fits, pricing::kFirstRulesVersion);
        return again && again->total == amounts.total ? pricing::amountsOf(*again) : amounts;
    }
    const auto& figures = quote.result->figures;
    for (const auto& line : figures.lines) amounts.lines.push_back({line.each, line.charged});
    amounts.rush = figures.rush;
    amounts.discount = figures.discount;
    amounts.minimumOrderCharge = figures.minimumOrderCharge;
    // Before papers said whether prices include it, their sums did.
    if (figures.total != figures.subtotal) amounts.tax = figures.tax;
    return amounts;
}

/// The quote as it is compared with an order that looks at that choice.
Quote lookingAt(Quote quote, std::int64_t choice) {
    const auto choices = static_cast<std::int64_t>(catalogue::choiceCount(quote.order));
    if (!quote.choiceTaken && choice < choices) lookAtChoice(quote, choice);
    return quote;
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

catalogue::Order revisionOf(const Quote& quote, units::Date day) { return pricing::revisionOf(takenOf(quote), day); }

catalogue::PriceBook pricesOfRevision(const Quote& quote, catalogue::PriceBook today) {
    if (catalogue::isAgreedTo(quote.stage)) pricing::takeOutSold(today, quote.order);
    return today;
}

Result<pricing::OrderDifference> differenceOf(const Quote& quote, const catalogue::Order& revised,
                                              const catalogue::PriceBook& prices, layout::FitMemo& fits,
                                              const units::NumberStyle& style) {
    const auto priced = pricing::priceOrder(revised, prices, fits);
    if (!priced) return base::fail(priced.error());
    const auto was = lookingAt(quote, revised.choice);
    return pricing::differenceOf({was.order, *was.frozen, amountsGiven(was, fits)},
                                 {revised, prices, pricing::amountsOf(*priced)}, style);
}

pricing::OrderDifference differenceOf(const Quote& before, const Quote& is, layout::FitMemo& fits,
                                      const units::NumberStyle& style) {
    const auto was = lookingAt(before, is.order.choice);
    return pricing::differenceOf({was.order, *was.frozen, amountsGiven(was, fits)},
                                 {is.order, *is.frozen, amountsGiven(is, fits)}, style);
}

} // namespace sp::db
