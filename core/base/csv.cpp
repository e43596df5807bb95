// SPDX-License-Identifier: MIT
#include "core/base/csv.h"

#include <algorithm>
#include <array>

namespace sp::base {

std::string guarded(std::string_view words) {
    using namespace std::string_view_literals;
    static constexpr std::array kStarts{"="sv,  "+"sv, "-"sv,      "@"sv,      "\t"sv,     "\r"sv,    "\n"sv,
                                        "\0"sv, "'"sv, "\uFF1D"sv, "\uFF0B"sv, "\uFF0D"sv, "\uFF20"sv};
    const bool isFormula = std::any_of(kStarts.begin(), kStarts.end(),
                                       [&](std::string_view start) { return words.substr(0, start.size()) == start; });
    return isFormula ? "'" + std::string(words) : std::string(words);
}

std::string csvRecord(const std::vector<CsvCell>& cells) {
    std::string record;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) record += ',';
        const auto text = cells[i].isNumber ? cells[i].text : guarded(cells[i].text);
        if (text.find_first_of(",\"\r\n") == std::string::npos) {
            record += text;
            continue;
        }
        record += '"';
        for (const char c : text) record.append(c == '"' ? 2 : 1, c);
        record += '"';
    }
    return record + "\r\n";
}

} // namespace sp::base
