// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/count.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/unit_price.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::supply {

/// Stones and other things that are counted: what all kits hold together and what one piece takes.
struct CountedStock {
    units::Count bought;    ///< in all kits, 0 to kMaxStones
    units::Rate shortShare; ///< share by which bags run short, 0 to below one
    units::Rate loss;       ///< share of the stones received that never reaches a piece, 0 to below one
    units::Count perPiece;  ///< good stones on one piece; 0: the design does not use it
};

/// Sheets of one size. `perSheet` is what layout::fitSheet counts for this sheet and the piece.
struct SheetLot {
    units::Count sheets;                     ///< in all kits
    units::Count perSheet;                   ///< pieces cut from one sheet; 0: the piece does not fit
    units::Count uses = units::Count::of(1); ///< pieces one cut serves (tape lifts more than once)
};

/// Sheet goods, of one or several sizes.
struct SheetStock {
    std::vector<SheetLot> lots;
    units::Count perPiece = units::Count::of(1); ///< cuts that one piece (or, `once`, the design) takes; 0: unused
    bool once = false;                           ///< cut once for the design however many pieces: a template
};

/// One material that the kit holds, the design takes, or both. A material stands in at most one line.
struct YieldLine {
    std::string material;
    std::optional<CountedStock> counted;  ///< exactly one of counted
    std::optional<SheetStock> sheets;     ///< and sheets is set
    std::optional<units::UnitPrice> bulk; ///< what it costs in bulk, to value what is left
};

struct YieldProblem {
    units::Money price; ///< of all kits together, 0 or more
    std::vector<YieldLine> lines;
};

struct YieldLeft {
    std::string material;
    bool inPieces = false; ///< cut pieces of sheet goods; otherwise stones, or whole sheets nothing is cut from
    units::Count count;    ///< good stones: after short count and the loss share; never negative
    std::optional<units::Money> value; ///< at the bulk price, rounded half to even to a micro-unit
};

struct YieldChance {
    units::Count pieces;
    double probability = 1; ///< of making at least that many
};

/// What one more gross of a limiting colour would add, everything else as it is; 1 or more.
struct YieldGain {
    std::string material;
    units::Count pieces;
};

struct YieldAnswer {
    units::Count pieces;                  ///< as if the shares lost were lost exactly
    units::Count sure;                    ///< the most pieces with odds of kSureOdds or more
    YieldChance likely;                   ///< the most with odds of kLikelyOdds or more
    std::vector<std::string> limiting;    ///< every line that allows no more than `pieces`, in the order given
    std::vector<YieldLeft> left;          ///< every line, in the order given
    std::vector<YieldChance> odds;        ///< rising pieces, falling chance; see kMaxOdds
    std::vector<YieldGain> gains;         ///< of the limiting counted lines that alone hold a piece back
    std::optional<units::Money> costEach; ///< price / sure, rounded to a micro-unit; none when no piece is sure
};

inline constexpr double kSureOdds = 0.999;
inline constexpr double kLikelyOdds = 0.5;
inline constexpr std::int64_t kMaxStones = 1'000'000'000;
inline constexpr std::size_t kMaxLines = 200;
/// `odds` covers every number of pieces whose chance prints neither as 1.0000 nor as 0.0000, one more at each end,
/// and `pieces` itself. Should that be more than this many, an even selection of them with both ends.
inline constexpr std::size_t kMaxOdds = 64;

/// Pieces that the pooled kits make. A counted line allows floor(bought (1 - short) (1 - loss) / perPiece), computed
/// exactly and rounded once; sheet lots allow sheets x perSheet x uses / perPiece; a template allows any number when
/// one full set can be cut, otherwise none; a line the design does not use does not limit. Left of a counted line is
/// floor(bought (1 - short) (1 - loss)) - pieces x perPiece, so the limiting line always has less than perPiece left.
/// Odds take the stones received as floor(bought (1 - short)) and lose each on its own with the chance `loss`;
/// sheets are certain.
/// Errors: Invalid when the design uses none of the lines; OutOfRange for a share or a count outside its range;
/// TooLarge when a sum does not fit.
/// Source: the limiting item rule is common practice, no source.
base::Result<YieldAnswer> kitYield(const YieldProblem& problem);

/// What is left is worth at bulk prices: the sum of the values there are. Throws base::Overflow.
units::Money leftWorth(const YieldAnswer& answer);

} // namespace sp::supply
