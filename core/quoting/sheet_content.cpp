// SPDX-License-Identifier: MIT
#include "core/quoting/sheet_content.h"

#include <fmt/format.h>

namespace sp::quoting {

std::string taxLabel(const SheetContent& sheet) {
    if (!sheet.tax) return {};
    if (sheet.customer.exemption.empty()) return sheet.tax->label;
    return fmt::format("{} ({})", sheet.tax->label, sheet.customer.exemption);
}

std::string taxNote(const SheetContent& sheet) {
    if (!sheet.tax) return {};
    return sheet.tax->note.empty() ? sheet.customer.exemptionDates : sheet.tax->note;
}

} // namespace sp::quoting
