// SPDX-License-Identifier: MIT
#pragma once

#include "core/needs/bench_time.h"
#include "core/needs/sheet_use.h"
#include "core/units/count.h"
#include "core/units/money.h"

#include <cstdint>
#include <vector>

namespace sp::costing {

/// What a node of the cost sheet stands for. Its words are made from this and the inputs when somebody looks
/// (cost_words.h), so that pricing a thousand lines makes no text.
enum class Part : std::uint8_t {
    Job,
    Stones,
    Stone, ///< index: which of the line's stones
    Tape,
    Template,
    Base,      ///< backing or blank
    BasePrice, ///< the blank itself
    SizeExtra, ///< index: which of the line's sizes
    Packing,
    PackingItem, ///< index: which of the shop's packing
    Labour,
    LabourStep, ///< index: which step
    Press,
    PressCycles,
    SecondPress,
    WarmUp,
    TestPress,
    Wear,
    PressWear,
    CutterWear,
    Overhead,
    OverheadOnce,   ///< on the bench time spent once for the job
    OverheadPieces, ///< on the bench time of the pieces
    Spoilage,
    SpoiledMaterials,
    SpoiledWork,
    GarmentAllowance,
    CardFee
};

/// A figure of the cost sheet, for the whole job. A node's children follow it, one level deeper.
struct CostNode {
    Part part = Part::Job;
    std::uint8_t depth = 0;
    std::uint16_t index = 0;
    units::Money amount;

    friend bool operator==(const CostNode&, const CostNode&) = default;
};

/// What a line costs for all its pieces: the figures a price is made of.
struct LineCost {
    needs::BenchTime bench;
    needs::SheetUse tape;
    needs::SheetUse templates;
    needs::SheetUse base;
    std::int64_t piecesPerPress = 1;  ///< pieces under the platen at once
    std::int64_t pressesPerPiece = 1; ///< more than one where the piece is larger than the platen
    std::int64_t cycles = 0;          ///< press cycles for the pieces, second presses and tests not counted
    units::Money total;
    units::Money setUp;       ///< the part that falls away with the templates on the wall
    units::Money outOfPocket; ///< the floor: what is paid out for this job, own work, wear and overhead left out
    units::Money labour;      ///< the bench labour in it

    friend bool operator==(const LineCost&, const LineCost&) = default;
};

/// A line's cost with all it is made of: `nodes` in reading order, the job first. Every node with children is exactly
/// the sum of them.
struct CostSheet : LineCost {
    std::vector<CostNode> nodes;
};

} // namespace sp::costing
