// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/catalogue/material.h"
#include "core/catalogue/price_list.h"
#include "core/supply/messages.h"
#include "core/units/currency.h"
#include "core/units/encodings.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::supply {

/// A pack that the list makes or changes.
struct PriceListChange {
    std::size_t line = 0;                  ///< of its first row
    std::string material;                  ///< its name in the book
    catalogue::Pack pack;                  ///< as it will be; id none: a new pack
    std::optional<catalogue::Pack> before; ///< as it is; none: a new pack
    std::size_t kept = 0;                  ///< so many of the last prices are not in the list and stay as they are
    std::optional<std::size_t> made = {};  ///< which of the stones that are made it is a pack of; its material is none
    std::string said = {};                 ///< what the list says of it, see PriceListTrouble
    std::vector<std::size_t> lines = {};   ///< of the rows that say it
};

/// A row that was not taken.
struct PriceListTrouble {
    std::size_t line = 0;
    std::string name; ///< item number, colour, size and name as the list has them; may be empty
    base::Message reason;
};

struct PriceListReading {
    std::vector<PriceListChange> changes;   ///< in the order of the list
    std::vector<catalogue::Pack> confirmed; ///< whose prices are as they were, with the new day
    std::vector<PriceListTrouble> troubles; ///< by line
    /// Stones that the list names by colour and size and the book lacks: to be made, or how many could be.
    std::vector<catalogue::Material> made;
    std::size_t missing = 0;
};

/// What the book knows that a list is held against.
struct PriceListContext {
    const std::vector<catalogue::Material>& materials;
    const std::vector<catalogue::Pack>& packs; ///< of all suppliers
    units::Currency currency;
    units::Date seenOn; ///< becomes the day of every price in the list
    /// What a new pack is called that the list only says the contents of: "pack of 1,440", in the reader's language.
    std::function<std::string(units::Count contents)> packCalled;
    /// What a person said that a line of the file is.
    std::map<std::size_t, base::Id> matched = {};
    /// Whether stones that are missing are made, and how one of that colour is drawn.
    bool makesMissing = false;
    std::function<std::uint32_t(std::string_view colour)> drawnAs = {};
    /// Told now and then how many rows have been read; false ends the reading, whose answer is then of no use.
    std::function<bool(std::size_t rows)> goesOn = {};
};

inline constexpr std::size_t kMaxPriceList = 32'000'000; ///< bytes

struct PriceTable {
    base::CsvTable table;
    units::Encoding encoding = units::Encoding::Utf8;
};

/// The rows of a price list, in any encoding that core/units/encodings.h reads. Errors: Invalid for what is no text,
/// for a quote that is not closed and for text after one that is, with the line; TooLarge beyond the bounds here and in
/// core/base/csv.h. Sentences name `fileName`.
base::Result<PriceTable> readPriceTable(std::string_view bytes, std::string_view fileName);

/// Reads a supplier's price list, its first row being headings (as headingsOf has them). A row is a price of one pack.
/// Its material is what a person said of the line, else the one of the packs of this supplier that have its item
/// number, else the stone of that colour and size, else the one of that name, else the stone of the colour and size
/// that the name says (letter case of ASCII ignored). An item number that stands beside different things in the list
/// is none. Its pack is the one of that item number, or of that name, or that holds as much, else the only one that
/// supplier has of that material where the list says neither; what it holds is said in a column of its own or in
/// the pack's name. Rows of one pack that differ in "from packs" are its price breaks; a list that has no such column
/// leaves the further breaks of a pack as they are. Packs learn their item number. Rows that cannot be read are
/// reported with the other rows of their pack, which is left alone; nothing in the book is removed for not being in the
/// list. Errors: Missing without a column for the price, or without one by which materials are found, or when a
/// heading is not there.
base::Result<PriceListReading> readPriceList(const base::CsvTable& table, const catalogue::PriceListColumns& columns,
                                             const PriceListContext& context);

} // namespace sp::supply
