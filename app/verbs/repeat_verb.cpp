// SPDX-License-Identifier: MIT
#include "app/verbs/give_quote.h"
#include "app/verbs/verb_kit.h"
#include "core/units/text.h"
#include "db/book/given_prices.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

using units::Money;

std::string worded(const base::Value& value) { return words::sentence(value).toStdString(); }

Json causesJson(const pricing::PriceComparison& compared, const units::Currency& currency) {
    Json causes = Json::array();
    for (const auto& cause : compared.causes)
        causes.push_back({{"what", words::sentence(cause.what).toStdString()},
                          {"was", worded(cause.was)},
                          {"now", worded(cause.now)},
                          {"on_total", units::formatExact(cause.effect, currency)}});
    return causes;
}

std::string causesText(const pricing::PriceComparison& compared, const units::Currency& currency) {
    std::string text;
    for (const auto& cause : compared.causes) {
        auto what = words::sentence(cause.what).toStdString();
        const auto was = worded(cause.was);
        const auto now = worded(cause.now);
        if (!was.empty() && !now.empty())
            what = told(QT_TRANSLATE_NOOP("App", "%1: %2, was %3"), what, now, was);
        else if (!was.empty())
            what = told(QT_TRANSLATE_NOOP("App", "%1, was %2"), what, was);
        text += fmt::format("{:>12}  {}\n", units::formatMoney(cause.effect, currency), what);
    }
    return text;
}

} // namespace

Outcome repeatVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = (*book)->quoteNumbered(arguments.of("--quote"));
    if (!quote) return refused(quote.error());
    const auto today = (*book)->priceBook(quote->order.customer);
    if (!today) return refused(today.error());
    const auto order = db::repeatOf(*quote, *today, helpers.environment.today());
    layout::FitMemo fits;
    const auto compared = db::pricesOfRepeat(*quote, order, *today, fits);
    if (!compared) return refused(compared.error());
    const auto& currency = today->shop.currency;
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    Json json{{"repeats", quote->number},
              {"currency", currency.code()},
              {"total_then", exact(compared->totalThen)},
              {"total", exact(compared->totalNow)},
              {"difference", exact(compared->difference())},
              {"causes", causesJson(*compared, currency)},
              {"number", nullptr}};
    auto text = line(QT_TRANSLATE_NOOP("App", "%1 came to %2; once more today it comes to %3 %4."), quote->number,
                     exact(compared->totalThen), exact(compared->totalNow), currency.code()) +
                causesText(*compared, currency);
    if (!arguments.has("--give"))
        return answer(arguments, json,
                      text + line(QT_TRANSLATE_NOOP("App", "Nothing is given yet; --give gives the quote.")));
    const auto issued = give(**book, order);
    if (!issued) return refused(issued.error());
    json.update(givenJson(*issued));
    return answer(arguments, json, text + givenText(*issued));
}

} // namespace sp::verbs
