// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/costing/cost_sheet.h"
#include "core/supply/cheaper_packs.h"
#include "core/units/text.h"

#include <string>
#include <vector>

namespace sp::words {

/// A node of the cost sheet in words, with its children: what the owner opens.
struct CostTree {
    costing::Part part = costing::Part::Job;
    std::string label;    ///< "Aquamarine SS10"
    units::Money amount;  ///< for the whole job, exactly the sum of the children where there are any
    std::string rule;     ///< how it is made, with its numbers: "212 a piece × 24 ÷ (1 − 2 % loss) × 9.99 / 1,440"
    std::size_t node = 0; ///< its place among the sheet's nodes
    std::vector<CostTree> children;
};

/// Puts a cost sheet into the words of the language that the program runs in. `line` and `book` must be those that the
/// sheet was made from. Every figure of a rule is an operand of the node's formula, but for two that say more of a
/// price: the packs it is for, and packs that would cost less, among them `offers` where they are those of the book.
CostTree explain(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const costing::CostSheet& sheet,
                 const units::NumberStyle& style = {}, const supply::PackOffers* offers = nullptr);

} // namespace sp::words
