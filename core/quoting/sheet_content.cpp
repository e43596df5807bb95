// SPDX-License-Identifier: MIT
#include "core/quoting/sheet_content.h"

#include <fmt/format.h>

namespace sp::quoting {

std::vector<const SheetChoice*> choicesOf(const SheetContent& sheet) {
    std::vector<const SheetChoice*> choices;
    for (const auto& other : sheet.others) choices.push_back(&other);
    choices.insert(choices.begin() + sheet.choice, &sheet);
    return choices;
}

void lookAtChoice(SheetContent& sheet, std::int64_t number) {
    if (number == sheet.choice) return;
    auto& looked = static_cast<SheetChoice&>(sheet);
    catalogue::lookAt(looked, sheet.others, sheet.choice, number);
}

std::string taxLabel(const SheetContent& sheet, const SheetChoice& choice) {
    if (!choice.tax) return {};
    if (sheet.customer.exemption.empty()) return choice.tax->label;
    return fmt::format("{} ({})", choice.tax->label, sheet.customer.exemption);
}

std::string taxNote(const SheetContent& sheet, const SheetChoice& choice) {
    if (!choice.tax) return {};
    return choice.tax->note.empty() ? sheet.customer.exemptionDates : choice.tax->note;
}

} // namespace sp::quoting
