// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace sp::layout {

/// Something that may be taken any number of times: what it costs (above 0) and how many of each kind it covers.
struct CoverColumn {
    double cost = 0;
    std::vector<std::int64_t> covers;
};

/// The linear programme: so many copies (fractions too) of the columns, at the least cost, that each kind is covered as
/// often as demanded; and the price of one more of each kind.
struct CoverPrices {
    std::vector<double> prices; ///< by kind, 0 or more
    std::vector<double> copies; ///< by column, 0 or more
};

/// Columns that cover every kind demanded are supposed to be there; a kind that none covers has price 0. By G.
/// Dantzig's simplex method on the dual; to the rounding of doubles.
CoverPrices coverPrices(const std::vector<CoverColumn>& columns, const std::vector<std::int64_t>& demands);

} // namespace sp::layout
