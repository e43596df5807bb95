// SPDX-License-Identifier: MIT
#include "core/supply/csv.h"

#include "core/supply/messages.h"
#include "core/units/characters.h"

#include <algorithm>
#include <array>

namespace sp::supply {

using base::Result;

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
    CsvReader(std::string_view text, std::string_view fileName)
        : m_text(text)
        , m_fileName(fileName) {
        m_table.separator = separatorOf(text);
    }

    Result<CsvTable> run() {
        while (m_at < m_text.size())
            if (auto row = readRow(); !row) return base::fail(row.error());
        return std::move(m_table);
    }

  private:
    bool isRowEnd() const { return m_at == m_text.size() || m_text[m_at] == '\n' || m_text[m_at] == '\r'; }

    /// Steps over one line end, if one stands here.
    void passLineEnd() {
        if (m_at == m_text.size()) return;
        if (m_text[m_at] == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n') ++m_at;
        ++m_at;
        ++m_line;
    }

    base::Done readRow() {
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
            if (cell.size() > kLongestCsvCell) return base::fail(Fault::CellTooLarge, m_fileName, row.line, m_fileName);
            row.cells.push_back(std::move(cell));
            if (row.cells.size() > kMostCsvCells)
                return base::fail(Fault::TooManyColumns, m_fileName, row.line, m_fileName);
            if (isRowEnd()) break;
            if (m_text[m_at] != m_table.separator)
                return base::fail(Fault::TextAfterQuote, m_fileName, m_line, m_fileName);
            ++m_at;
        }
        passLineEnd();
        const bool isBlank = std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
            return cell.find_first_not_of(" \t") == std::string::npos;
        });
        if (isBlank) return {};
        m_table.rows.push_back(std::move(row));
        if (m_table.rows.size() > kMostCsvRows) return base::fail(Fault::TooManyRows, m_fileName, m_line, m_fileName);
        return {};
    }

    base::Done readQuoted(std::string& cell) {
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
        return base::fail(Fault::QuoteNotClosed, m_fileName, opened, m_fileName);
    }

    std::string_view m_text;
    std::string m_fileName;
    CsvTable m_table;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
};

} // namespace

Result<CsvTable> readCsv(std::string_view bytes, std::string_view fileName) {
    const std::string name(fileName);
    if (bytes.size() > kLargestCsv) return base::fail(Fault::PriceListTooLarge, name, name);
    if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
    if (!units::decode(bytes) || bytes.find('\0') != std::string_view::npos)
        return base::fail(Fault::NotUtf8, name, name);
    return CsvReader(bytes, fileName).run();
}

} // namespace sp::supply
