// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"

#include <string>
#include <vector>

namespace sp::catalogue {

/// What a column of a supplier's price list says.
enum class ListColumn {
    Material,  ///< what is sold, by the name it has in the book
    Pack,      ///< the name of the pack
    Amount,    ///< how much is in a pack
    Price,     ///< of one pack
    FromPacks, ///< from how many packs on that price holds
    Item,      ///< the supplier's own number
    Size,      ///< of a stone
    Colour     ///< of a stone
};

struct ColumnHeading {
    ListColumn column = ListColumn::Material;
    std::string heading; ///< as it stands in the first row of the list

    friend bool operator==(const ColumnHeading&, const ColumnHeading&) = default;
};

/// How one supplier's price lists are read, as the owner matched them once.
struct PriceListColumns {
    base::Id supplier;
    bool decimalComma = false;          ///< 6,94 and 1.234,50 instead of 6.94 and 1,234.50
    std::vector<ColumnHeading> columns; ///< each column at most once

    friend bool operator==(const PriceListColumns&, const PriceListColumns&) = default;
};

} // namespace sp::catalogue
