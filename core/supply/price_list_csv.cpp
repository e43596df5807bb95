// SPDX-License-Identifier: MIT
#include "core/supply/price_list_csv.h"

#include "core/supply/list_words.h"
#include "core/supply/messages.h"
#include "core/supply/price_list_finder.h"
#include "core/supply/price_list_guess.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <deque>
#include <set>
#include <unordered_map>

namespace sp::supply {

using base::Result;
using catalogue::ListColumn;
using catalogue::Material;
using units::Count;

namespace {

constexpr std::size_t kColumnKinds = 8;
constexpr std::size_t kMaxListNameLength = 200; ///< bytes of a pack's name and of an item number, as the book takes
constexpr std::size_t kRowsATime = 500;         ///< between two looks whether to go on

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

/// Two things told by the list as one key.
std::string pairOf(const base::Id& material, std::string_view second) {
    return material.text().append(" ").append(second);
}

/// A pack as the list tells it, row by row.
struct Told {
    std::size_t line = 0;
    const Material* material = nullptr;
    const catalogue::Pack* known = nullptr;
    std::string name;
    std::optional<Count> amount;
    std::string item;
    std::string said;
    std::vector<catalogue::PriceBreak> prices;
    std::vector<std::size_t> lines; ///< of the rows that gave them
    bool isSpoilt = false;          ///< one of its rows was not taken
};

/// A row whose material is known.
struct PackRow {
    const SaidRow* said = nullptr;
    const Material* material = nullptr;
    std::optional<Count> amount; ///< in its own column, else in the pack's name
    bool isCounted = false;      ///< in its own column
};

class Listing {
  public:
    Listing(const base::CsvTable& table, const catalogue::PriceListColumns& columns, const PriceListContext& context)
        : m_table(table)
        , m_columns(columns)
        , m_context(context) {
        if (columns.decimalComma) m_style = {U',', U'.'};
        for (const auto& pack : context.packs)
            if (pack.supplier == columns.supplier) m_packs[pack.material].push_back(&pack);
    }

    Result<PriceListReading> run() {
        if (auto found = findColumns(); !found) return base::fail(found.error());
        m_rows.reserve(m_table.rows.size());
        for (std::size_t i = 1; i < m_table.rows.size(); ++i) m_rows.push_back(said(m_table.rows[i]));
        PriceListFinder finder(m_rows, m_columns.supplier, m_context);
        m_finder = &finder;
        for (std::size_t i = 0; i < m_rows.size(); ++i) {
            if (!goesOn(i, i)) return std::move(m_reading);
            placeRow(m_rows[i]);
        }
        for (const auto& row : m_packRows) learnNames(row);
        for (std::size_t i = 0; i < m_packRows.size(); ++i) {
            if (!goesOn(i, m_rows.size() + i)) return std::move(m_reading);
            take(m_packRows[i]);
        }
        for (auto& told : m_told) close(told);
        std::stable_sort(m_reading.troubles.begin(), m_reading.troubles.end(),
                         [](const auto& a, const auto& b) { return a.line < b.line; });
        if (!m_context.makesMissing) m_reading.missing = finder.missing().size();
        return std::move(m_reading);
    }

  private:
    /// Every row is gone through twice.
    bool goesOn(std::size_t row, std::size_t done) const {
        return row % kRowsATime != 0 || !m_context.goesOn || m_context.goesOn(done / 2);
    }

    base::Done findColumns() {
        const auto headings = headingsOf(m_table);
        for (const auto& column : m_columns.columns) {
            if (m_table.rows.empty()) break;
            const auto found = std::find(headings.begin(), headings.end(), oneLine(column.heading));
            if (found == headings.end()) return base::fail(Fault::NoSuchColumn, column.heading, column.heading);
            m_at[static_cast<std::size_t>(column.column)] = static_cast<std::size_t>(found - headings.begin());
        }
        const bool isByColour = has(ListColumn::Colour) && has(ListColumn::Size);
        if (!has(ListColumn::Material) && !has(ListColumn::Item) && !isByColour)
            return base::fail(Fault::NoMaterialColumn, {});
        if (!has(ListColumn::Price)) return base::fail(Fault::NoPriceColumn, {});
        return {};
    }

    bool has(ListColumn column) const { return m_at[static_cast<std::size_t>(column)].has_value(); }

    std::string cell(const base::CsvRow& row, ListColumn column) const {
        const auto& at = m_at[static_cast<std::size_t>(column)];
        return at && *at < row.cells.size() ? oneLine(row.cells[*at]) : std::string();
    }

    SaidRow said(const base::CsvRow& row) const {
        SaidRow said{row.line,
                     cell(row, ListColumn::Item),
                     cell(row, ListColumn::Material),
                     cell(row, ListColumn::Size),
                     cell(row, ListColumn::Colour),
                     cell(row, ListColumn::Pack),
                     cell(row, ListColumn::Amount),
                     cell(row, ListColumn::Price),
                     cell(row, ListColumn::FromPacks)};
        if (said.item.size() > kMaxListNameLength) said.item.clear();
        return said;
    }

    void trouble(const SaidRow& row, base::Message reason) {
        m_reading.troubles.push_back({row.line, row.inOne(), std::move(reason)});
    }

    /// Finds what a row is of, and how much is in its pack.
    void placeRow(const SaidRow& row) {
        auto found = m_finder->find(row);
        if (auto* reason = std::get_if<base::Message>(&found)) return trouble(row, std::move(*reason));
        PackRow placed{&row, std::get<const Material*>(found), std::nullopt, false};
        if (!row.amount.empty()) {
            placed.amount = packAmount(row.amount, m_style);
            placed.isCounted = true;
            if (!placed.amount) return trouble(row, base::say(Note::PackNotRead, row.amount));
        } else if (!row.pack.empty()) {
            placed.amount = packAmount(row.pack, m_style);
        }
        if (placed.amount && placed.amount->value() < 1) return trouble(row, base::say(Note::EmptyPack));
        if (row.pack.size() > kMaxListNameLength) return trouble(row, base::say(Note::PackNameTooLong));
        m_packRows.push_back(placed);
    }

    /// Whether the list tells packs apart by more than what they hold.
    void learnNames(const PackRow& row) {
        if (!row.amount) return;
        const auto key = pairOf(row.material->id, std::to_string(row.amount->value()));
        if (!row.material->id.isNone()) m_names[key].insert(lowerTrimmed(row.said->pack));
        if (const auto item = m_finder->itemOf(*row.said); !item.empty())
            m_amounts[lowerTrimmed(item)].insert(row.amount->value());
    }

    void take(const PackRow& row) {
        Told* told = packOf(row);
        if (told == nullptr) return;
        const auto problem = takePrice(*row.said, *told);
        if (!problem) return;
        told->isSpoilt = true;
        trouble(*row.said, *problem);
    }

    std::optional<base::Message> takePrice(const SaidRow& row, Told& told) {
        const auto price = units::parseMoney(row.price, m_context.currency, m_style);
        if (!price) return price.error().message();
        if (price->micros() <= 0) return base::say(Note::PriceNotAboveNothing);
        Count from = Count::of(1);
        if (!row.from.empty()) {
            const auto count = units::parseCount(row.from, m_style);
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
    Told* packOf(const PackRow& row) {
        const auto* known = knownPack(row);
        if (known == nullptr && !row.amount) {
            trouble(*row.said, row.said->pack.empty() ? base::say(Note::UnknownPack)
                                                      : base::say(Note::PackNotRead, row.said->pack));
            return nullptr;
        }
        const auto called = calledNow(row, known);
        // What the book's pack holds is said anew by a column of its own alone.
        const bool isNamed = known != nullptr && lowerTrimmed(known->name) == lowerTrimmed(row.said->pack);
        const auto amount = isNamed && !row.isCounted ? std::nullopt : row.amount;
        const auto& of = *row.material;
        const auto key = known != nullptr ? known->id.text()
                                          : (of.id.isNone() ? of.name : of.id.text()) + " " + lowerTrimmed(called);
        const auto [at, isNew] = m_toldAt.emplace(key, m_told.size());
        if (!isNew) {
            auto& told = m_told[at->second];
            if (!told.amount || !amount || *told.amount == *amount) return &told;
            told.isSpoilt = true;
            trouble(*row.said, base::say(Note::TwoContents));
            return nullptr;
        }
        return &m_told.emplace_back(Told{row.said->line,
                                         row.material,
                                         known,
                                         called,
                                         amount,
                                         m_finder->itemOf(*row.said),
                                         row.said->inOne(),
                                         {},
                                         {},
                                         false});
    }

    /// What the pack is called from now on: one that holds another amount takes the list's name for it.
    std::string calledNow(const PackRow& row, const catalogue::Pack* known) const {
        if (known != nullptr && (!row.amount || *row.amount == known->amount)) return known->name;
        const auto& said = row.said->pack;
        if (known != nullptr && lowerTrimmed(known->name) == lowerTrimmed(said)) return known->name;
        const bool isOnlyANumber = said.find_first_not_of("0123456789., ") == std::string::npos;
        const auto called = isOnlyANumber ? m_context.packCalled(*row.amount) : said;
        if (known == nullptr) return called;
        const auto& packs = m_packs.at(row.material->id);
        const bool isTaken = std::any_of(packs.begin(), packs.end(), [&](const catalogue::Pack* pack) {
            return lowerTrimmed(pack->name) == lowerTrimmed(called);
        });
        return isTaken ? known->name : called;
    }

    const catalogue::Pack* knownPack(const PackRow& row) const {
        const auto found = m_packs.find(row.material->id);
        if (found == m_packs.end()) return nullptr;
        const auto& packs = found->second;
        const auto ofItem = packsOfItem(row, packs);
        for (const auto* pack : ofItem)
            if (row.amount && pack->amount == *row.amount) return pack;
        const auto& name = row.said->pack;
        for (const auto* pack : packs)
            if (!name.empty() && lowerTrimmed(pack->name) == lowerTrimmed(name)) return pack;
        if (ofItem.size() == 1 && !isOfSeveralPacks(row)) return ofItem.front();
        if (!row.amount) return name.empty() && packs.size() == 1 ? packs.front() : nullptr;
        // Packs that hold as much and are called otherwise are another if the list has several such itself.
        const auto names = m_names.find(pairOf(row.material->id, std::to_string(row.amount->value())));
        if (names != m_names.end() && names->second.size() > 1) return nullptr;
        for (const auto* pack : packs)
            if (pack->amount == *row.amount) return pack;
        return nullptr;
    }

    std::vector<const catalogue::Pack*> packsOfItem(const PackRow& row,
                                                    const std::vector<const catalogue::Pack*>& packs) const {
        const auto item = lowerTrimmed(m_finder->itemOf(*row.said));
        std::vector<const catalogue::Pack*> ofItem;
        for (const auto* pack : packs)
            if (!item.empty() && lowerTrimmed(pack->item) == item) ofItem.push_back(pack);
        return ofItem;
    }

    /// Whether the list has packs of different contents under the row's item number.
    bool isOfSeveralPacks(const PackRow& row) const {
        const auto amounts = m_amounts.find(lowerTrimmed(m_finder->itemOf(*row.said)));
        return amounts != m_amounts.end() && amounts->second.size() > 1;
    }

    /// Every row that gave a price of it is told of: none is lost without a word.
    void reject(const Told& told, Note reason) {
        for (const auto line : told.lines) m_reading.troubles.push_back({line, told.said, base::say(reason)});
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
        if (!told.item.empty()) pack.item = told.item;
        const auto listed = told.prices.size();
        if (!has(ListColumn::FromPacks) && told.known != nullptr)
            told.prices.insert(told.prices.end(), pack.prices.begin() + 1, pack.prices.end());
        pack.prices = told.prices;
        pack.pricedOn = m_context.seenOn;
        if (told.known != nullptr && pack.prices == told.known->prices && pack.amount == told.known->amount) {
            m_reading.confirmed.push_back(std::move(pack));
            return;
        }
        m_reading.changes.push_back({told.line, told.material->name, std::move(pack),
                                     told.known != nullptr ? std::optional(*told.known) : std::nullopt,
                                     told.prices.size() - listed, madeOf(*told.material), told.said, told.lines});
    }

    /// Of a stone that is made for the list: its place among those that are. Only what has a pack is made.
    std::optional<std::size_t> madeOf(const Material& material) {
        if (!material.id.isNone()) return std::nullopt;
        const auto [at, isNew] = m_madeAt.emplace(&material, m_reading.made.size());
        if (isNew) m_reading.made.push_back(material);
        return at->second;
    }

    const base::CsvTable& m_table;
    const catalogue::PriceListColumns& m_columns;
    const PriceListContext& m_context;
    units::NumberStyle m_style;
    std::array<std::optional<std::size_t>, kColumnKinds> m_at{};
    std::unordered_map<base::Id, std::vector<const catalogue::Pack*>> m_packs;
    std::vector<SaidRow> m_rows;
    PriceListFinder* m_finder = nullptr;
    std::vector<PackRow> m_packRows;
    std::unordered_map<std::string, std::set<std::string>> m_names;    ///< of packs, by material and what they hold
    std::unordered_map<std::string, std::set<std::int64_t>> m_amounts; ///< of packs, by item number
    std::deque<Told> m_told;
    std::unordered_map<std::string, std::size_t> m_toldAt;
    std::unordered_map<const Material*, std::size_t> m_madeAt;
    PriceListReading m_reading;
};

} // namespace

Result<PriceTable> readPriceTable(std::string_view bytes, std::string_view fileName) {
    const std::string name(fileName);
    if (bytes.size() > kMaxPriceList) return base::fail(Fault::PriceListTooLarge, name, name);
    const auto text = units::readEncoded(bytes);
    if (!text) return base::fail(Fault::ListIsNoText, name, name);
    auto table = base::readCsv(text->utf8);
    if (!table) return base::fail(faultOf(table.error().fault), name, table.error().line, name);
    return PriceTable{std::move(*table), text->encoding};
}

Result<PriceListReading> readPriceList(const base::CsvTable& table, const catalogue::PriceListColumns& columns,
                                       const PriceListContext& context) {
    return Listing(table, columns, context).run();
}

} // namespace sp::supply
