// SPDX-License-Identifier: MIT
#include "core/pricing/tax_report.h"

namespace sp::pricing {

void TaxReport::addInvoice(std::span<const BillPart> parts, bool isExempt) {
    ++invoices;
    add(parts, isExempt, 1);
}

void TaxReport::addCreditNote(std::span<const BillPart> parts, bool isExempt) {
    ++creditNotes;
    add(parts, isExempt, -1);
}

void TaxReport::add(std::span<const BillPart> parts, bool isExempt, int sign) {
    for (const auto& part : parts) {
        if (!part.name.empty() || !part.tax.isZero()) {
            addParts(rates, std::span(&part, 1), sign);
            continue;
        }
        auto& sum = isExempt ? exempt : untaxed;
        sum += sign < 0 ? -part.whole() : part.whole();
    }
}

units::Money TaxReport::taxable() const { return wholeOf(rates) - tax(); }

units::Money TaxReport::tax() const { return taxOf(rates); }

units::Money TaxReport::net() const { return total() - tax(); }

units::Money TaxReport::total() const { return wholeOf(rates) + exempt + untaxed; }

} // namespace sp::pricing
