// SPDX-License-Identifier: MIT
#include "app/words/quote_sheet.h"

namespace sp::words {

base::Result<db::QuoteResult> resultOf(const catalogue::Order& order, const catalogue::PriceBook& prices,
                                       std::optional<units::Date> validUntil, layout::FitMemo& fits,
                                       const quoting::SheetWords& words, std::int64_t rules) {
    auto priced = pricing::priceOrder(order, prices, fits, rules);
    if (!priced) return base::fail(priced.error());
    auto ladders = quoting::laddersOf(order, prices, *priced, fits);
    if (!ladders) return base::fail(ladders.error());
    return db::QuoteResult{
        *priced, [&order, &prices, &words, validUntil, priced = *priced, ladders = std::move(*ladders),
                  offers = quoting::offersOf(order, prices, *priced, fits)](const std::string& number) {
            return quoting::contentOf({number, order, prices, priced, ladders, validUntil, words, offers});
        }};
}

quoting::SheetContent issuedSheet(const db::Quote& quote, layout::FitMemo& fits, const quoting::SheetWords& words) {
    if (quote.result) return quote.result->sheet;
    const auto& prices = quote.frozen.value();
    const auto total = quote.sealedTotal.value();
    const auto again = resultOf(quote.order, prices, quote.validUntil, fits, words, pricing::kFirstRulesVersion);
    if (again && again->priced.total == total) return again->sheetFor(quote.number);
    return quoting::contentOfTotal(quote.number, quote.order, prices, total, quote.validUntil, words);
}

void sealOldResults(db::Book& book, std::chrono::milliseconds budget, const quoting::SheetWords& words) {
    if (book.readOnlyBecause()) return;
    constexpr std::int64_t kMaxAtOnce = 100'000;
    const auto end = std::chrono::steady_clock::now() + budget;
    const auto old = book.quotesWithoutResult(kMaxAtOnce);
    if (!old) return;
    layout::FitMemo fits;
    for (const auto& id : *old) {
        if (std::chrono::steady_clock::now() > end) return;
        const auto quote = book.quote(id);
        if (!quote) continue; // damaged: a check says so
        const auto again =
            resultOf(quote->order, *quote->frozen, quote->validUntil, fits, words, pricing::kFirstRulesVersion);
        const bool isReached = again && again->priced.total == quote->sealedTotal;
        if (!book.sealResult(id, isReached ? std::optional(*again) : std::nullopt)) return;
    }
}

} // namespace sp::words
