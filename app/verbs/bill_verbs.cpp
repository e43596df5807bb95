// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "app/words/bill_words.h"
#include "app/words/sheet_words.h"
#include "core/units/text.h"

#include <fmt/format.h>

#include <array>
#include <string_view>
#include <utility>

namespace sp::verbs {

namespace {

using catalogue::PaperKind;
using db::IssuedBill;
using units::Money;

constexpr std::array kPaperKinds{std::pair<std::string_view, PaperKind>{"quote", PaperKind::Quote},
                                 std::pair<std::string_view, PaperKind>{"invoice", PaperKind::Invoice},
                                 std::pair<std::string_view, PaperKind>{"receipt", PaperKind::Receipt},
                                 std::pair<std::string_view, PaperKind>{"credit", PaperKind::Credit}};

std::string_view kindCode(PaperKind kind) {
    for (const auto& [word, of] : kPaperKinds)
        if (of == kind) return word;
    return {};
}

Json billJson(const IssuedBill& bill, const std::string& quote, const units::Currency& currency) {
    const auto exact = [&](Money amount) { return units::formatExact(amount, currency); };
    Json taxes = Json::array();
    for (const auto& part : bill.result.parts)
        taxes.push_back({{"name", part.name},
                         {"rate_percent", units::formatRate(part.rate)},
                         {"net", exact(part.net)},
                         {"tax", exact(part.tax)}});
    return {{"number", bill.number},
            {"kind", kindCode(bill.kind)},
            {"quote", quote},
            {"day", bill.result.day.iso()},
            {"due", bill.due ? Json(bill.due->iso()) : Json(nullptr)},
            {"total", exact(bill.total)},
            {"currency", currency.code()},
            {"by_rate", std::move(taxes)},
            {"order_comes_to", exact(bill.result.comesTo)},
            {"paid", exact(bill.result.paid)}};
}

std::string billLine(const IssuedBill& bill, const units::Currency& currency) {
    return fmt::format("{:<12} {} {:>12} {}  {}\n", bill.number, bill.result.day.iso(),
                       units::formatExact(bill.total, currency), currency.code(),
                       words::nameOf(bill.kind).toStdString());
}

/// The quotes of a job, the first first; each but the last was replaced by the next.
Json quotesJson(const std::vector<db::GivenQuote>& given, const units::Currency& currency) {
    Json list = Json::array();
    for (std::size_t i = 0; i < given.size(); ++i)
        list.push_back({{"number", given[i].number},
                        {"day", given[i].day.iso()},
                        {"total", given[i].total ? Json(units::formatExact(*given[i].total, currency)) : Json(nullptr)},
                        {"replaced_by", i + 1 < given.size() ? Json(given[i + 1].number) : Json(nullptr)}});
    return list;
}

std::string quoteLine(const db::GivenQuote& given, const units::Currency& currency) {
    return fmt::format("{:<12} {} {:>12} {}  {}\n", given.number, given.day.iso(),
                       given.total ? units::formatExact(*given.total, currency) : "", currency.code(),
                       words::nameOf(PaperKind::Quote).toStdString());
}

Outcome answerIssued(const Arguments& arguments, const IssuedBill& bill, const db::Quote& quote) {
    const auto& currency = quote.frozen->shop.currency;
    auto json = billJson(bill, quote.number, currency);
    auto text = line(QT_TRANSLATE_NOOP("App", "%1 for %2: %3 %4."), bill.number, quote.number,
                     units::formatExact(bill.total, currency), currency.code());
    if (bill.kind == PaperKind::Invoice) {
        const auto caution = words::invoiceCaution().toStdString();
        json["caution"] = caution;
        text += caution + "\n";
    }
    return answer(arguments, json, text);
}

/// Issues a paper of the quote named by --quote.
template<class Issue>
Outcome issueFor(const Arguments& arguments, const Helpers& helpers, const Issue& issue) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = (*book)->quoteNumbered(arguments.of("--quote"));
    if (!quote) return refused(quote.error());
    const words::SheetWords words;
    const base::Result<IssuedBill> bill = issue(**book, *quote, words::billSheets(words));
    if (!bill) return refused(bill.error());
    return answerIssued(arguments, *bill, *quote);
}

base::Result<PaperKind> kindAsked(const Arguments& arguments) {
    const auto word = arguments.value("--kind");
    if (!word) return PaperKind::Quote;
    for (const auto& [name, kind] : kPaperKinds)
        if (name == *word) return kind;
    return words::fail(base::Code::Invalid, *word,
                       QT_TRANSLATE_NOOP("App", "There is no kind of paper “%1”; say quote, invoice, receipt, "
                                                "credit or bench."),
                       *word);
}

/// The paper that --quote names by its own number, or the newest of --kind of the quote of that number.
base::Result<IssuedBill> billAsked(const Arguments& arguments, db::Book& book, PaperKind kind) {
    const auto& number = arguments.of("--quote");
    auto own = book.billNumbered(number);
    if (own && (!arguments.has("--kind") || own->kind == kind)) return own;
    if (own)
        return words::fail(base::Code::Invalid, number,
                           QT_TRANSLATE_NOOP("App", "%1 is of another kind; leave --kind out, or say another number."),
                           number);
    if (own.error().code != base::Code::NotFound || kind == PaperKind::Quote) return own;
    const auto quote = book.quoteNumbered(number);
    if (!quote) return base::fail(quote.error());
    const auto billing = book.billing(quote->id);
    if (!billing) return base::fail(billing.error());
    for (auto bill = billing->bills.rbegin(); bill != billing->bills.rend(); ++bill)
        if (bill->kind == kind) return *bill;
    return words::fail(
        base::Code::NotFound, number,
        QT_TRANSLATE_NOOP("App", "Quote %1 has no paper of the kind “%2” yet; make it with the verb “%3”."), number,
        kindCode(kind), kindCode(kind));
}

} // namespace

Outcome invoiceVerb(const Arguments& arguments, const Helpers& helpers) {
    return issueFor(arguments, helpers, [](db::Book& book, const db::Quote& quote, const db::BillSheetMaker& words) {
        return book.issueInvoice(quote.id, words);
    });
}

Outcome receiptVerb(const Arguments& arguments, const Helpers& helpers) {
    return issueFor(
        arguments, helpers,
        [](db::Book& book, const db::Quote& quote, const db::BillSheetMaker& words) -> base::Result<IssuedBill> {
            const auto billing = book.billing(quote.id);
            if (!billing) return base::fail(billing.error());
            if (billing->withoutReceipt.empty())
                return words::fail(base::Code::Invalid, quote.number,
                                   QT_TRANSLATE_NOOP("App", "No payment for %1 is without a receipt; take "
                                                            "a payment with pay first."),
                                   quote.number);
            return book.issueReceipt(billing->withoutReceipt.front().payment.id, words);
        });
}

Outcome creditVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto invoice = (*book)->billNumbered(arguments.of("--invoice"));
    if (!invoice) return refused(invoice.error());
    const auto quote = (*book)->quote(invoice->job);
    if (!quote) return refused(quote.error());
    std::optional<Money> amount;
    if (const auto typed = arguments.value("--amount")) {
        const auto parsed = units::parseMoney(*typed, quote->frozen->shop.currency);
        if (!parsed) return refused(parsed.error());
        amount = *parsed;
    }
    const words::SheetWords words;
    const auto bill = (*book)->issueCredit(invoice->id, amount, words::billSheets(words));
    if (!bill) return refused(bill.error());
    return answerIssued(arguments, *bill, *quote);
}

Outcome papersVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = (*book)->quoteAsGiven(arguments.of("--quote"));
    if (!quote) return refused(quote.error());
    const auto billing = (*book)->billing(quote->id);
    if (!billing) return refused(billing.error());
    const auto given = (*book)->givenOf(quote->id);
    if (!given) return refused(given.error());
    const auto& currency = quote->frozen->shop.currency;
    Json list = Json::array();
    std::string text;
    const auto quotes = quotesJson(*given, currency);
    if (given->size() > 1)
        for (const auto& one : *given) text += quoteLine(one, currency);
    for (const auto& bill : billing->bills) {
        list.push_back(billJson(bill, quote->number, currency));
        text += billLine(bill, currency);
    }
    if (text.empty()) text = line(QT_TRANSLATE_NOOP("App", "%1 has no paper but its quote."), quote->number);
    return answer(arguments, {{"quote", given->back().number}, {"quotes", quotes}, {"papers", std::move(list)}}, text);
}

namespace {

Outcome benchSheet(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto quote = (*book)->quoteAsGiven(arguments.of("--quote"));
    if (!quote) return refused(quote.error());
    const auto& path = arguments.of("--pdf");
    if (const auto written = helpers.writeBenchSheet(**book, *quote, path, ifThere(arguments)); !written)
        return notWritten(written.error(), path);
    return answer(arguments, {{"quote", quote->number}, {"kind", "bench"}, {"pdf", path}},
                  line(QT_TRANSLATE_NOOP("App", "The bench sheet of %1 is in %2."), quote->number, path));
}

} // namespace

Outcome sheetVerb(const Arguments& arguments, const Helpers& helpers) {
    if (arguments.value("--kind") == "bench") return benchSheet(arguments, helpers);
    const auto kind = kindAsked(arguments);
    if (!kind) return refused(kind.error());
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto& path = arguments.of("--pdf");
    const auto bill = billAsked(arguments, **book, *kind);
    if (!bill && (*kind != PaperKind::Quote || bill.error().code != base::Code::NotFound)) return refused(bill.error());
    base::Done written;
    auto number = arguments.of("--quote");
    Json json;
    if (bill) {
        written = helpers.writeBill(*bill, path, ifThere(arguments));
        const auto quote = (*book)->quote(bill->job);
        if (!quote) return refused(quote.error());
        json = {{"quote", quote->number}, {"number", bill->number}, {"kind", kindCode(bill->kind)}, {"pdf", path}};
    } else {
        const auto quote = (*book)->quoteAsGiven(number);
        if (!quote) return refused(quote.error());
        written = helpers.writeSheet(**book, *quote, path, ifThere(arguments));
        json = {{"quote", quote->number},
                {"number", quote->number},
                {"kind", kindCode(PaperKind::Quote)},
                {"replaced_by", quote->replacedBy ? Json(quote->replacedBy->number) : Json(nullptr)},
                {"pdf", path}};
    }
    if (!written) return notWritten(written.error(), path);
    return answer(arguments, json,
                  bill ? line(QT_TRANSLATE_NOOP("App", "%1 is in %2."), bill->number, path)
                       : line(QT_TRANSLATE_NOOP("App", "Quote %1 is in %2."), number, path));
}

} // namespace sp::verbs
