// SPDX-License-Identifier: MIT
#include "core/units/text.h"
#include "db/book/action.h"
#include "db/records/record.h"

#include <algorithm>

namespace sp::db {

using base::Done;
using base::Id;
using base::Result;
using catalogue::Payment;
using stores::Change;
using units::Money;

/// What the customer owes once all is done, `more` being invoiced yet: what the invoices say, less the credit notes.
/// What was revised since its invoice and agreed to again comes to that if it is more; less it is once it is credited.
Money Book::Inside::comesTo(const Quote& quote, Money more) {
    const auto given = quote.sealedTotal.value();
    const auto billed = stores.bills.billedOf(quote.id);
    if (!billed) return given;
    const bool isRevised = catalogue::isAgreedTo(quote.stage) && !stores.bills.isInvoiced(quote.id, quote.revision);
    return isRevised ? std::max(*billed + more, given) : *billed + more;
}

pricing::Account Book::Inside::accountOf(const Quote& quote) {
    if (quote.number.empty()) throwError(Fault::NotGivenYet, "payment");
    const auto choices = catalogue::choiceCount(quote.order);
    if (choices > 1 && !quote.choiceTaken && !stores.bills.billedOf(quote.id))
        throwError(Fault::NoChoiceTaken, "payment", quote.number, choices);
    const auto deposit = quote.result ? quote.result->figures.deposit : units::Money{};
    const auto total = comesTo(quote);
    auto account = pricing::accountOf(total, std::min(deposit, total), stores.payments.ofJob(quote.id));
    // A book has one currency, but a quote that was given before it changed has its own.
    const auto shop = stores.shop.find();
    if (shop && shop->currency == quote.frozen->shop.currency) account.coin = shop->smallestCoin;
    return account;
}

/// While an invoice stands, its order does.
void Book::Inside::throwIfInvoiced(const Id& job, const std::string& number) {
    if (const auto billed = stores.bills.billedOf(job); billed && !billed->isZero())
        throwError(Fault::InvoiceStands, "stage", number);
}

Result<pricing::Account> Book::account(const Id& quote) {
    return m_in->read([&] { return m_in->accountOf(m_in->wholeOf(quote)); });
}

Result<std::vector<Payment>> Book::payments(const Id& quote) {
    return m_in->read([&] { return m_in->stores.payments.ofJob(quote); });
}

Result<Id> Book::pay(const Payment& payment, pricing::Beyond beyond, pricing::Tender tender) {
    return m_in->write([&] {
        const auto quote = m_in->wholeOf(payment.job);
        Payment made = payment;
        made.id = m_in->newId();
        made.reverses.reset();
        made.partOf.reset();
        valueOrThrow(catalogue::fields::check(made));
        const auto account = m_in->accountOf(quote); // a draft has none, and no prices either
        auto rows = valueOrThrow(
            pricing::entriesOf(made, account, quote.frozen->shop.currency, tender, m_in->environment.today(), beyond));
        for (auto& row : rows) {
            if (&row != &rows.front()) {
                row.id = m_in->newId();
                row.partOf = made.id;
            }
            m_in->stores.payments.add(row, m_in->record("make", base::say(Note::PaymentOf, quote.number),
                                                        {"payment", row.id, {}, records::write(row)}));
        }
        return made.id;
    });
}

Payment Book::Inside::addReversal(std::string_view kind, std::optional<base::Message> what, const Payment& payment,
                                  units::Date day) {
    auto back = payment;
    back.id = newId();
    back.amount = -payment.amount;
    back.paidOn = day;
    back.reverses = payment.id;
    stores.payments.add(back, record(kind, std::move(what), {"payment", back.id, {}, records::write(back)}));
    return back;
}

Done Book::takeBackPayment(const Id& id) {
    return m_in->write([&] {
        const auto payment = m_in->stores.payments.find(id);
        if (!payment) throwError(Fault::PaymentMissing, m_in->file().string());
        const auto quote = m_in->wholeOf(payment->job);
        const auto rows = m_in->stores.payments.madeWith(payment->partOf.value_or(id));
        if (payment->reverses || m_in->stores.payments.isReversed(rows.at(0).id))
            throwError(Fault::PaymentTakenBack, "payment", quote.number);
        // What was given back may be needed for what would be left without this payment.
        Money whole;
        for (const auto& row : rows) whole += row.amount;
        if (whole > m_in->accountOf(quote).paid)
            throwError(Fault::PaymentSpent, "payment", units::formatMoney(whole, quote.frozen->shop.currency),
                       quote.number);
        // The money last: undoing goes backwards, and its parts are made anew after it.
        for (auto row = rows.rbegin(); row != rows.rend(); ++row)
            m_in->addReversal("make", base::say(Note::PaymentOf, quote.number), *row, m_in->environment.today());
    });
}

/// What was taken back is made anew when that is undone, so that it can have a receipt and be taken back like any
/// other.
Payment Book::Inside::addAnew(std::string_view kind, const Id& id, units::Date day) {
    auto anew = stores.payments.find(id).value();
    anew.id = newId();
    anew.paidOn = day;
    if (anew.partOf)
        for (const auto& row : stores.payments.ofJob(anew.job)) // the money of it was the last to be made
            if (row.role == catalogue::PaymentRole::Money && !row.reverses) anew.partOf = row.id;
    stores.payments.add(anew, record(kind, {}, {"payment", anew.id, {}, records::write(anew)}));
    return anew;
}

/// Undone and done again, a row counts on the day of the one that it undoes: no money moves between days.
Change Book::Inside::applyPayment(std::string_view kind, const Change& change) {
    const auto last = stores.payments.find(change.id);
    if (!last) throwError(Fault::PaymentMissing, file().string());
    const auto made =
        last->reverses ? addAnew(kind, *last->reverses, last->paidOn) : addReversal(kind, {}, *last, last->paidOn);
    return {"payment", made.id, {}, records::write(made)};
}

} // namespace sp::db
