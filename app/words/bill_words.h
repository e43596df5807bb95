// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/bill_sheet.h"
#include "db/book/book.h"

#include <QCoreApplication>

namespace sp::words {

/// The words of invoices, receipts and credit notes in the language that the program runs in.
class BillWords : public quoting::BillWords {
    Q_DECLARE_TR_FUNCTIONS(BillWords)

  public:
    std::string title(catalogue::PaperKind kind, const std::string& number) const override;
    std::string day() const override;
    std::string due() const override;
    std::string quote() const override;
    std::string invoice() const override;
    std::string total(catalogue::PaperKind kind) const override;
    std::string untaxedOn(const std::string& amount) const override;
    std::string furtherTo(const std::string& invoice) const override;
    std::string takenBack(const std::string& invoice, bool isWhole) const override;
    std::string receivedBy(const std::string& kind, const std::string& day, const std::string& quote) const override;
    std::string takenAndChange(const std::string& taken, const std::string& change) const override;
    std::string comesTo(bool isInvoiced) const override;
    std::string paid(const std::string& day, const std::string& kind) const override;
    std::string givenBack(const std::string& day, const std::string& kind) const override;
    std::string paymentTakenBack(const std::string& day, const std::string& kind) const override;
    std::string rounded(const std::string& day, const std::string& kind) const override;
    std::string paidBefore() const override;
    std::string left() const override;
    std::string leftBy(const std::string& day) const override;
    std::string credit() const override;
};

/// Puts bills into those words. `words` must outlive it.
db::BillSheetMaker billSheets(const quoting::SheetWords& words);
db::BillSheetMaker billSheets(const quoting::SheetWords&& words) = delete;

/// "Invoice", as a button or a list has it.
QString nameOf(catalogue::PaperKind kind);

/// What the law may ask of an invoice beyond what the program knows, said to whoever writes one.
QString invoiceCaution();

} // namespace sp::words
