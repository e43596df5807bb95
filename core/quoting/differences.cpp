// SPDX-License-Identifier: MIT
#include "core/quoting/differences.h"

#include "core/quoting/line_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace sp::quoting {

namespace {

using catalogue::Choice;
using catalogue::OrderLine;

/// What may differ between two lines that are called alike, each as it is read; empty where there is nothing to say.
using Traits = std::array<std::string, 6>;

class Teller {
  public:
    Teller(const catalogue::Order& order, const catalogue::PriceBook& book, const SheetWords& words)
        : m_choices(catalogue::choicesOf(order))
        , m_book(book)
        , m_words(words)
        , m_lineWords(book, words)
        , m_told(m_choices.size()) {}

    std::vector<std::string> tell() {
        std::size_t most = 0;
        for (const auto& choice : m_choices) most = std::max(most, choice.lines.size());
        for (std::size_t i = 0; i < most; ++i) tellLine(i, most > 1);
        tellDiscounts();
        for (std::size_t i = 0; i < m_choices.size(); ++i)
            if (!m_choices[i].title.empty()) m_told[i] = m_choices[i].title;
        return std::move(m_told);
    }

  private:
    void add(std::size_t choice, const std::string& what) {
        if (what.empty()) return;
        auto& told = m_told[choice];
        told += (told.empty() ? "" : ", ") + what;
    }

    const OrderLine* lineAt(std::size_t choice, std::size_t number) const {
        const auto& lines = m_choices[choice].lines;
        return number < lines.size() ? &lines[number] : nullptr;
    }

    void tellLine(std::size_t number, bool isNamed) {
        std::set<std::string> titles;
        bool isEverywhere = true;
        for (std::size_t i = 0; i < m_choices.size(); ++i) {
            const auto* line = lineAt(i, number);
            isEverywhere = isEverywhere && line;
            if (line) titles.insert(line->title);
        }
        if (isEverywhere && titles.size() == 1) return tellTraits(number, isNamed);
        for (std::size_t i = 0; i < m_choices.size(); ++i)
            if (const auto* line = lineAt(i, number))
                add(i, fmt::format("{} × {}", units::formatCount(line->quantity, m_words.numbers()), line->title));
    }

    void tellTraits(std::size_t number, bool isNamed) {
        std::vector<Traits> all;
        for (std::size_t i = 0; i < m_choices.size(); ++i) all.push_back(traitsOf(*lineAt(i, number)));
        bool isColourTold = false;
        for (std::size_t trait = 0; trait < Traits().size(); ++trait) {
            const bool differs =
                std::ranges::any_of(all, [&](const Traits& one) { return one[trait] != all.front()[trait]; });
            // How many colours there are says enough, and which they are how many stones they have.
            if (!differs || (isColourTold && trait > kColours)) continue;
            isColourTold = isColourTold || trait >= kColours;
            for (std::size_t i = 0; i < all.size(); ++i) {
                add(i, isNamed && !all[i][trait].empty()
                           ? fmt::format("{}: {}", lineAt(i, number)->title, all[i][trait])
                           : all[i][trait]);
            }
            isNamed = false; // once is enough
        }
    }

    static constexpr std::size_t kColours = 3;

    Traits traitsOf(const OrderLine& line) const {
        Traits traits;
        traits[0] = m_words.pieces(line.quantity, units::formatCount(line.quantity, m_words.numbers()));
        const auto base = m_lineWords.baseOf(line);
        traits[1] = line.customersGarment || base.empty() ? base : m_words.on(base);
        std::set<std::string> colours;
        units::Count stones;
        std::string names;
        for (std::size_t i = 0; i < line.places.size(); ++i) {
            const auto& place = line.places[i];
            for (const auto& colour : m_lineWords.coloursOf(place)) colours.insert(colour.name);
            for (const auto& stone : place.stones) stones += stone.count;
            const auto& title = place.title.empty() ? line.title : place.title;
            const auto& name = place.place.empty() ? title : place.place;
            if (line.places.size() > 1) names += (i == 0 ? "" : " + ") + name;
        }
        traits[2] = names.empty() && !line.isCharge() ? m_lineWords.sizeOf(line.first()) : names;
        if (line.isCharge()) return traits;
        traits[kColours] = m_words.inColours(static_cast<std::int64_t>(colours.size()));
        traits[4] = fmt::format("{}", fmt::join(colours, ", "));
        traits[5] = m_words.stones(stones, units::formatCount(stones, m_words.numbers()));
        return traits;
    }

    void tellDiscounts() {
        const bool differs = std::ranges::any_of(
            m_choices, [&](const Choice& choice) { return choice.discount != m_choices.front().discount; });
        if (!differs) return;
        const auto& style = m_words.numbers();
        for (std::size_t i = 0; i < m_choices.size(); ++i) {
            const auto& discount = m_choices[i].discount;
            if (discount.share) add(i, m_words.discount(units::formatRate(*discount.share, style) + " %"));
            if (discount.amount)
                add(i, fmt::format("{} {}", m_words.discount({}),
                                   units::formatMoney(*discount.amount, m_book.shop.currency, style)));
        }
    }

    std::vector<Choice> m_choices;
    const catalogue::PriceBook& m_book;
    const SheetWords& m_words;
    LineWords m_lineWords;
    std::vector<std::string> m_told;
};

} // namespace

std::vector<std::string> differencesOf(const catalogue::Order& order, const catalogue::PriceBook& book,
                                       const SheetWords& words) {
    return Teller(order, book, words).tell();
}

} // namespace sp::quoting
