// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/catalogue/material.h"
#include "core/catalogue/price_list.h"
#include "core/supply/messages.h"
#include "core/units/currency.h"

#include <cstddef>
#include <cstdint>
#include <functional>
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
};

/// A row that was not taken.
struct PriceListTrouble {
    std::size_t line = 0;
    std::string name; ///< what its material is called in the list; may be empty
    base::Message reason;
};

struct PriceListReading {
    std::vector<PriceListChange> changes;   ///< in the order of the list
    std::vector<catalogue::Pack> confirmed; ///< whose prices are as they were, with the new day
    std::vector<PriceListTrouble> troubles; ///< by line
};

/// What the book knows that a list is held against.
struct PriceListContext {
    const std::vector<catalogue::Material>& materials;
    const std::vector<catalogue::Pack>& packs; ///< of all suppliers
    units::Currency currency;
    units::Date seenOn; ///< becomes the day of every price in the list
    /// What a new pack is called that the list only says the contents of: "pack of 1,440", in the reader's language.
    std::function<std::string(units::Count contents)> packCalled;
};

inline constexpr std::size_t kMaxPriceList = 8'000'000; ///< bytes

/// The rows of a price list. Errors: Invalid for what is not UTF-8, for a quote that is not closed and for text after
/// one that is, with the line; TooLarge beyond the bounds here and in core/base/csv.h. Sentences name `fileName`.
base::Result<base::CsvTable> readPriceTable(std::string_view bytes, std::string_view fileName);

/// Reads a supplier's price list, its first row being headings. A row is a price of one pack: the material by its name
/// in the book (letter case of ASCII ignored), the pack by its name where the list has one, else by what it holds, else
/// the only one that supplier has of that material. Rows of one pack that differ in "from packs" are its price breaks;
/// a list that has no such column leaves the further breaks of a pack as they are. Rows that cannot be read are
/// reported with the other rows of their pack, which is left alone; nothing in the book is removed for not being in the
/// list. Errors: Missing without a column for the material or the price, or when a heading is not there.
base::Result<PriceListReading> readPriceList(const base::CsvTable& table, const catalogue::PriceListColumns& columns,
                                             const PriceListContext& context);

} // namespace sp::supply
