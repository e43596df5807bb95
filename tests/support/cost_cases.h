// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/rules_version.h"
#include "core/costing/cost_sheet.h"

#include <string>
#include <vector>

namespace sp::sample {

/// A line with all that its cost is made of.
struct CostCase {
    std::string name;
    catalogue::OrderLine line;
    catalogue::PriceBook book;
    costing::OrderShare share = {};
    std::int64_t rules = catalogue::kRulesVersion; ///< by which it is costed
};

/// Lines that together take every shape of every part of the cost sheet: sheets and rolls, whole and by position, one
/// and many lifts, blanks with sizes, the customer's own garment, templates on the wall and spread over planned pieces,
/// learning, times for a press cycle, pieces larger than the platen, card fees of rules 2, a shop that charges next to
/// nothing, another currency and unit.
std::vector<CostCase> costCases();

} // namespace sp::sample
