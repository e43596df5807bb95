// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/paper_kind.h"
#include "core/catalogue/payment.h"
#include "core/catalogue/shop.h"
#include "core/pricing/account.h"
#include "core/pricing/bill.h"
#include "core/quoting/sheet_words.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::quoting {

/// An invoice, a receipt or a credit note before it is put into words.
struct Bill {
    catalogue::PaperKind kind = catalogue::PaperKind::Invoice;
    std::string number; ///< of the paper
    units::Date day;
    std::optional<units::Date> due; ///< of an invoice with something left to pay
    std::string quote;              ///< the number of the job's quote
    std::string invoice;            ///< of a credit note the one it takes back; of others the one before, may be empty
    bool isWhole = false;           ///< an invoice of all that was agreed; a credit note of all of its invoice
    std::vector<pricing::BillPart> parts;       ///< of a receipt none
    bool taxIncluded = false;                   ///< the prices hold the tax
    units::Money amount;                        ///< invoiced, received or taken back, above nothing
    std::optional<catalogue::Payment> payment;  ///< of a receipt
    std::vector<catalogue::Payment> payments{}; ///< for the job so far, in their order
    pricing::Account account;                   ///< of the job, this paper included
    units::Currency currency;
};

/// The words of these papers, besides those of the quote sheet.
class BillWords {
  public:
    virtual ~BillWords() = default;

    virtual std::string title(catalogue::PaperKind kind, const std::string& number) const = 0;
    virtual std::string day() const = 0; ///< the labels of the days and of the papers referred to
    virtual std::string due() const = 0;
    virtual std::string quote() const = 0;
    virtual std::string invoice() const = 0;
    /// Beside the large amount: "Total", "Received", "Credited".
    virtual std::string total(catalogue::PaperKind kind) const = 0;
    virtual std::string untaxedOn(const std::string& amount) const = 0;
    /// In the place of lines: a further invoice of the job, `invoice` the one before; a credit note.
    virtual std::string furtherTo(const std::string& invoice) const = 0;
    virtual std::string takenBack(const std::string& invoice, bool isWhole) const = 0;
    /// Of a receipt, below the amount: how, and for which quote.
    virtual std::string receivedBy(const std::string& kind, const std::string& day, const std::string& quote) const = 0;
    /// Of a receipt with change, behind that: what was handed over, and what was given back of it.
    virtual std::string takenAndChange(const std::string& taken, const std::string& change) const = 0;
    /// What the job comes to: as it was agreed, or what was invoiced less what was credited.
    virtual std::string comesTo(bool isInvoiced) const = 0;
    // Movements of money, by day and kind.
    virtual std::string paid(const std::string& day, const std::string& kind) const = 0;
    virtual std::string givenBack(const std::string& day, const std::string& kind) const = 0;
    virtual std::string paymentTakenBack(const std::string& day, const std::string& kind) const = 0;
    virtual std::string rounded(const std::string& day, const std::string& kind) const = 0; ///< cash to a coin
    virtual std::string paidBefore() const = 0; ///< several movements in one row
    virtual std::string left() const = 0;
    virtual std::string leftBy(const std::string& day) const = 0;
    virtual std::string credit() const = 0; ///< what was paid beyond it
};

/// Of more movements than this the oldest stand in one row.
inline constexpr std::size_t kMaxMovements = 12;

/// The sheet of such a paper. `agreed` is the sheet of the quote as it was given, looking at the choice that was taken:
/// whose it is, and of an invoice of the whole the lines, are taken from it. Letterhead and terms are the shop's of
/// today.
SheetContent billSheet(const Bill& bill, const SheetContent& agreed, const catalogue::Shop& shop,
                       const SheetWords& words, const BillWords& billWords);

} // namespace sp::quoting
