// SPDX-License-Identifier: MIT
#include "core/layout/cover_prices.h"

#include "core/layout/linear_maximum.h"

#include <utility>

namespace sp::layout {

CoverPrices coverPrices(const std::vector<CoverColumn>& columns, const std::vector<std::int64_t>& demands) {
    // The dual: most demands x prices with no column above its cost.
    std::vector<LinearRow> rows;
    rows.reserve(columns.size());
    for (const CoverColumn& column : columns)
        rows.push_back({std::vector<double>(column.covers.begin(), column.covers.end()), column.cost});
    auto most = linearMaximum(std::vector<double>(demands.begin(), demands.end()), rows);
    return {std::move(most.values), std::move(most.prices)};
}

} // namespace sp::layout
