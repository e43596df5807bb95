// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/price_list_csv.h"

#include <deque>
#include <unordered_map>
#include <unordered_set>
#include <variant>

namespace sp::supply {

/// What a row of a list says, as it stands there without the spaces at its ends.
struct SaidRow {
    std::size_t line = 0;
    std::string item;
    std::string name;
    std::string size;
    std::string colour;
    std::string pack;
    std::string amount;
    std::string price;
    std::string from;

    /// Item number, colour, size and name in one line.
    std::string inOne() const;
};

/// Finds what the rows of a list are in the book.
class PriceListFinder {
  public:
    PriceListFinder(const std::vector<SaidRow>& rows, const base::Id& supplier, const PriceListContext& context);

    /// The material of a row, or why there is none. One that is made is owned here.
    using Found = std::variant<const catalogue::Material*, base::Message>;
    Found find(const SaidRow& row);
    /// The row's item number where it tells one thing from others; else empty.
    std::string itemOf(const SaidRow& row) const;

    /// In the order in which they were missed.
    const std::deque<catalogue::Material>& missing() const { return m_missing; }

  private:
    const catalogue::Material* named(const std::string& name) const;
    const catalogue::Material* byItem(const SaidRow& row) const;
    /// Null for none; a message where there are several.
    Found byColour(const std::string& colour, std::string_view size, const std::string& name) const;
    Found missed(const std::string& colour, std::string_view size);

    const PriceListContext& m_context;
    std::unordered_map<std::string, const catalogue::Material*> m_named;
    std::unordered_map<std::string, std::vector<const catalogue::Material*>> m_stones; ///< by colour and size
    std::unordered_map<base::Id, const catalogue::Material*> m_byId;
    std::unordered_map<std::string, const catalogue::Material*> m_items; ///< null where it is of several
    std::unordered_set<std::string> m_vague; ///< item numbers that stand beside different things
    std::unordered_map<std::string, const catalogue::Material*> m_missed;
    std::deque<catalogue::Material> m_missing;
};

} // namespace sp::supply
