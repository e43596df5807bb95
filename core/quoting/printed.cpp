// SPDX-License-Identifier: MIT
#include "core/quoting/printed.h"

#include <fmt/format.h>

namespace sp::quoting {

namespace {

constexpr std::string_view kMinus = "\u2212";

} // namespace

std::string printedMoney(units::Money amount, const units::Currency& currency, const units::NumberStyle& numbers) {
    if (amount.isNegative()) return fmt::format("{}{}", kMinus, printedMoney(-amount, currency, numbers));
    return units::formatMoney(amount, currency, numbers);
}

std::vector<std::string> printedLines(std::string_view text) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const auto end = text.find('\n');
        auto line = text.substr(0, end);
        while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) line.remove_suffix(1);
        if (!line.empty()) lines.emplace_back(line);
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return lines;
}

} // namespace sp::quoting
