// SPDX-License-Identifier: MIT
#include "core/quoting/bill_sheet.h"

#include "core/quoting/printed.h"

#include <algorithm>

namespace sp::quoting {

namespace {

using catalogue::PaperKind;
using catalogue::Payment;
using catalogue::PaymentRole;
using pricing::BillPart;
using units::Money;

class BillWriter {
  public:
    BillWriter(const Bill& bill, const SheetContent& agreed, const catalogue::Shop& shop, const SheetWords& words,
               const BillWords& billWords)
        : m_bill(bill)
        , m_agreed(agreed)
        , m_shop(shop)
        , m_words(words)
        , m_billWords(billWords) {}

    SheetContent write() {
        SheetContent sheet;
        writeHead(sheet);
        if (m_bill.kind != PaperKind::Receipt) {
            writeLines(sheet);
            writeTax(sheet);
        } else if (m_bill.payment) {
            sheet.taxIncluded =
                m_billWords.receivedBy(m_bill.payment->kind, m_words.date(m_bill.payment->paidOn), m_bill.quote);
            if (m_bill.payment->amount != m_bill.amount)
                sheet.taxIncluded +=
                    ". " + m_billWords.takenAndChange(amount(m_bill.payment->amount).text,
                                                      amount(m_bill.payment->amount - m_bill.amount).text);
        }
        sheet.toPay = amount(m_bill.amount);
        sheet.balance = sheet.toPay;
        writeSettlement(sheet);
        if (m_bill.kind == PaperKind::Invoice) sheet.terms = printedLines(m_shop.letterhead.terms);
        if (!pricing::taxOf(m_bill.parts).isZero()) sheet.care.push_back(m_words.taxCaution());
        return sheet;
    }

  private:
    SheetAmount amount(Money value) const { return {value, printedMoney(value, m_bill.currency, m_words.numbers())}; }
    std::string percent(units::Rate rate) const { return units::formatRate(rate, m_words.numbers()) + " %"; }

    void writeHead(SheetContent& sheet) const {
        sheet.language = m_words.language();
        sheet.labels = m_words.labels();
        sheet.labels.toPay = m_billWords.total(m_bill.kind);
        sheet.labels.care.clear();
        sheet.shopName = m_shop.letterhead.name;
        sheet.shopLines = printedLines(m_shop.letterhead.lines);
        sheet.title = m_billWords.title(m_bill.kind, m_bill.number);
        if (m_shop.isDemo) sheet.demo = m_words.demo();
        sheet.facts.push_back({m_billWords.day(), m_words.date(m_bill.day)});
        if (m_bill.due) sheet.facts.push_back({m_billWords.due(), m_words.date(*m_bill.due)});
        sheet.facts.push_back({m_billWords.quote(), m_bill.quote});
        if (!m_bill.invoice.empty()) sheet.facts.push_back({m_billWords.invoice(), m_bill.invoice});
        sheet.customer = m_agreed.customer;
        sheet.currency = m_bill.currency.code();
    }

    void writeLines(SheetContent& sheet) const {
        if (m_bill.kind == PaperKind::Invoice && m_bill.isWhole) {
            sheet.lines = m_agreed.lines;
            sheet.adjustments = m_agreed.adjustments;
            sheet.together = m_agreed.together;
            return;
        }
        const auto tax = m_bill.taxIncluded ? Money{} : pricing::taxOf(m_bill.parts);
        SheetLine line;
        line.title = m_bill.kind == PaperKind::Credit ? m_billWords.takenBack(m_bill.invoice, m_bill.isWhole)
                                                      : m_billWords.furtherTo(m_bill.invoice);
        line.amount = line.running = amount(m_bill.amount - tax);
        sheet.together = line.amount;
        sheet.lines.push_back(std::move(line));
    }

    void writeTax(SheetContent& sheet) const {
        const bool areKnown =
            std::ranges::any_of(m_bill.parts, [](const BillPart& part) { return !part.name.empty(); });
        if (!areKnown) { // exempt, not taxed, or sealed by an earlier program as a sum alone
            if (!m_bill.isWhole || m_bill.kind != PaperKind::Invoice) return;
            sheet.tax = m_agreed.tax;
            sheet.moreTaxes = m_agreed.moreTaxes;
            sheet.taxIncluded = m_agreed.taxIncluded;
            sheet.showsTogether = sheet.tax.has_value();
            return;
        }
        const bool areSeveral = m_bill.parts.size() > 1;
        std::string note = m_bill.isWhole && m_agreed.tax ? m_agreed.tax->note : std::string();
        for (const auto& part : m_bill.parts) {
            if (m_bill.taxIncluded) {
                if (!sheet.taxIncluded.empty()) sheet.taxIncluded += ". ";
                sheet.taxIncluded += part.name.empty()
                                         ? m_billWords.untaxedOn(amount(part.net).text)
                                         : m_words.taxIncluded(part.name, percent(part.rate), amount(part.tax).text);
                continue;
            }
            if (part.name.empty()) continue;
            const auto label = areSeveral ? m_words.taxOn(part.name, percent(part.rate), amount(part.net).text)
                                          : m_words.tax(part.name, percent(part.rate));
            if (!sheet.tax)
                sheet.tax = SheetTax{label, note, amount(part.tax)};
            else
                sheet.moreTaxes.push_back({label, {}, amount(part.tax)});
        }
        sheet.showsTogether = sheet.tax.has_value();
    }

    /// The rows of the ledger, change together with the money that it was given of.
    std::vector<Payment> movements() const {
        std::vector<Payment> all;
        for (const auto& row : m_bill.payments) {
            if (row.role == PaymentRole::Change) continue;
            all.push_back(row);
            if (row.role == PaymentRole::Money) all.back().amount = pricing::receivedOf(row, m_bill.payments);
        }
        return all;
    }

    std::string labelOf(const Payment& payment) const {
        const auto day = m_words.date(payment.paidOn);
        if (payment.role == PaymentRole::Rounding) return m_billWords.rounded(day, payment.kind);
        if (payment.reverses) return m_billWords.paymentTakenBack(day, payment.kind);
        return payment.amount.isNegative() ? m_billWords.givenBack(day, payment.kind)
                                           : m_billWords.paid(day, payment.kind);
    }

    /// What the job comes to, every movement, and what is left.
    void writeSettlement(SheetContent& sheet) const {
        const auto& account = m_bill.account;
        Money running = account.total;
        const auto add = [&](std::string label, Money value) {
            running += value;
            sheet.settlement.push_back({std::move(label), amount(value), amount(running)});
        };
        if (m_bill.kind != PaperKind::Invoice || account.total != m_bill.amount) {
            running = Money{};
            add(m_billWords.comesTo(!m_bill.invoice.empty()), account.total);
        }
        const auto all = movements();
        const auto summed = all.size() > kMaxMovements ? all.size() - kMaxMovements + 1 : 0;
        Money before;
        for (std::size_t i = 0; i < summed; ++i) before += all[i].amount;
        if (summed > 0) add(m_billWords.paidBefore(), -before);
        for (std::size_t i = summed; i < all.size(); ++i) add(labelOf(all[i]), -all[i].amount);
        const bool hasCredit = !account.credit.isZero();
        const auto rest = hasCredit ? account.credit : account.left;
        sheet.settlement.push_back({hasCredit ? m_billWords.credit()
                                    : m_bill.due && !account.left.isZero()
                                        ? m_billWords.leftBy(m_words.date(*m_bill.due))
                                        : m_billWords.left(),
                                    amount(rest), amount(rest)});
    }

    const Bill& m_bill;
    const SheetContent& m_agreed;
    const catalogue::Shop& m_shop;
    const SheetWords& m_words;
    const BillWords& m_billWords;
};

} // namespace

SheetContent billSheet(const Bill& bill, const SheetContent& agreed, const catalogue::Shop& shop,
                       const SheetWords& words, const BillWords& billWords) {
    return BillWriter(bill, agreed, shop, words, billWords).write();
}

} // namespace sp::quoting
