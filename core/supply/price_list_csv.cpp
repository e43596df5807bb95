// SPDX-License-Identifier: MIT
#include "core/supply/price_list_csv.h"

#include "core/supply/messages.h"
#include "core/units/characters.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <map>

namespace sp::supply {

using base::Result;
using catalogue::ListColumn;
using catalogue::Material;
using units::Count;

namespace {

constexpr std::size_t kColumnKinds = 5;
constexpr std::size_t kMaxPackNameLength = 200; ///< bytes, as the book takes

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1));
}

std::string lowerCase(std::string_view text) {
    std::string lower(text);
    for (auto& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

Fault faultOf(base::CsvFault fault) {
    switch (fault) {
    case base::CsvFault::QuoteNotClosed: return Fault::QuoteNotClosed;
    case base::CsvFault::TextAfterQuote: return Fault::TextAfterQuote;
    case base::CsvFault::CellTooLarge: return Fault::CellTooLarge;
    case base::CsvFault::TooManyColumns: return Fault::TooManyColumns;
    case base::CsvFault::TooManyRows: break;
    }
    return Fault::TooManyRows;
}

/// A pack as the list tells it, row by row.
struct Told {
    std::size_t line = 0;
    const Material* material = nullptr;
    const catalogue::Pack* known = nullptr;
    std::string name;
    std::optional<Count> amount;
    std::vector<catalogue::PriceBreak> prices;
    std::vector<std::size_t> lines; ///< of the rows that gave them
    bool isSpoilt = false;          ///< one of its rows was not taken
};

class Listing {
  public:
    Listing(const base::CsvTable& table, const catalogue::PriceListColumns& columns, const PriceListContext& context)
        : m_table(table)
        , m_columns(columns)
        , m_context(context) {
        if (columns.decimalComma) m_style = {U',', U'.'};
        for (const auto& material : context.materials) m_materials[lowerCase(material.name)] = &material;
        for (const auto& pack : context.packs)
            if (pack.supplier == columns.supplier) m_packs[pack.material].push_back(&pack);
    }

    Result<PriceListReading> run() {
        if (auto found = findColumns(); !found) return base::fail(found.error());
        for (std::size_t i = 1; i < m_table.rows.size(); ++i) take(m_table.rows[i]);
        for (auto& told : m_told) close(told);
        std::stable_sort(m_reading.troubles.begin(), m_reading.troubles.end(),
                         [](const auto& a, const auto& b) { return a.line < b.line; });
        return std::move(m_reading);
    }

  private:
    base::Done findColumns() {
        for (const auto& column : m_columns.columns) {
            if (m_table.rows.empty()) break;
            const auto& head = m_table.rows.front().cells;
            const auto found = std::find_if(head.begin(), head.end(), [&](const std::string& cell) {
                return trimmed(cell) == trimmed(column.heading);
            });
            if (found == head.end()) return base::fail(Fault::NoSuchColumn, column.heading, column.heading);
            m_at[static_cast<std::size_t>(column.column)] = static_cast<std::size_t>(found - head.begin());
        }
        if (!m_at[static_cast<std::size_t>(ListColumn::Material)]) return base::fail(Fault::NoMaterialColumn, {});
        if (!m_at[static_cast<std::size_t>(ListColumn::Price)]) return base::fail(Fault::NoPriceColumn, {});
        return {};
    }

    /// Nothing when the list has no such column.
    std::optional<std::string> cell(const base::CsvRow& row, ListColumn column) const {
        const auto& at = m_at[static_cast<std::size_t>(column)];
        if (!at) return std::nullopt;
        return *at < row.cells.size() ? trimmed(row.cells[*at]) : std::string();
    }

    void trouble(const base::CsvRow& row, base::Message reason) {
        m_reading.troubles.push_back({row.line, cell(row, ListColumn::Material).value_or(""), std::move(reason)});
    }

    void take(const base::CsvRow& row) {
        const auto material = m_materials.find(lowerCase(cell(row, ListColumn::Material).value_or("")));
        if (material == m_materials.end()) return trouble(row, base::say(Note::NoSuchMaterial));
        Told* told = packOf(row, *material->second);
        if (told == nullptr) return;
        const auto problem = takePrice(row, *told);
        if (!problem) return;
        told->isSpoilt = true;
        trouble(row, *problem);
    }

    std::optional<base::Message> takePrice(const base::CsvRow& row, Told& told) {
        const auto price = units::parseMoney(*cell(row, ListColumn::Price), m_context.currency, m_style);
        if (!price) return price.error().message();
        if (price->micros() <= 0) return base::say(Note::PriceNotAboveNothing);
        Count from = Count::of(1);
        if (const auto text = cell(row, ListColumn::FromPacks); text && !text->empty()) {
            const auto count = units::parseCount(*text, m_style);
            if (!count) return count.error().message();
            if (count->value() < 1) return base::say(Note::PriceFromLessThanOne);
            from = *count;
        }
        const bool isTwice = std::any_of(told.prices.begin(), told.prices.end(),
                                         [&](const catalogue::PriceBreak& known) { return known.from == from; });
        if (isTwice) return base::say(Note::SecondPrice);
        told.prices.push_back({from, *price});
        told.lines.push_back(row.line);
        return std::nullopt;
    }

    /// The pack that a row speaks of; none when that cannot be told, which is reported.
    Told* packOf(const base::CsvRow& row, const Material& material) {
        std::optional<Count> amount;
        if (const auto text = cell(row, ListColumn::Amount); text && !text->empty()) {
            const auto count = units::parseCount(*text, m_style);
            if (!count || count->value() < 1) {
                trouble(row, count ? base::say(Note::EmptyPack) : count.error().message());
                return nullptr;
            }
            amount = *count;
        }
        const auto name = cell(row, ListColumn::Pack).value_or("");
        if (name.size() > kMaxPackNameLength) {
            trouble(row, base::say(Note::PackNameTooLong));
            return nullptr;
        }
        const catalogue::Pack* known = knownPack(material, name, amount);
        if (known == nullptr && !amount) {
            trouble(row, base::say(Note::UnknownPack));
            return nullptr;
        }
        std::string called = known != nullptr ? known->name : name;
        if (called.empty()) called = m_context.packCalled(*amount);
        for (auto& told : m_told)
            if (told.material == &material && lowerCase(told.name) == lowerCase(called)) {
                if (!told.amount || !amount || *told.amount == *amount) return &told;
                told.isSpoilt = true;
                trouble(row, base::say(Note::TwoContents));
                return nullptr;
            }
        return &m_told.emplace_back(Told{row.line, &material, known, called, amount, {}, {}, false});
    }

    const catalogue::Pack* knownPack(const Material& material, const std::string& name,
                                     std::optional<Count> amount) const {
        const auto found = m_packs.find(material.id);
        if (found == m_packs.end()) return nullptr;
        const auto& packs = found->second;
        if (!name.empty()) {
            for (const auto* pack : packs)
                if (lowerCase(pack->name) == lowerCase(name)) return pack;
            return nullptr;
        }
        if (!amount) return packs.size() == 1 ? packs.front() : nullptr;
        for (const auto* pack : packs)
            if (pack->amount == *amount) return pack;
        return nullptr;
    }

    /// Every row that gave a price of it is told of: none is lost without a word.
    void reject(const Told& told, Note reason) {
        for (const auto line : told.lines) m_reading.troubles.push_back({line, told.material->name, base::say(reason)});
    }

    void close(Told& told) {
        if (told.isSpoilt) return reject(told, Note::OtherRowNotTaken);
        if (told.prices.empty()) return;
        std::sort(told.prices.begin(), told.prices.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
        if (told.prices.front().from != Count::of(1)) return reject(told, Note::NoPriceOfOnePack);
        catalogue::Pack pack = told.known != nullptr ? *told.known : catalogue::Pack{};
        pack.material = told.material->id;
        pack.supplier = m_columns.supplier;
        pack.name = told.name;
        if (told.amount) pack.amount = *told.amount;
        const auto listed = told.prices.size();
        if (!m_at[static_cast<std::size_t>(ListColumn::FromPacks)] && told.known != nullptr)
            told.prices.insert(told.prices.end(), pack.prices.begin() + 1, pack.prices.end());
        pack.prices = told.prices;
        pack.pricedOn = m_context.seenOn;
        if (told.known != nullptr && pack.prices == told.known->prices && pack.amount == told.known->amount) {
            m_reading.confirmed.push_back(std::move(pack));
            return;
        }
        m_reading.changes.push_back({told.line, told.material->name, std::move(pack),
                                     told.known != nullptr ? std::optional(*told.known) : std::nullopt,
                                     told.prices.size() - listed});
    }

    const base::CsvTable& m_table;
    const catalogue::PriceListColumns& m_columns;
    const PriceListContext& m_context;
    units::NumberStyle m_style;
    std::array<std::optional<std::size_t>, kColumnKinds> m_at{};
    std::map<std::string, const Material*> m_materials;
    std::map<base::Id, std::vector<const catalogue::Pack*>> m_packs;
    std::vector<Told> m_told;
    PriceListReading m_reading;
};

} // namespace

Result<base::CsvTable> readPriceTable(std::string_view bytes, std::string_view fileName) {
    const std::string name(fileName);
    if (bytes.size() > kMaxPriceList) return base::fail(Fault::PriceListTooLarge, name, name);
    if (!units::isText(bytes)) return base::fail(Fault::NotUtf8, name, name);
    auto table = base::readCsv(bytes);
    if (!table) return base::fail(faultOf(table.error().fault), name, table.error().line, name);
    return std::move(*table);
}

Result<PriceListReading> readPriceList(const base::CsvTable& table, const catalogue::PriceListColumns& columns,
                                       const PriceListContext& context) {
    return Listing(table, columns, context).run();
}

} // namespace sp::supply
