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
    return pricing::accountOf(total, std::min(deposit, total), stores.payments.ofJob(quote.id));
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

Result<Id> Book::pay(const Payment& payment, pricing::Beyond beyond) {
    return m_in->write([&] {
        const auto quote = m_in->wholeOf(payment.job);
        Payment made = payment;
        made.id = m_in->newId();
        made.reverses.reset();
        valueOrThrow(catalogue::fields::check(made));
        const auto account = m_in->accountOf(quote); // a draft has none, and no prices either
        valueOrThrow(
            pricing::checkPayment(made, account, quote.frozen->shop.currency, m_in->environment.today(), beyond));
        const auto stamp = m_in->record("make", base::say(Note::PaymentOf, quote.number),
                                        {"payment", made.id, {}, records::write(made)});
        m_in->stores.payments.add(made, stamp);
        return made.id;
    });
}

Payment Book::Inside::addReversal(std::string_view kind, std::optional<base::Message> what, const Payment& payment) {
    const Payment back{newId(),      payment.job, -payment.amount, payment.kind, environment.today(),
                       payment.note, payment.id};
    stores.payments.add(back, record(kind, std::move(what), {"payment", back.id, {}, records::write(back)}));
    return back;
}

Done Book::takeBackPayment(const Id& id) {
    return m_in->write([&] {
        const auto payment = m_in->stores.payments.find(id);
        if (!payment) throwError(Fault::PaymentMissing, m_in->file().string());
        const auto quote = m_in->wholeOf(payment->job);
        if (payment->reverses || m_in->stores.payments.isReversed(id))
            throwError(Fault::PaymentTakenBack, "payment", quote.number);
        // What was given back may be needed for what would be left without this payment.
        const auto account = m_in->accountOf(quote);
        if (payment->amount > account.paid)
            throwError(Fault::PaymentSpent, "payment", units::formatMoney(payment->amount, quote.frozen->shop.currency),
                       quote.number);
        m_in->addReversal("make", base::say(Note::PaymentOf, quote.number), *payment);
    });
}

Change Book::Inside::applyPayment(std::string_view kind, const Change& change) {
    const auto last = stores.payments.find(change.id);
    if (!last) throwError(Fault::PaymentMissing, file().string());
    const auto back = addReversal(kind, {}, *last);
    return {"payment", back.id, {}, records::write(back)};
}

} // namespace sp::db
