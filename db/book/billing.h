// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/payment.h"
#include "core/catalogue/shop.h"
#include "core/pricing/tax_report.h"
#include "core/quoting/bill_sheet.h"
#include "db/records/issued_bill.h"

#include <functional>
#include <optional>
#include <vector>

namespace sp::db {

struct Quote;

/// An invoice of which something can be taken back.
struct OpenInvoice {
    base::Id id;
    std::string number;
    units::Money left; ///< above nothing

    friend bool operator==(const OpenInvoice&, const OpenInvoice&) = default;
};

/// A payment without a receipt.
struct UnreceiptedPayment {
    catalogue::Payment payment;
    units::Money received; ///< less the change that was given of it

    friend bool operator==(const UnreceiptedPayment&, const UnreceiptedPayment&) = default;
};

/// The bills of a job and what can be issued next.
struct Billing {
    std::vector<IssuedBill> bills; ///< in the order in which they were issued
    units::Money toInvoice;        ///< of what was agreed; nothing where no invoice can be issued
    std::optional<base::Error> whyNoInvoice;
    std::vector<UnreceiptedPayment> withoutReceipt; ///< received, standing, the oldest first
    std::vector<OpenInvoice> openInvoices;          ///< likewise
};

/// Puts a bill into words, under the number that it gets: from the quote as it was given and the shop of today.
using BillSheetMaker = std::function<quoting::SheetContent(const quoting::Bill&, const Quote&, const catalogue::Shop&)>;

} // namespace sp::db
