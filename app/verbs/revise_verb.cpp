// SPDX-License-Identifier: MIT
#include "app/verbs/give_quote.h"
#include "app/verbs/order_reader.h"
#include "app/verbs/verb_kit.h"
#include "app/words/difference_words.h"
#include "core/units/text.h"
#include "db/book/given_prices.h"

#include <fmt/format.h>

#include <string_view>

namespace sp::verbs {

namespace {

using pricing::LineDifference;
using pricing::LineFate;
using pricing::OrderDifference;
using units::Money;

std::string_view codeOf(LineFate fate) {
    switch (fate) {
    case LineFate::Same: return "same";
    case LineFate::Changed: return "changed";
    case LineFate::Added: return "added";
    case LineFate::Removed: return "removed";
    }
    return {};
}

Json partsJson(const std::vector<pricing::ChangedPart>& parts) {
    Json list = Json::array();
    for (const auto& part : parts)
        list.push_back({{"what", words::sentence(part.what).toStdString()},
                        {"was", words::sentence(part.was).toStdString()},
                        {"is", words::sentence(part.is).toStdString()}});
    return list;
}

/// The difference as it is answered; amounts in full, of a side that is not there null.
Json differenceJson(const OrderDifference& difference, const units::Currency& currency) {
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    const auto sideJson = [&](const std::optional<LineDifference::Side>& side) -> Json {
        if (!side) return nullptr;
        return {{"title", side->title},
                {"pieces", side->quantity.value()},
                {"price_each", exact(side->each)},
                {"amount", exact(side->charged)}};
    };
    Json lines = Json::array();
    for (const auto& line : difference.lines)
        lines.push_back({{"fate", codeOf(line.fate)},
                         {"was", sideJson(line.was)},
                         {"is", sideJson(line.is)},
                         {"parts", partsJson(line.parts)},
                         {"difference", exact(line.difference())}});
    Json amounts = Json::array();
    for (const auto& amount : difference.amounts)
        amounts.push_back({{"what", words::sentence(amount.what).toStdString()},
                           {"was", exact(amount.was)},
                           {"is", exact(amount.is)},
                           {"difference", exact(amount.difference())}});
    return {{"total_was", exact(difference.totalWas)},
            {"total", exact(difference.totalIs)},
            {"difference", exact(difference.difference())},
            {"lines", std::move(lines)},
            {"amounts", std::move(amounts)},
            {"order", partsJson(difference.parts)}};
}

units::Count piecesOf(const LineDifference& line) { return line.is ? line.is->quantity : line.was->quantity; }

std::string differenceText(const OrderDifference& difference, const units::Currency& currency) {
    std::string text;
    const auto row = [&](Money amount, const std::string& what) {
        text += fmt::format("{:>12}  {}\n", units::formatMoney(amount, currency), what);
    };
    for (const auto& line : difference.lines) {
        if (line.fate == LineFate::Same) continue;
        const auto fate = words::fateOf(line).toStdString();
        const auto title =
            words::lineOf(line, QString::fromStdString(units::formatCount(piecesOf(line)))).toStdString();
        row(line.difference(), fate.empty() ? title : fmt::format("{}: {}", title, fate));
    }
    for (const auto& amount : difference.amounts) row(amount.difference(), words::sentence(amount.what).toStdString());
    for (const auto& part : difference.parts)
        text += fmt::format("{:>12}  {}\n", "", words::partOf(part).toStdString());
    return text;
}

/// The order that is to replace the quote's: that of --order, or the same at today's prices.
base::Result<OrderFor> revisedOrder(const Arguments& arguments, db::Book& book, const db::Quote& quote,
                                    units::Date today) {
    OrderFor of;
    of.order = db::revisionOf(quote, today);
    const auto file = arguments.value("--order");
    if (!file) return of;
    const auto text = textOf(*file);
    if (!text) return base::fail(text.error());
    auto read = readOrder(*text, book, today);
    if (!read) return read;
    // A file that names nobody is for whom the quote was.
    if (read->order.customer.isNone() && !read->stranger) read->order.customer = of.order.customer;
    return read;
}

/// How much more the quote as it was would come to today; of several choices, and where it cannot be reckoned, nothing.
std::optional<Money> sinceThen(db::Book& book, const db::Quote& quote, layout::FitMemo& fits) {
    const auto today = book.priceBook(quote.order.customer);
    if (!today || catalogue::choiceCount(quote.order) > 1) return std::nullopt;
    const auto since = db::pricesSince(quote, *today, fits);
    return since ? std::optional(since->difference()) : std::nullopt;
}

bool isInvoiced(db::Book& book, const db::Quote& quote) {
    const auto billing = book.billing(quote.id);
    return billing && !billing->openInvoices.empty();
}

} // namespace

Outcome reviseVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = (*book)->quoteNumbered(arguments.of("--quote"));
    if (!quote) return refused(quote.error());
    if (const auto may = (*book)->mayRevise(quote->id); !may) return refused(may.error());
    const auto of = revisedOrder(arguments, **book, *quote, helpers.environment.today());
    if (!of) return refused(of.error());
    auto today = (*book)->priceBook(of->order.customer);
    if (!today) return refused(today.error());
    if (of->stranger) today->customer = of->stranger;
    layout::FitMemo fits;
    const auto since = sinceThen(**book, *quote, fits);
    const auto prices = db::pricesOfRevision(*quote, std::move(*today));
    const auto difference = db::differenceOf(*quote, of->order, prices, fits);
    if (!difference) return refused(difference.error());
    const auto& currency = prices.shop.currency;
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    auto json = differenceJson(*difference, currency);
    json.update({{"revises", quote->number},
                 {"currency", currency.code()},
                 {"as_it_was_differs_today", since ? Json(exact(*since)) : Json(nullptr)},
                 {"number", nullptr}});
    auto text = line(QT_TRANSLATE_NOOP("App", "%1 came to %2; revised it comes to %3 %4."), quote->number,
                     exact(difference->totalWas), exact(difference->totalIs), currency.code()) +
                differenceText(*difference, currency);
    if (since && !since->isZero())
        text += since->isNegative()
                    ? line(QT_TRANSLATE_NOOP("App", "At today's prices what was given would come to %1 less."),
                           exact(-*since))
                    : line(QT_TRANSLATE_NOOP("App", "At today's prices what was given would come to %1 more."),
                           exact(*since));
    if (isInvoiced(**book, *quote)) {
        const auto note = words::invoicedNote(QString::fromStdString(quote->number)).toStdString();
        json["note"] = note;
        text += note + "\n";
    }
    if (!arguments.has("--give"))
        return answer(arguments, json,
                      text + line(QT_TRANSLATE_NOOP("App", "Nothing is given yet; --give gives the quote.")));
    const auto issued = give(**book, *of, &*quote);
    if (!issued) return refused(issued.error());
    json.update(givenJson(*issued));
    return answer(arguments, json, text + givenText(*issued));
}

} // namespace sp::verbs
