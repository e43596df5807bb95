// SPDX-License-Identifier: MIT
#include "core/base/csv.h"

#include <algorithm>
#include <array>

namespace sp::base {

namespace {

char separatorOf(std::string_view text) {
    constexpr std::array kSeparators{',', ';', '\t'};
    std::array<std::size_t, kSeparators.size()> counts{};
    bool isQuoted = false;
    for (const char c : text) {
        if (c == '"') isQuoted = !isQuoted;
        if (isQuoted) continue;
        if (c == '\n' || c == '\r') break;
        for (std::size_t i = 0; i < kSeparators.size(); ++i)
            if (c == kSeparators[i]) ++counts[i];
    }
    return kSeparators[static_cast<std::size_t>(std::max_element(counts.begin(), counts.end()) - counts.begin())];
}

class CsvReader {
  public:
    explicit CsvReader(std::string_view text)
        : m_text(text) {
        m_table.separator = separatorOf(text);
    }

    tl::expected<CsvTable, CsvTrouble> run() {
        while (m_at < m_text.size())
            if (auto row = readRow(); !row) return tl::unexpected(row.error());
        return std::move(m_table);
    }

  private:
    using Read = tl::expected<void, CsvTrouble>;

    static tl::unexpected<CsvTrouble> fail(CsvFault fault, std::size_t line) {
        return tl::unexpected(CsvTrouble{fault, line});
    }

    bool isRowEnd() const { return m_at == m_text.size() || m_text[m_at] == '\n' || m_text[m_at] == '\r'; }

    /// Steps over one line end, if one stands here.
    void passLineEnd() {
        if (m_at == m_text.size()) return;
        if (m_text[m_at] == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n') ++m_at;
        ++m_at;
        ++m_line;
    }

    Read readRow() {
        CsvRow row{m_line, {}};
        for (;;) {
            std::string cell;
            if (m_at < m_text.size() && m_text[m_at] == '"') {
                if (auto read = readQuoted(cell); !read) return read;
            } else {
                const auto start = m_at;
                while (!isRowEnd() && m_text[m_at] != m_table.separator) ++m_at;
                cell = m_text.substr(start, m_at - start);
            }
            if (cell.size() > kMaxCsvCellLength) return fail(CsvFault::CellTooLarge, row.line);
            row.cells.push_back(std::move(cell));
            if (row.cells.size() > kMaxCsvCells) return fail(CsvFault::TooManyColumns, row.line);
            if (isRowEnd()) break;
            if (m_text[m_at] != m_table.separator) return fail(CsvFault::TextAfterQuote, m_line);
            ++m_at;
        }
        passLineEnd();
        const bool isBlank = std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
            return cell.find_first_not_of(" \t") == std::string::npos;
        });
        if (isBlank) return {};
        m_table.rows.push_back(std::move(row));
        if (m_table.rows.size() > kMaxCsvRows) return fail(CsvFault::TooManyRows, m_line);
        return {};
    }

    Read readQuoted(std::string& cell) {
        const auto opened = m_line;
        ++m_at;
        while (m_at < m_text.size()) {
            const char c = m_text[m_at];
            if (c == '"') {
                ++m_at;
                if (m_at == m_text.size() || m_text[m_at] != '"') return {};
            }
            if (c == '\n' || c == '\r') {
                const auto start = m_at;
                passLineEnd();
                cell += m_text.substr(start, m_at - start);
                continue;
            }
            cell += c;
            ++m_at;
        }
        return fail(CsvFault::QuoteNotClosed, opened);
    }

    std::string_view m_text;
    CsvTable m_table;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
};

} // namespace

tl::expected<CsvTable, CsvTrouble> readCsv(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    return CsvReader(text).run();
}

std::string guarded(std::string_view words) {
    using namespace std::string_view_literals;
    static constexpr std::array kStarts{"="sv,  "+"sv, "-"sv,      "@"sv,      "\t"sv,     "\r"sv,    "\n"sv,
                                        "\0"sv, "'"sv, "\uFF1D"sv, "\uFF0B"sv, "\uFF0D"sv, "\uFF20"sv};
    const bool isFormula = std::any_of(kStarts.begin(), kStarts.end(),
                                       [&](std::string_view start) { return words.substr(0, start.size()) == start; });
    return isFormula ? "'" + std::string(words) : std::string(words);
}

std::string unguarded(std::string_view words) {
    if (!words.starts_with('\'')) return std::string(words);
    const auto rest = words.substr(1);
    return std::string(guarded(rest) == words ? rest : words);
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
