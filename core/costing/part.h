// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace sp::costing {

/// What a node of the cost sheet stands for; beside each its formula, which parts.cpp has as code. All are money for
/// the whole job, rounded once, half to even, to a micro-unit; those without a formula are the sum of the parts below
/// them. Words are made from a node and the inputs when somebody looks, so that pricing a thousand lines makes no text.
/// Source: common practice, no source, but for the press and the cutter (units of production: OpenStax, Principles of
/// Accounting vol. 1, m67897).
enum class Part : std::uint8_t {
    Job,
    Stones,
    Stone, ///< pieces × stones a piece ÷ (1 − loss) × price; index: which of the line's stones, place by place
    Tape, ///< index of this and what else is for a place: which of the line's; by position pieces ÷ lifts ÷ to a sheet
          ///< × price; else whole sheets, or length off a roll, × price
    /// One for each colour, as tape, × pieces ÷ pieces of the set; nothing on the wall. Of a one-off, and before rules
    /// 3, × pieces of the set up to the plan ÷ planned pieces.
    Template,
    /// Where the set is paid off over planned pieces, with its templates on the wall too; index as tape: what the
    /// templates cost when they were cut × pieces of the order that bear a share ÷ planned pieces, × pieces ÷ pieces of
    /// the design in the order.
    SetTemplates,
    SetWork,   ///< likewise: what its art and cutting cost, where they are paid off too
    Base,      ///< backing, as tape with one lift; of a blank the sum of:
    BasePrice, ///< pieces × price of the blank
    SizeExtra, ///< pieces of the size × its extra cost; index: which of the line's sizes
    Packing,
    PackingItem,  ///< pieces × so many a piece × price; index: which of the line's packing
    OrderPacking, ///< the line's share of the packing that goes once with the order (core/pricing/order_share.h)
    Freight, ///< of what the line takes, in; each of the following: cost above × share, or × shipping ÷ usual order
    FreightOnStone, ///< index: as Stone
    FreightOnTape,
    FreightOnTemplate,
    FreightOnBase,    ///< of a blank with its extra sizes
    FreightOnPacking, ///< index: as PackingItem
    FreightOnOrder,   ///< the line's share of the freight on the packing that goes once with the order
    Labour,
    LabourStep, ///< time of the step × labour rate; index: which step
    Press,
    PressCycles, ///< cycles × (dwell + handling) × what an hour of the press costs to run
    SecondPress, ///< pieces × share × (second dwell + handling) × the same
    WarmUp,      ///< time × the same
    TestPress,   ///< test presses × (dwell + handling) × the same
    Wear,
    PressWear, ///< (price − salvage) ÷ life × (cycles + second presses + test presses)
    CutterWear, ///< (price − salvage) ÷ life × holes × pieces ÷ pieces of the set; nothing with templates on the wall
    Overhead,
    OverheadOnce,   ///< bench time spent once for the job × overhead a month ÷ productive time a month
    OverheadPieces, ///< bench time of the pieces × the same
    Spoilage,
    SpoiledMaterials, ///< what is lost of the materials above × (1 ÷ (1 − spoilage) − 1)
    SpoiledWork,      ///< what is lost of the work above × the same
    GarmentAllowance, ///< pieces × allowance for replacing a garment × the same
    CardFee           ///< before rules 3: (all above + share of the fixed fee) ÷ (1 − fee rate) − all above
};

/// What an operand of a formula stands for. Beside each the sort of its value.
enum class Operand : std::uint8_t {
    Pieces,             ///< Count: of the line
    Price,              ///< UnitPrice: of the material that the part is of
    StonesAPiece,       ///< Count: good stones of the colour on one piece
    Loss,               ///< Rate: share of the stones taken out that is lost
    Lifts,              ///< Count: pieces that one piece of tape serves
    Cuts,               ///< Count: pieces of the sheet material to be cut
    PerSheet,           ///< Count: of them on one sheet
    Sheets,             ///< Count: sheets cut into
    RollLength,         ///< Length: cut off the roll
    WholeRoll,          ///< Length: of the roll that has the price
    PlannedPieces,      ///< Count: over which the templates are spread
    PlannedPiecesHere,  ///< Count: of them on this line
    SetPieces,          ///< Count: pieces of all lines that share a set
    SetCost,            ///< Money: of what of the whole set is paid off
    SizePieces,         ///< Count: pieces of a size of the blank
    SizeExtra,          ///< Money: what that size costs beyond the blank's price
    PackingAPiece,      ///< Count: of a packing material with each piece
    OrderPacking,       ///< Money: the line's share of the packing that goes once with the order
    Goods,              ///< Money: the part above that the freight is on
    FreightShare,       ///< Rate: of the price of the goods
    Shipping,           ///< Money: of an order at the supplier
    UsualOrder,         ///< Money: goods of a usual order there
    OrderFreight,       ///< Money: the line's share of the freight on the packing that goes once with the order
    PerJob,             ///< Duration: of a step, once
    PerPiece,           ///< Duration: likewise, for each piece
    PerColour,          ///< Duration: likewise, for each colour
    Colours,            ///< Count: of the line
    PerCycle,           ///< Duration: likewise, for each press cycle
    Per100Stones,       ///< Duration: likewise, for a hundred stones
    Stones,             ///< Count: of all colours on one piece
    StepTime,           ///< Duration: the bench is busy with a step
    LabourRate,         ///< PerHour
    PiecesAtOnce,       ///< Count: pieces under the platen
    PressesAPiece,      ///< Count: presses to cover a piece larger than the platen
    Cycles,             ///< Count: press cycles
    Dwell,              ///< Duration
    Handling,           ///< Duration
    SecondPressShare,   ///< Rate: share of the pieces pressed a second time
    SecondDwell,        ///< Duration
    WarmUp,             ///< Duration
    SharedWarmUp,       ///< Money: the line's share of warming up for the order
    SharedTestPresses,  ///< Money: likewise of running the test presses
    SharedTestWear,     ///< Money: likewise of what they wear
    TestPresses,        ///< Count
    PressRunning,       ///< PerHour
    PressPrice,         ///< Money
    PressSalvage,       ///< Money
    PressLife,          ///< Count: presses
    CutterPrice,        ///< Money
    CutterSalvage,      ///< Money
    CutterLife,         ///< Count: holes
    Holes,              ///< Count: cut for the line
    BenchTime,          ///< Duration: once for the job, or of the pieces
    OverheadPerMonth,   ///< Money
    ProductivePerMonth, ///< Duration
    LostMaterials,      ///< Money: the parts above whose material is lost with a spoiled piece
    LostWork,           ///< Money: the parts above whose work is lost with it
    Spoilage,           ///< Rate: share of the pieces made that cannot be sold
    GarmentAllowance,   ///< Money: for replacing one garment
    AllAbove,           ///< Money: every part above
    FixedFee,           ///< Money: the line's share of the fixed part of a card fee
    FeeRate             ///< Rate
};

} // namespace sp::costing
