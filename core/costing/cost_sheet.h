// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/formula.h"
#include "core/needs/bench_time.h"
#include "core/needs/order_prices.h"
#include "core/needs/requirements.h"
#include "core/units/count.h"
#include "core/units/money.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace sp::costing {

/// A figure of the cost sheet, for the whole job. A node's children follow it, one level deeper.
struct CostNode {
    Part part = Part::Job;
    std::uint8_t depth = 0;
    std::uint16_t index = 0;
    units::Money amount;
    Formula formula = {}; ///< the amount by its operands, to be put into words or checked

    friend bool operator==(const CostNode&, const CostNode&) = default;
};

/// How the set of a place is paid off over its planned pieces.
struct SetShare {
    units::Count planned;    ///< pieces over which it is; 0: it is paid by the job, and nothing else here counts
    units::Count sold;       ///< of them, before this order
    units::Count carried;    ///< of the order's, that bear a share each: what is left at the most
    units::Count ofPieces;   ///< of the order, with the design
    catalogue::SetCost cost; ///< of the whole set
    bool isKept = false;     ///< it is what it was when the set was cut; else what it would be today
    bool holdsWork = false;  ///< art and cutting are in it, and no work of this line

    friend bool operator==(const SetShare&, const SetShare&) = default;
};

/// What a line bears of what the press does once for its whole order.
struct PressShare {
    units::Money warmUp;
    units::Money tests;    ///< running the test presses
    units::Money testWear; ///< what they wear

    friend bool operator==(const PressShare&, const PressShare&) = default;
};

/// What a line bears of what is paid once for its whole order.
struct OrderShare {
    units::Money cardFixed; ///< of the fixed sums of a card fee: before rules 3 they were a cost, where one is charged
    units::Money packing = {};                ///< of the packing that goes once with the order
    units::Money freight = {};                ///< of the freight on it
    std::optional<PressShare> press = {};     ///< none: all of it is done for this line alone
    std::vector<units::Count> setPieces = {}; ///< see needs::benchTime
    std::vector<SetShare> sets = {};          ///< place by place; empty: none of them is paid off
    /// Of materials whose price goes by how much the order takes; none, and of all others: the price of one pack.
    std::shared_ptr<const needs::OrderPrices> prices = {};

    friend bool operator==(const OrderShare&, const OrderShare&) = default;
};

/// What a line costs for all its pieces: the figures a price is made of.
struct LineCost {
    needs::BenchTime bench;
    std::vector<needs::PlaceRequirement> places; ///< as the line has them
    units::Money total;
    units::Money setUp;       ///< the sum of the parts that fall away with the templates on the wall
    units::Money paidOff;     ///< the sum of the shares in sets that are paid off over planned pieces
    units::Money outOfPocket; ///< the floor: the sum of the parts paid out; own work, wear and overhead left out
    units::Money labour;      ///< the sum of the bench labour
    // What the bench does besides for pieces that will be spoiled: × (1 ÷ (1 − spoilage) − 1), until they are packed.
    units::Money spoiledLabour; ///< own work in them, what a spoiled piece never gets left out
    units::Duration spoiledTime;

    friend bool operator==(const LineCost&, const LineCost&) = default;
};

/// A line's cost with all it is made of: `nodes` in reading order, the job first. Every node with children is exactly
/// the sum of them.
struct CostSheet : LineCost {
    std::vector<CostNode> nodes;
    std::shared_ptr<const needs::OrderPrices> needs; ///< of its order, where that is known
    std::vector<SetShare> sets;                      ///< see OrderShare
};

} // namespace sp::costing
