// SPDX-License-Identifier: MIT
#include "core/pricing/price_order.h"
#include "db/book/action.h"
#include "db/records/record.h"

#include <algorithm>
#include <chrono>

namespace sp::db {

using base::Id;
using base::Result;
using catalogue::PaperKind;
using catalogue::Payment;
using pricing::BillPart;
using units::Money;

namespace {

/// What the quote comes to, by rate of tax. One that was sealed before the rates were is priced again from what is
/// sealed; where that comes to something else, all of it stands at the usual rate with the tax that is sealed.
std::vector<BillPart> agreedParts(const Quote& quote) {
    const auto total = quote.sealedTotal.value();
    if (!quote.result) return pricing::partsOf({}, false, total);
    const auto& figures = quote.result->figures;
    if (!figures.taxes.empty() || figures.tax.isZero())
        return pricing::partsOf(figures.taxes, figures.taxIncluded, total);
    layout::FitMemo fits;
    const auto again = pricing::priceOrder(quote.order, *quote.frozen, fits, quote.result->rules);
    if (again && again->total == total && again->tax == figures.tax)
        return pricing::partsOf(again->taxes, again->taxIncluded, total);
    const auto& rule = quote.frozen->shop.rules.tax;
    return {{rule.name, rule.rate, total - figures.tax, figures.tax}};
}

bool isTaxIncluded(const Quote& quote) { return quote.frozen->shop.rules.tax.inclusive; }

/// What was invoiced less what was credited.
std::vector<BillPart> billedParts(const std::vector<IssuedBill>& bills) {
    std::vector<BillPart> parts;
    for (const auto& bill : bills)
        if (bill.kind != PaperKind::Receipt)
            pricing::addParts(parts, bill.result.parts, bill.kind == PaperKind::Credit ? -1 : 1);
    return parts;
}

/// What of an invoice was not taken back.
std::vector<BillPart> leftOf(const IssuedBill& invoice, const std::vector<IssuedBill>& bills) {
    auto parts = invoice.result.parts;
    for (const auto& bill : bills)
        if (bill.result.invoice == invoice.id) pricing::addParts(parts, bill.result.parts, -1);
    return parts;
}

std::string lastInvoice(const std::vector<IssuedBill>& bills) {
    std::string number;
    for (const auto& bill : bills)
        if (bill.kind == PaperKind::Invoice) number = bill.number;
    return number;
}

std::optional<std::string> receiptOf(const Id& payment, const std::vector<IssuedBill>& bills) {
    for (const auto& bill : bills)
        if (bill.result.payment == payment) return bill.number;
    return std::nullopt;
}

/// Whether there can be a receipt for a row: it is money that was received and not taken back.
bool isReceived(const Payment& payment) {
    return payment.role == catalogue::PaymentRole::Money && !payment.amount.isNegative() && !payment.reverses;
}

/// What of the order is still to be invoiced.
std::vector<BillPart> toInvoice(const Quote& quote, const std::vector<IssuedBill>& bills) {
    if (quote.number.empty()) throwError(Fault::NotGivenYet, "invoice");
    const auto choices = catalogue::choiceCount(quote.order);
    if (choices > 1 && !quote.choiceTaken) throwError(Fault::NoChoiceTaken, "invoice", quote.number, choices);
    if (!catalogue::isAgreedTo(quote.stage)) throwError(Fault::NotAgreedYet, "invoice", quote.number);
    auto parts = agreedParts(quote);
    pricing::addParts(parts, billedParts(bills), -1);
    if (parts.empty() && lastInvoice(bills).empty()) throwError(Fault::NothingToInvoice, "invoice", quote.number);
    if (parts.empty()) throwError(Fault::InvoicedAlready, "invoice", quote.number, lastInvoice(bills));
    if (!pricing::areAllOwed(parts)) throwError(Fault::CreditFirst, "invoice", quote.number, lastInvoice(bills));
    return parts;
}

} // namespace

/// What every bill says; its kind, parts and amount come from the caller.
quoting::Bill Book::Inside::billOf(const Quote& quote, PaperKind kind, std::vector<BillPart> parts) {
    quoting::Bill bill;
    bill.kind = kind;
    bill.day = environment.today();
    bill.quote = quote.number;
    bill.parts = std::move(parts);
    bill.amount = pricing::wholeOf(bill.parts);
    bill.taxIncluded = isTaxIncluded(quote);
    bill.payments = stores.payments.ofJob(quote.id);
    bill.account = accountOf(quote);
    bill.currency = quote.frozen->shop.currency;
    return bill;
}

IssuedBill Book::Inside::issueBill(const Quote& quote, quoting::Bill bill, records::BillResult links,
                                   const BillSheetMaker& words) {
    const auto shop = stores.shop.find();
    const auto revision = stores.jobs.revision(quote.id, quote.revision);
    const auto number = stores.papers.quoteNumbered(quote.number);
    const auto given = number ? stores.papers.find(number->paper) : std::nullopt;
    if (!shop || !revision || !given) throwError(Fault::QuoteUnknown, quote.number);
    const std::chrono::year_month_day day(bill.day.days());
    bill.number = std::string(stores::prefixOf(bill.kind)) +
                  stores.jobs.takeNumber(catalogue::fields::wordOf(bill.kind), static_cast<int>(day.year()));
    if (bill.kind == PaperKind::Invoice) bill.due = bill.day.plusDays(shop->rules.daysToPay);
    links.day = bill.day;
    links.parts = bill.parts;
    links.taxIncluded = bill.taxIncluded;
    links.comesTo = bill.account.total;
    links.paid = bill.account.paid;
    links.paper = shop->paper;
    links.sheet = words(bill, quote, *shop);
    const auto total = bill.kind == PaperKind::Credit ? -bill.amount : bill.amount;
    const auto paper = stores.bills.prepare({.id = newId(),
                                             .job = quote.id,
                                             .revision = quote.revision,
                                             .kind = bill.kind,
                                             .number = bill.number,
                                             .issuedAt = action->at,
                                             .due = bill.due,
                                             .total = total,
                                             .order = revision->orderDigest,
                                             .prices = given->prices,
                                             .customer = quote.frozen->customer},
                                            std::move(links));
    record("give", base::say(Note::BillFor, bill.number, quote.number),
           {"paper", paper.paper, {}, records::write(paper)});
    stores.bills.issue(paper, bill.day);
    // How far the job was when it was billed is not undone any more, nor what left the shelf for it.
    if (bill.kind != PaperKind::Receipt) {
        action->issued.push_back(quote.id);
        for (const auto& move : stores.stock.keysFor(quote.id)) action->issued.push_back(move);
    }
    return stores.bills.find(paper.paper).value();
}

Result<IssuedBill> Book::issueInvoice(const Id& job, const BillSheetMaker& words) {
    return m_in->write([&] {
        const auto quote = m_in->wholeOf(job);
        const auto bills = m_in->stores.bills.ofJob(job);
        auto bill = m_in->billOf(quote, PaperKind::Invoice, toInvoice(quote, bills));
        bill.invoice = lastInvoice(bills);
        bill.isWhole = billedParts(bills).empty();
        const auto deposit = quote.result ? quote.result->figures.deposit : Money{};
        const auto comesTo = bill.amount + pricing::wholeOf(billedParts(bills));
        bill.account = pricing::accountOf(comesTo, std::min(deposit, comesTo), bill.payments);
        return m_in->issueBill(quote, std::move(bill), {}, words);
    });
}

Result<IssuedBill> Book::issueReceipt(const Id& id, const BillSheetMaker& words) {
    return m_in->write([&] {
        const auto payment = m_in->stores.payments.find(id);
        if (!payment) throwError(Fault::PaymentMissing, m_in->file().string());
        const auto quote = m_in->wholeOf(payment->job);
        if (!isReceived(*payment) || m_in->stores.payments.isReversed(id))
            throwError(Fault::NoReceiptFor, "payment", quote.number);
        const auto bills = m_in->stores.bills.ofJob(quote.id);
        if (const auto number = receiptOf(id, bills)) throwError(Fault::ReceiptMade, "payment", quote.number, *number);
        auto bill = m_in->billOf(quote, PaperKind::Receipt, {});
        bill.invoice = lastInvoice(bills);
        bill.amount = pricing::receivedOf(*payment, bill.payments);
        bill.payment = payment;
        records::BillResult links;
        links.payment = id;
        return m_in->issueBill(quote, std::move(bill), std::move(links), words);
    });
}

Result<IssuedBill> Book::issueCredit(const Id& invoice, std::optional<Money> amount, const BillSheetMaker& words) {
    return m_in->write([&] {
        const auto credited = m_in->stores.bills.find(invoice);
        if (!credited || credited->kind != PaperKind::Invoice)
            throwError(Fault::NoInvoice, "invoice", credited ? credited->number : std::string());
        // The customer and the tax are those of the invoice, whatever the job was revised to since.
        const auto quote = m_in->ofRevision(credited->job, credited->revision);
        const auto bills = m_in->stores.bills.ofJob(credited->job);
        const auto left = leftOf(*credited, bills);
        if (left.empty()) throwError(Fault::CreditedAlready, "invoice", credited->number);
        auto parts =
            valueOrThrow(pricing::shareOf(left, amount.value_or(pricing::wholeOf(left)), quote.frozen->shop.currency));
        auto bill = m_in->billOf(quote, PaperKind::Credit, std::move(parts));
        bill.invoice = credited->number;
        bill.isWhole = bill.amount == credited->total;
        bill.taxIncluded = credited->result.taxIncluded;
        const auto comesTo = m_in->comesTo(m_in->wholeOf(credited->job), -bill.amount);
        bill.account = pricing::accountOf(comesTo, std::min(bill.account.deposit, comesTo), bill.payments);
        records::BillResult links;
        links.invoice = invoice;
        return m_in->issueBill(quote, std::move(bill), std::move(links), words);
    });
}

Result<Billing> Book::billing(const Id& job) {
    return m_in->read([&] {
        const auto quote = m_in->wholeOf(job);
        Billing billing;
        billing.bills = m_in->stores.bills.ofJob(job);
        const auto invoice = catchToResult([&] { return pricing::wholeOf(toInvoice(quote, billing.bills)); });
        if (invoice)
            billing.toInvoice = *invoice;
        else
            billing.whyNoInvoice = invoice.error();
        const auto payments = m_in->stores.payments.ofJob(job);
        for (const auto& payment : payments) {
            const bool isReversed =
                std::ranges::any_of(payments, [&](const Payment& other) { return other.reverses == payment.id; });
            if (!isReceived(payment) || isReversed || receiptOf(payment.id, billing.bills)) continue;
            billing.withoutReceipt.push_back({payment, pricing::receivedOf(payment, payments)});
        }
        for (const auto& bill : billing.bills) {
            if (bill.kind != PaperKind::Invoice) continue;
            const auto left = leftOf(bill, billing.bills);
            if (!left.empty()) billing.openInvoices.push_back({bill.id, bill.number, pricing::wholeOf(left)});
        }
        return billing;
    });
}

Result<IssuedBill> Book::billNumbered(std::string_view number) {
    return m_in->read([&] {
        const auto id = m_in->stores.bills.numbered(number);
        auto bill = id ? m_in->stores.bills.find(*id) : std::nullopt;
        if (!bill) throwError(Fault::NoPaperNumbered, std::string(number), number);
        return std::move(*bill);
    });
}

Result<pricing::TaxReport> Book::taxReport(units::Date from, units::Date to) {
    return m_in->read([&] {
        auto& stores = m_in->stores;
        pricing::TaxReport report;
        for (const auto& id : stores.bills.issuedIn(from, to)) {
            const auto bill = stores.bills.find(id).value();
            // A bill without tax for a customer who asked to be exempt was so by the certificate of its day.
            bool asksExemption = false;
            for (const auto& given : stores.papers.quotesOf(bill.job))
                if (given.revision == bill.revision)
                    asksExemption = stores.papers.find(given.paper)->order.asksExemption;
            const bool isExempt = asksExemption && pricing::taxOf(bill.result.parts).isZero();
            if (bill.kind == PaperKind::Credit)
                report.addCreditNote(bill.result.parts, isExempt);
            else
                report.addInvoice(bill.result.parts, isExempt);
        }
        return report;
    });
}

} // namespace sp::db
