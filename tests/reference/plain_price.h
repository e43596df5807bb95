// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"
#include "core/pricing/price_order.h"

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace sp::reference {

/// What a line costs, in micro-units: each part reckoned from its formula alone, in whole numbers, divided once and
/// rounded half to even. Written from the formulas of the headers of core/catalogue and core/costing, without their
/// code; only how many rectangles fit is asked of the layout.
struct PlainCost {
    std::map<std::pair<costing::Part, std::size_t>, std::int64_t> parts; ///< those without parts of their own
    std::int64_t total = 0;
    std::int64_t setUp = 0;
    std::int64_t floor = 0;
    std::int64_t labour = 0;
    std::int64_t cycles = 0;
    std::int64_t milliseconds = 0; ///< at the bench
    // Of pieces that will be spoiled, until they are packed.
    std::int64_t spoiledLabour = 0;
    std::int64_t spoiledMilliseconds = 0;
};

/// A set of templates that is paid off over planned pieces, in micro-units and pieces.
struct PlainSet {
    std::int64_t planned = 0; ///< 0: it is paid by the job
    std::int64_t carried = 0;
    std::int64_t ofPieces = 0;
    std::int64_t templates = 0;
    std::int64_t work = 0;
    bool holdsWork = false;
};

/// What a line bears of its order's own costs, in micro-units.
struct PlainShare {
    std::int64_t cardFixed = 0;
    std::int64_t packing = 0;
    std::int64_t freight = 0;
    std::int64_t setPieces = 0; ///< that share its set of templates; 0: its own alone
    std::int64_t counted = 0;   ///< that say on which step of the mark-ups it is
    std::int64_t warmUp = -1;   ///< below 0: it warms up the press by itself, and tests it
    std::int64_t tests = 0;
    std::int64_t testWear = 0;
    bool isOfOrder = false; ///< then `set` says how planned pieces are paid for
    PlainSet set = {};
    std::map<base::Id, std::int64_t> prices = {}; ///< of a pack of what the order takes; of others that of one pack
};

/// The line must be one that costing takes.
PlainCost plainCost(const catalogue::OrderLine& line, const catalogue::PriceBook& book, layout::FitMemo& fits,
                    const PlainShare& share);

struct PlainLine {
    PlainCost cost;
    std::int64_t each = 0;
    std::int64_t goods = 0;
    std::int64_t sizes = 0;
    std::int64_t places = 0;
    std::int64_t setUp = 0;
    std::int64_t charged = 0;
    std::int64_t tax = 0;  ///< on it, or in it
    std::int64_t paid = 0; ///< with its share of rush, discount and minimum
    std::int64_t net = 0;  ///< of that, without the tax it holds
    std::int64_t cardFee = 0;
    std::int64_t floor = 0;
    std::int64_t perHour = 0;
    pricing::PriceCoverage coverage = pricing::PriceCoverage::Pays;
};

/// A priced order, in micro-units, likewise.
struct PlainOrder {
    std::vector<PlainLine> lines;
    std::int64_t goods = 0;
    std::int64_t rush = 0;
    std::int64_t discount = 0;
    std::int64_t minimumOrderCharge = 0;
    std::int64_t subtotal = 0;
    std::int64_t tax = 0;
    std::int64_t total = 0;
    std::int64_t deposit = 0;
    std::int64_t net = 0;
    std::int64_t cardFee = 0;
    std::int64_t cost = 0;
    std::int64_t perHour = 0;
    pricing::PriceCoverage coverage = pricing::PriceCoverage::Pays;
};

/// The order must be one that pricing takes, in a currency of two decimals.
PlainOrder plainPrice(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits);

} // namespace sp::reference
