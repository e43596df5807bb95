// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/formula.h"
#include "core/needs/bench_time.h"
#include "core/needs/sheet_use.h"
#include "core/units/count.h"
#include "core/units/money.h"

#include <cstdint>
#include <vector>

namespace sp::costing {

/// What a node of the cost sheet stands for; beside each its formula, which parts.cpp has as code. All are money for
/// the whole job, rounded once, half to even, to a micro-unit; those without a formula are the sum of the parts below
/// them. Words are made from a node and the inputs when somebody looks, so that pricing a thousand lines makes no text.
/// Source: common practice, no source, but for the press and the cutter (units of production: OpenStax, Principles of
/// Accounting vol. 1, m67897).
enum class Part : std::uint8_t {
    Job,
    Stones,
    Stone,    ///< pieces × stones a piece ÷ (1 − loss) × price; index: which of the line's stones
    Tape,     ///< by position pieces ÷ lifts ÷ to a sheet × price; else whole sheets, or length off a roll, × price
    Template, ///< one for each colour, as tape, × pieces here ÷ planned pieces; nothing on the wall
    Base,     ///< backing, as tape with one lift; of a blank the sum of:
    BasePrice, ///< pieces × price of the blank
    SizeExtra, ///< pieces of the size × its extra cost; index: which of the line's sizes
    Packing,
    PackingItem, ///< pieces × price; index: which of the shop's packing
    Labour,
    LabourStep, ///< time of the step × labour rate; index: which step
    Press,
    PressCycles, ///< cycles × (dwell + handling) × what an hour of the press costs to run
    SecondPress, ///< pieces × share × (second dwell + handling) × the same
    WarmUp,      ///< time × the same
    TestPress,   ///< test presses × (dwell + handling) × the same
    Wear,
    PressWear,  ///< (price − salvage) ÷ life × (cycles + second presses + test presses)
    CutterWear, ///< (price − salvage) ÷ life × holes; nothing with templates on the wall
    Overhead,
    OverheadOnce,   ///< bench time spent once for the job × overhead a month ÷ productive time a month
    OverheadPieces, ///< bench time of the pieces × the same
    Spoilage,
    SpoiledMaterials, ///< what is lost of the materials above × (1 ÷ (1 − spoilage) − 1)
    SpoiledWork,      ///< what is lost of the work above × the same
    GarmentAllowance, ///< pieces × allowance for replacing a garment × the same
    CardFee           ///< (all above + share of the fixed fee) ÷ (1 − fee rate) − all above
};

/// A figure of the cost sheet, for the whole job. A node's children follow it, one level deeper.
struct CostNode {
    Part part = Part::Job;
    std::uint8_t depth = 0;
    std::uint16_t index = 0;
    units::Money amount;
    Formula formula = {}; ///< the amount by its operands, to be put into words or checked

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
    units::Money setUp;       ///< the sum of the parts that fall away with the templates on the wall
    units::Money outOfPocket; ///< the floor: the sum of the parts paid out; own work, wear and overhead left out
    units::Money labour;      ///< the sum of the bench labour

    friend bool operator==(const LineCost&, const LineCost&) = default;
};

/// A line's cost with all it is made of: `nodes` in reading order, the job first. Every node with children is exactly
/// the sum of them.
struct CostSheet : LineCost {
    std::vector<CostNode> nodes;
};

} // namespace sp::costing
