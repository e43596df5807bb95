// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/arguments.h"
#include "app/verbs/json_words.h"
#include "app/verbs/order_customer.h"
#include "app/verbs/verbs.h"
#include "app/words/words.h"

namespace sp::verbs {

// What the verbs have in common. Each verb is a function from its arguments to an Outcome.

/// What a verb answers, marked by QT_TRANSLATE_NOOP("App", …), in the reader's language, its values in their places.
template<class... Values>
std::string told(const char* source, const Values&... values) {
    return words::told(source, {base::asValue(values)...}).toStdString();
}
/// The same as a line of its own.
template<class... Values>
std::string line(const char* source, const Values&... values) {
    return told(source, values...) + "\n";
}

/// Exit 1 with the error's sentence.
Outcome refused(const base::Error& error);
/// Exit 0 with the JSON when --json was given, else with the text.
Outcome answer(const Arguments& arguments, const Json& json, const std::string& text);
/// Exit 1 for a file that was not written; of one that is there it says how it is replaced.
Outcome notWritten(const base::Error& error, const std::string& path);
/// Whether a file that is there may be replaced: --force.
db::IfThere ifThere(const Arguments& arguments);
/// What a file holds; "-" is the standard input. Errors: NotFound.
base::Result<std::string> textOf(const std::string& file);
/// Opens the book named by --book.
base::Result<std::unique_ptr<db::Book>> openBook(const Arguments& arguments, const Helpers& helpers);
/// A book with all its quotes, for verbs that go through them.
struct QuotesOfBook {
    std::unique_ptr<db::Book> book;
    catalogue::Shop shop;
    std::vector<db::QuoteSummary> quotes;
};
base::Result<QuotesOfBook> openQuotes(const Arguments& arguments, const Helpers& helpers);

struct Days {
    units::Date from;
    units::Date to;
};
/// From --from to --to, both counted. Errors: Invalid for what is no day, and where they are turned round.
base::Result<Days> daysOf(const Arguments& arguments);

/// The order of --order, or the one line that the options describe.
base::Result<OrderFor> orderOf(const Arguments& arguments, db::Book& book, units::Date today);
/// What its price is made of. Whoever is not in the book has no exemption, and is only named.
base::Result<catalogue::PriceBook> inputsFor(const OrderFor& of, db::Book& book);

/// Quotes one a line, or as JSON; `none`, marked by QT_TRANSLATE_NOOP, where there is none. With `hasMore` it is said
/// whether there are others.
Outcome answerQuotes(const Arguments& arguments, const std::vector<db::QuoteSummary>& quotes,
                     const catalogue::Shop& shop, const char* none, const std::optional<bool>& hasMore = std::nullopt);

/// A line for each number of a job of which it is not known what it takes off the shelf.
std::string notReckonedLines(const std::vector<std::string>& numbers);

Outcome demoVerb(const Arguments& arguments, const Helpers& helpers);
Outcome designsVerb(const Arguments& arguments, const Helpers& helpers);
Outcome materialsVerb(const Arguments& arguments, const Helpers& helpers);
Outcome priceVerb(const Arguments& arguments, const Helpers& helpers);
Outcome quoteVerb(const Arguments& arguments, const Helpers& helpers);
Outcome agreeVerb(const Arguments& arguments, const Helpers& helpers);
Outcome startVerb(const Arguments& arguments, const Helpers& helpers);
Outcome readyVerb(const Arguments& arguments, const Helpers& helpers);
Outcome collectVerb(const Arguments& arguments, const Helpers& helpers);
Outcome letGoVerb(const Arguments& arguments, const Helpers& helpers);
Outcome payVerb(const Arguments& arguments, const Helpers& helpers);
Outcome refundVerb(const Arguments& arguments, const Helpers& helpers);
Outcome owedVerb(const Arguments& arguments, const Helpers& helpers);
Outcome benchVerb(const Arguments& arguments, const Helpers& helpers);
Outcome shelfVerb(const Arguments& arguments, const Helpers& helpers);
Outcome countInVerb(const Arguments& arguments, const Helpers& helpers);
Outcome reorderVerb(const Arguments& arguments, const Helpers& helpers);
Outcome promiseVerb(const Arguments& arguments, const Helpers& helpers);
Outcome todayVerb(const Arguments& arguments, const Helpers& helpers);
Outcome repeatVerb(const Arguments& arguments, const Helpers& helpers);
Outcome reviseVerb(const Arguments& arguments, const Helpers& helpers);
Outcome quotesVerb(const Arguments& arguments, const Helpers& helpers);
Outcome findVerb(const Arguments& arguments, const Helpers& helpers);
Outcome sheetVerb(const Arguments& arguments, const Helpers& helpers);
Outcome careCardsVerb(const Arguments& arguments, const Helpers& helpers);
Outcome invoiceVerb(const Arguments& arguments, const Helpers& helpers);
Outcome receiptVerb(const Arguments& arguments, const Helpers& helpers);
Outcome creditVerb(const Arguments& arguments, const Helpers& helpers);
Outcome papersVerb(const Arguments& arguments, const Helpers& helpers);
Outcome figuresVerb(const Arguments& arguments, const Helpers& helpers);
Outcome taxVerb(const Arguments& arguments, const Helpers& helpers);
Outcome priceListVerb(const Arguments& arguments, const Helpers& helpers);
Outcome fitVerb(const Arguments& arguments, const Helpers& helpers);
Outcome countVerb(const Arguments& arguments, const Helpers& helpers);
Outcome estimateVerb(const Arguments& arguments, const Helpers& helpers);
Outcome yieldVerb(const Arguments& arguments, const Helpers& helpers);
Outcome buyVerb(const Arguments& arguments, const Helpers& helpers);
Outcome packVerb(const Arguments& arguments, const Helpers& helpers);
Outcome schemaVerb(const Arguments& arguments, const Helpers& helpers);
Outcome customersVerb(const Arguments& arguments, const Helpers& helpers);
Outcome exportVerb(const Arguments& arguments, const Helpers& helpers);
Outcome checkVerb(const Arguments& arguments, const Helpers& helpers);

} // namespace sp::verbs
