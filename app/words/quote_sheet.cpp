// SPDX-License-Identifier: MIT
#include "app/words/quote_sheet.h"

#include "app/words/translations.h"

namespace sp::words {

namespace {

/// Whether the prices of other quantities help to choose: not beside those of many other lines.
bool hasLadders(const catalogue::Order& order) {
    std::size_t lines = 0;
    for (const auto& choice : catalogue::choicesOf(order)) lines += choice.lines.size();
    return lines <= quoting::kMaxLadders;
}

/// Prices the other choices of the order whole, as its sheet shows them.
base::Result<std::vector<quoting::PricedChoice>>
othersOf(const catalogue::Order& order, const catalogue::PriceBook& prices, layout::FitMemo& fits, std::int64_t rules) {
    std::optional<std::pair<std::int64_t, base::Error>> why;
    auto others = quoting::priceOthers(order, prices, fits, why, rules);
    if (why) return base::fail(why->second);
    for (auto& other : others) {
        other.offers = quoting::offersOf(other.order, prices, *other.priced, fits);
        if (!hasLadders(order)) continue;
        auto ladders = quoting::laddersOf(other.order, prices, *other.priced, fits);
        if (!ladders) return base::fail(ladders.error());
        other.ladders = std::move(*ladders);
    }
    return others;
}

} // namespace

QStringList paperLanguages(const catalogue::Shop& shop, const std::optional<catalogue::Customer>& customer) {
    QStringList wanted;
    for (const auto& one : {customer ? customer->language : std::string(), shop.paperLanguage})
        if (!one.empty()) wanted << QString::fromStdString(one);
    return wanted;
}

base::Result<db::QuoteResult> resultOf(const catalogue::Order& order, const catalogue::PriceBook& prices,
                                       std::optional<units::Date> validUntil, layout::FitMemo& fits,
                                       const quoting::SheetWords& words, std::int64_t rules) {
    auto priced = pricing::priceOrder(order, prices, fits, rules);
    if (!priced) return base::fail(priced.error());
    base::Result<std::vector<std::vector<pricing::LadderPrice>>> ladders;
    if (hasLadders(order)) ladders = quoting::laddersOf(order, prices, *priced, fits);
    if (!ladders) return base::fail(ladders.error());
    auto others = othersOf(order, prices, fits, rules);
    if (!others) return base::fail(others.error());
    db::QuoteResult result{*priced, {}, {}};
    for (const auto& other : *others) result.others.push_back(*other.priced);
    result.sheetFor = [&order, &prices, &words, validUntil, priced = *priced, ladders = std::move(*ladders),
                       offers = quoting::offersOf(order, prices, *priced, fits),
                       others = std::move(*others)](const std::string& number) {
        const LanguageScope language(paperLanguages(prices.shop, prices.customer));
        return quoting::contentOf({number, order, prices, priced, ladders, validUntil, words, offers, others});
    };
    return result;
}

quoting::SheetContent issuedSheet(const db::Quote& quote, layout::FitMemo& fits, const quoting::SheetWords& words) {
    if (quote.result) return quote.result->sheet;
    const auto& prices = quote.frozen.value();
    const auto total = quote.sealedTotal.value();
    const auto again = resultOf(quote.order, prices, quote.validUntil, fits, words, pricing::kFirstRulesVersion);
    if (again && again->priced.total == total) return again->sheetFor(quote.number);
    const LanguageScope language(paperLanguages(prices.shop, prices.customer));
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
