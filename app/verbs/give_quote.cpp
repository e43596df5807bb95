// SPDX-License-Identifier: MIT
#include "app/verbs/give_quote.h"

#include "app/verbs/verb_kit.h"
#include "app/words/proof_sheet.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "core/units/text.h"
#include "db/book/given_prices.h"
#include "db/messages.h"

namespace sp::verbs {

using base::fail;
using base::Result;

Result<db::Quote> give(db::Book& book, const catalogue::Order& order, const db::Quote* revised) {
    auto inputs = book.priceBook(order.customer);
    if (!inputs) return fail(inputs.error());
    if (revised) inputs = db::pricesOfRevision(*revised, std::move(*inputs));
    const auto until = order.quotedOn.plusDays(inputs->shop.rules.validDays);
    layout::FitMemo fits;
    const words::SheetWords words;
    const auto result = words::resultOf(order, *inputs, until, fits, words);
    if (!result) return fail(result.error());
    const auto shown = words::withProofs(*result, book, order, *inputs, words);
    return revised ? book.issueRevision(revised->id, order, *inputs, shown, until)
                   : book.issueNew(order, *inputs, shown, until);
}

Result<db::Quote> give(db::Book& book, const OrderFor& of, const db::Quote* revised) {
    if (!of.stranger) return give(book, of.order, revised);
    Result<db::Quote> issued;
    const auto done = book.batch(base::say(db::Note::Adding, of.stranger->name), [&]() -> base::Done {
        const auto added = book.save(*of.stranger);
        if (!added) return fail(added.error());
        auto order = of.order;
        order.customer = *added;
        issued = give(book, order, revised);
        return issued ? base::Done() : fail(issued.error());
    });
    if (!done) return fail(done.error());
    return issued;
}

Json givenJson(const db::Quote& issued) {
    const auto& currency = issued.frozen->shop.currency;
    Json json{{"number", issued.number},
              {"total", units::formatExact(*issued.sealedTotal, currency)},
              {"currency", currency.code()}};
    if (issued.result && !issued.result->others.empty())
        for (const auto* choice : quoting::choicesOf(issued.result->sheet))
            json["choices"].push_back({{"name", choice->name},
                                       {"difference", choice->difference},
                                       {"total", units::formatExact(choice->toPay.value, currency)}});
    return json;
}

std::string givenText(const db::Quote& issued) {
    const auto& currency = issued.frozen->shop.currency;
    return line(QT_TRANSLATE_NOOP("App", "%1: quote given, %2 %3."), issued.number,
                units::formatExact(*issued.sealedTotal, currency), currency.code());
}

} // namespace sp::verbs
