// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/bill.h"

#include <cstdint>
#include <span>
#include <vector>

namespace sp::pricing {

/// What some bills charged, credit notes taken off: by rate of tax, and what no tax is in. A report, not a return:
/// which of it is owed to whom, and when, is for the shop and its tax authority to say.
struct TaxReport {
    std::vector<BillPart> rates; ///< taxed, those of one name and rate together, in the order of the bills
    units::Money exempt;         ///< without tax because the customer is exempt
    units::Money untaxed;        ///< else without tax
    std::int64_t invoices = 0;
    std::int64_t creditNotes = 0;

    void addInvoice(std::span<const BillPart> parts, bool isExempt);
    void addCreditNote(std::span<const BillPart> parts, bool isExempt);

    units::Money taxable() const; ///< what tax was charged on, without it
    units::Money tax() const;
    units::Money net() const;   ///< of the bills, without tax: taxable, exempt and untaxed
    units::Money total() const; ///< of the bills: taxable, tax, exempt and untaxed

    friend bool operator==(const TaxReport&, const TaxReport&) = default;

  private:
    void add(std::span<const BillPart> parts, bool isExempt, int sign);
};

} // namespace sp::pricing
