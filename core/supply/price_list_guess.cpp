// SPDX-License-Identifier: MIT
#include "core/supply/price_list_guess.h"

#include "core/supply/list_words.h"

#include <algorithm>
#include <array>
#include <set>

namespace sp::supply {

using catalogue::ListColumn;

namespace {

constexpr std::size_t kRowsLookedAt = 200;
constexpr std::size_t kHeadLookedFor = 30;   ///< rows from the top
constexpr std::size_t kLongestHeading = 190; ///< bytes: with a number it is still a name
constexpr int kEnough = 45;                  ///< of points for a column to be taken for what it seems to be
constexpr int kLessWithin = 20;              ///< for words that are a part of the heading only

/// How lists head a column: a heading's words joined by hyphens, and how sure it makes. Common practice, no source.
struct HeadWords {
    std::string_view words;
    ListColumn meaning;
    int points;
};

constexpr std::array kHeads{
    HeadWords{"item-no", ListColumn::Item, 100},
    HeadWords{"item-number", ListColumn::Item, 100},
    HeadWords{"item-code", ListColumn::Item, 100},
    HeadWords{"article-no", ListColumn::Item, 100},
    HeadWords{"article-number", ListColumn::Item, 100},
    HeadWords{"art-no", ListColumn::Item, 100},
    HeadWords{"product-no", ListColumn::Item, 100},
    HeadWords{"product-number", ListColumn::Item, 100},
    HeadWords{"product-code", ListColumn::Item, 100},
    HeadWords{"stock-code", ListColumn::Item, 100},
    HeadWords{"stock-no", ListColumn::Item, 100},
    HeadWords{"part-no", ListColumn::Item, 100},
    HeadWords{"part-number", ListColumn::Item, 100},
    HeadWords{"order-no", ListColumn::Item, 100},
    HeadWords{"catalogue-no", ListColumn::Item, 100},
    HeadWords{"catalog-no", ListColumn::Item, 100},
    HeadWords{"cat-no", ListColumn::Item, 100},
    HeadWords{"style-no", ListColumn::Item, 90},
    HeadWords{"sku", ListColumn::Item, 100},
    HeadWords{"code", ListColumn::Item, 80},
    HeadWords{"ref", ListColumn::Item, 80},
    HeadWords{"reference", ListColumn::Item, 80},
    HeadWords{"item", ListColumn::Item, 40},
    HeadWords{"article", ListColumn::Item, 40},
    HeadWords{"no", ListColumn::Item, 40},
    HeadWords{"number", ListColumn::Item, 40},
    HeadWords{"description", ListColumn::Material, 100},
    HeadWords{"item-description", ListColumn::Material, 110},
    HeadWords{"product-description", ListColumn::Material, 110},
    HeadWords{"product-name", ListColumn::Material, 100},
    HeadWords{"item-name", ListColumn::Material, 100},
    HeadWords{"name", ListColumn::Material, 80},
    HeadWords{"product", ListColumn::Material, 70},
    HeadWords{"material", ListColumn::Material, 70},
    HeadWords{"designation", ListColumn::Material, 70},
    HeadWords{"title", ListColumn::Material, 60},
    HeadWords{"goods", ListColumn::Material, 60},
    HeadWords{"item", ListColumn::Material, 40},
    HeadWords{"article", ListColumn::Material, 40},
    HeadWords{"stone", ListColumn::Material, 40},
    HeadWords{"size", ListColumn::Size, 90},
    HeadWords{"stone-size", ListColumn::Size, 100},
    HeadWords{"ss", ListColumn::Size, 100},
    HeadWords{"colour", ListColumn::Colour, 100},
    HeadWords{"color", ListColumn::Colour, 100},
    HeadWords{"shade", ListColumn::Colour, 80},
    HeadWords{"pack", ListColumn::Pack, 100},
    HeadWords{"pack-size", ListColumn::Pack, 110},
    HeadWords{"package", ListColumn::Pack, 90},
    HeadWords{"packaging", ListColumn::Pack, 90},
    HeadWords{"packing", ListColumn::Pack, 90},
    HeadWords{"packet", ListColumn::Pack, 90},
    HeadWords{"pkt", ListColumn::Pack, 90},
    HeadWords{"bag", ListColumn::Pack, 80},
    HeadWords{"unit", ListColumn::Pack, 80},
    HeadWords{"uom", ListColumn::Pack, 90},
    HeadWords{"unit-of-measure", ListColumn::Pack, 100},
    HeadWords{"sold-by", ListColumn::Pack, 90},
    HeadWords{"sold-in", ListColumn::Pack, 90},
    HeadWords{"per", ListColumn::Pack, 70},
    HeadWords{"qty", ListColumn::Amount, 80},
    HeadWords{"quantity", ListColumn::Amount, 80},
    HeadWords{"pack-qty", ListColumn::Amount, 115},
    HeadWords{"pack-quantity", ListColumn::Amount, 115},
    HeadWords{"pieces", ListColumn::Amount, 80},
    HeadWords{"pcs", ListColumn::Amount, 80},
    HeadWords{"contents", ListColumn::Amount, 90},
    HeadWords{"holds", ListColumn::Amount, 90},
    HeadWords{"count", ListColumn::Amount, 80},
    HeadWords{"per-pack", ListColumn::Amount, 120},
    HeadWords{"per-bag", ListColumn::Amount, 120},
    HeadWords{"price", ListColumn::Price, 100},
    HeadWords{"net-price", ListColumn::Price, 125},
    HeadWords{"trade-price", ListColumn::Price, 125},
    HeadWords{"your-price", ListColumn::Price, 125},
    HeadWords{"wholesale", ListColumn::Price, 125},
    HeadWords{"pack-price", ListColumn::Price, 120},
    HeadWords{"price-per-pack", ListColumn::Price, 150},
    HeadWords{"price-per-bag", ListColumn::Price, 150},
    HeadWords{"unit-price", ListColumn::Price, 110},
    HeadWords{"net", ListColumn::Price, 80},
    HeadWords{"cost", ListColumn::Price, 80},
    HeadWords{"each", ListColumn::Price, 60},
    HeadWords{"usd", ListColumn::Price, 70},
    HeadWords{"eur", ListColumn::Price, 70},
    HeadWords{"gbp", ListColumn::Price, 70},
    HeadWords{"from", ListColumn::FromPacks, 100},
    HeadWords{"from-packs", ListColumn::FromPacks, 110},
    HeadWords{"from-qty", ListColumn::FromPacks, 110},
    HeadWords{"qty-from", ListColumn::FromPacks, 110},
    HeadWords{"break", ListColumn::FromPacks, 90},
    HeadWords{"price-break", ListColumn::FromPacks, 130},
    HeadWords{"qty-break", ListColumn::FromPacks, 110},
    HeadWords{"quantity-break", ListColumn::FromPacks, 110},
};

/// A price that is not the shop's.
constexpr std::array<std::string_view, 5> kOthersPrice{"rrp", "msrp", "retail", "vat", "old"};

/// Words of which most colours' names have one; the book's own come on top.
constexpr std::array<std::string_view, 36> kColourWords{
    "crystal", "clear", "pearl",      "silver",   "gold",   "diamond", "hematite", "jet",     "black",
    "white",   "grey",  "gray",       "rose",     "pink",   "fuchsia", "coral",    "red",     "siam",
    "orange",  "amber", "topaz",      "citrine",  "yellow", "peridot", "green",    "emerald", "turquoise",
    "aqua",    "blue",  "aquamarine", "sapphire", "lilac",  "purple",  "amethyst", "brown",   "violet"};

/// "Item No." as "item-no", "Price / pkt" as "price-pkt".
std::string hyphened(std::string_view heading) {
    std::string words;
    bool isGap = false;
    for (const char c : lowerTrimmed(heading)) {
        const bool isWord = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (!isWord && c != '#') {
            isGap = true;
            continue;
        }
        if ((isGap || c == '#') && !words.empty()) words += '-';
        isGap = c == '#';
        words += isWord ? std::string(1, c) : "no";
    }
    return words;
}

bool hasWords(const std::string& hyphened, std::string_view words) {
    return ("-" + hyphened + "-").find("-" + std::string(words) + "-") != std::string::npos;
}

int headPoints(const std::string& head, ListColumn meaning) {
    int points = 0;
    for (const auto& known : kHeads) {
        if (known.meaning != meaning || !hasWords(head, known.words)) continue;
        points = std::max(points, known.words == head ? known.points : known.points - kLessWithin);
    }
    if (meaning == ListColumn::Price)
        for (const auto other : kOthersPrice)
            if (hasWords(head, other)) points -= 60;
    return points;
}

/// The number in a cell, without a currency's sign or code: "6.95" of "$ 6.95". Empty where there is another thing.
std::string numberIn(std::string_view cell) {
    const auto first = cell.find_first_of("0123456789");
    const auto last = cell.find_last_of("0123456789");
    if (first == std::string_view::npos) return {};
    const auto number = cell.substr(first, last - first + 1);
    if (number.find_first_not_of("0123456789., '") != std::string_view::npos) return {};
    const auto around = cell.size() - number.size();
    const bool isCode = around <= 6 && cell.find_first_of("-%:/") == std::string_view::npos;
    return isCode ? std::string(number) : std::string();
}

/// Of a number: how it ends after its last mark; empty where there is none or a group of three may be meant.
struct Ending {
    char mark = 0;
    bool isDecimal = false;
};
Ending endingOf(std::string_view number) {
    const auto mark = number.find_last_of(".,");
    if (mark == std::string_view::npos) return {};
    const auto digits = number.size() - mark - 1;
    return {number[mark], digits != 3};
}

/// What stands under one heading in the first rows, as shares of the cells that hold something.
class Column {
  public:
    Column(const base::CsvTable& table, std::size_t at, const std::set<std::string>& names,
           const std::set<std::string>& colours) {
        std::set<std::string> seen;
        const auto rows = std::min(table.rows.size(), kRowsLookedAt + 1);
        for (std::size_t i = 1; i < rows; ++i) {
            const auto& cells = table.rows[i].cells;
            const auto cell = at < cells.size() ? lowerTrimmed(cells[at]) : std::string();
            if (cell.empty()) continue;
            ++m_cells;
            seen.insert(cell);
            look(cell, names, colours);
        }
        m_differ = static_cast<int>(seen.size());
    }

    int points(ListColumn meaning, const std::string& head) const {
        const int heading = headPoints(head, meaning);
        switch (meaning) {
        case ListColumn::Material: return heading + share(m_words, 20) + share(m_names, 90);
        case ListColumn::Item: return heading + share(m_codes, 25) + share(m_codes == m_cells ? m_differ : 0, 10);
        case ListColumn::Size: {
            const int sizes = share(m_sizes, 100);
            return sizes < 50 && share(m_numbers, 100) < 50 ? 0 : heading + sizes;
        }
        case ListColumn::Colour: return heading + share(m_colours, 60);
        case ListColumn::Pack: return heading + share(m_packs, 60);
        case ListColumn::Amount: return heading == 0 || share(m_amounts, 100) < 50 ? 0 : heading + share(m_amounts, 25);
        case ListColumn::FromPacks:
            return heading == 0 || share(m_wholes, 100) < 50 ? 0 : heading + share(m_wholes, 25);
        case ListColumn::Price: return share(m_numbers, 100) < 50 ? 0 : heading + share(m_decimals, 50);
        }
        return 0;
    }

    int decimalCommas() const { return m_commas; }
    int decimalPoints() const { return m_points; }

  private:
    void look(const std::string& cell, const std::set<std::string>& names, const std::set<std::string>& colours) {
        const bool hasLetter = cell.find_first_of("abcdefghijklmnopqrstuvwxyz") != std::string::npos;
        const bool hasDigit = cell.find_first_of("0123456789") != std::string::npos;
        const auto number = numberIn(cell);
        const auto ending = endingOf(number);
        m_names += names.contains(cell);
        const auto size = sizeInText(cell);
        m_sizes += size && size->rest.find_first_of("abcdefghijklnopqrstuvwxyz") == std::string::npos; // "(2.8 mm)"
        m_colours += isColour(cell, colours) && !size;
        m_words += hasLetter && cell.size() >= 3 && (cell.find(' ') != std::string::npos || !hasDigit);
        m_codes += hasDigit && cell.find(' ') == std::string::npos;
        const auto amount = packAmount(cell, {});
        m_amounts += amount.has_value();
        m_packs += amount && hasLetter;
        m_numbers += !number.empty();
        m_wholes += !number.empty() && number.size() == cell.size() && ending.mark == 0;
        m_decimals += ending.isDecimal || (!number.empty() && number.size() < cell.size() && !hasLetter);
        m_commas += ending.isDecimal && ending.mark == ',';
        m_points += ending.isDecimal && ending.mark == '.';
    }

    static bool isColour(const std::string& cell, const std::set<std::string>& colours) {
        if (colours.contains(cell)) return true;
        const auto words = hyphened(cell);
        return std::any_of(kColourWords.begin(), kColourWords.end(),
                           [&](std::string_view word) { return hasWords(words, word); });
    }

    int share(int of, int points) const { return m_cells == 0 ? 0 : of * points / m_cells; }

    int m_cells = 0;
    int m_differ = 0;
    int m_names = 0;
    int m_sizes = 0;
    int m_colours = 0;
    int m_words = 0;
    int m_codes = 0;
    int m_amounts = 0;
    int m_packs = 0;
    int m_numbers = 0;
    int m_wholes = 0;
    int m_decimals = 0;
    int m_commas = 0;
    int m_points = 0;
};

constexpr std::array kMeanings{ListColumn::Item, ListColumn::Material, ListColumn::Size,  ListColumn::Colour,
                               ListColumn::Pack, ListColumn::Amount,   ListColumn::Price, ListColumn::FromPacks};

/// How many of its cells are known headings of different meanings; 0 where none is a price's.
int headsIn(const base::CsvRow& row) {
    std::set<ListColumn> meanings;
    for (const auto& cell : row.cells) {
        const auto head = hyphened(cell);
        for (const auto meaning : kMeanings)
            if (headPoints(head, meaning) >= kEnough) meanings.insert(meaning);
    }
    return meanings.contains(ListColumn::Price) ? static_cast<int>(meanings.size()) : 0;
}

bool isPriced(const base::CsvRow& row) {
    return std::any_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
        return !numberIn(lowerTrimmed(cell)).empty() && endingOf(numberIn(lowerTrimmed(cell))).isDecimal;
    });
}

std::size_t widthOf(const base::CsvTable& table) {
    std::size_t width = 0;
    for (const auto& row : table.rows) width = std::max(width, row.cells.size());
    return width;
}

} // namespace

base::CsvTable fromHeadings(base::CsvTable table) {
    std::size_t best = 0;
    int most = 1;
    for (std::size_t i = 0; i < std::min(table.rows.size(), kHeadLookedFor); ++i)
        if (const int heads = headsIn(table.rows[i]); heads > most) {
            most = heads;
            best = i;
        }
    if (most > 1) {
        table.rows.erase(table.rows.begin(), table.rows.begin() + static_cast<std::ptrdiff_t>(best));
    } else if (!table.rows.empty() && isPriced(table.rows.front())) {
        base::CsvRow heads{table.rows.front().line, std::vector<std::string>(widthOf(table))};
        table.rows.insert(table.rows.begin(), std::move(heads));
    }
    if (!table.rows.empty() && table.rows.front().cells.size() < widthOf(table))
        table.rows.front().cells.resize(widthOf(table));
    return table;
}

std::vector<std::string> headingsOf(const base::CsvTable& table) {
    std::vector<std::string> names;
    if (table.rows.empty()) return names;
    for (const auto& cell : table.rows.front().cells) {
        std::string name = oneLine(cell);
        const auto number = "#" + std::to_string(names.size() + 1);
        if (name.empty() || name.size() > kLongestHeading) name = number;
        while (std::find(names.begin(), names.end(), name) != names.end()) name += " " + number;
        names.push_back(std::move(name));
    }
    return names;
}

catalogue::PriceListColumns guessColumns(const base::CsvTable& table, const base::Id& supplier,
                                         const std::vector<catalogue::Material>& materials) {
    std::set<std::string> names;
    std::set<std::string> colours;
    for (const auto& material : materials) {
        names.insert(lowerTrimmed(material.name));
        if (material.kind == catalogue::MaterialKind::Stone) colours.insert(lowerTrimmed(material.stone.colour));
    }
    struct Bid {
        int points;
        std::size_t column;
        ListColumn meaning;
    };
    const auto headings = headingsOf(table);
    std::vector<Column> seen;
    std::vector<Bid> bids;
    for (std::size_t at = 0; at < headings.size(); ++at) {
        const auto& column = seen.emplace_back(table, at, names, colours);
        const auto head = hyphened(table.rows.front().cells[at]);
        for (const auto meaning : kMeanings)
            if (const int points = column.points(meaning, head); points >= kEnough)
                bids.push_back({points, at, meaning});
    }
    std::stable_sort(bids.begin(), bids.end(), [](const Bid& a, const Bid& b) { return a.points > b.points; });
    catalogue::PriceListColumns columns;
    columns.supplier = supplier;
    std::set<std::size_t> taken;
    std::set<ListColumn> known;
    for (const auto& bid : bids) {
        if (taken.contains(bid.column) || known.contains(bid.meaning)) continue;
        taken.insert(bid.column);
        known.insert(bid.meaning);
        columns.columns.push_back({bid.meaning, headings[bid.column]});
        if (bid.meaning == ListColumn::Price)
            columns.decimalComma = seen[bid.column].decimalCommas() > seen[bid.column].decimalPoints();
    }
    std::stable_sort(columns.columns.begin(), columns.columns.end(),
                     [](const auto& a, const auto& b) { return a.column < b.column; });
    return columns;
}

bool hasColumns(const base::CsvTable& table, const catalogue::PriceListColumns& columns) {
    const auto headings = headingsOf(table);
    return std::all_of(columns.columns.begin(), columns.columns.end(), [&](const catalogue::ColumnHeading& column) {
        return std::find(headings.begin(), headings.end(), column.heading) != headings.end();
    });
}

} // namespace sp::supply
