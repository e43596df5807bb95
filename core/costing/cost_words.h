// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/costing/cost_sheet.h"
#include "core/units/text.h"

#include <string>
#include <vector>

namespace sp::costing {

/// A node of the cost sheet in words, with its children: what the owner opens.
struct CostTree {
    Part part = Part::Job;
    std::string label;   ///< "Aquamarine SS10"
    units::Money amount; ///< for the whole job, exactly the sum of the children where there are any
    std::string rule;    ///< how it is made, with its numbers: "212 a piece × 24 ÷ (1 − 2 % loss) × 9.99 / 1,440"
    std::vector<CostTree> children;
};

/// Puts a cost sheet into words. `line` and `book` must be those that the sheet was made from.
CostTree explain(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const CostSheet& sheet,
                 const units::NumberStyle& style = {});

} // namespace sp::costing
