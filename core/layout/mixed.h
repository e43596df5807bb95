// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit.h"
#include "core/units/money.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace sp::layout {

/// Pieces of one size to be cut; count 1 or more.
struct MixedPiece {
    std::string id;
    Piece size;
    std::int64_t count = 1;
};

/// A kind of sheet that can be had; price 0 or more.
struct MixedSheet {
    std::string id;
    Sheet size;
    units::Money price;
    std::optional<std::int64_t> atMost;
};

/// Where one piece lies: `sheet` counts the sheets of the plan from 0 (a roll is sheet 0), `piece` is the index of
/// the MixedPiece, `at` as in fit.h.
struct Placement {
    std::int64_t sheet = 0;
    std::size_t piece = 0;
    Position at;
};

struct MixedPlan {
    std::vector<std::size_t> sheets;   ///< the kind of each sheet used
    std::vector<Placement> placements; ///< every piece
    units::Money cost;
    units::Money costBound;      ///< no plan costs less
    std::int64_t sheetBound = 0; ///< no plan uses fewer sheets, whatever their kind
    /// cost == costBound; when all sheets are free of charge, as many sheets as sheetBound.
    bool proven = false;
};

struct MixedRoll {
    units::Length length; ///< to cut off, the margin at both ends included
    units::Length bound;  ///< no shorter length holds the pieces
    bool proven = false;
    std::vector<Placement> placements; ///< as on a Sheet{rollWidth, length}
};

/// How long to look for better: a number of steps (one is about ten nanoseconds), the same on every machine, and a
/// question asked now and then whether to stop earlier.
struct MixedEffort {
    std::int64_t steps = 5'000'000;
    std::function<bool()> outOfTime;
};

/// More pieces are not planned at once.
inline constexpr std::int64_t kMaxMixedPieces = 20'000;
inline constexpr std::size_t kMaxMixedSizes = 1'000; ///< different pieces
inline constexpr std::size_t kMaxMixedSheets = 50;   ///< kinds of sheets

/// The cheapest sheets found for all pieces, each with its bound. Margin and gap are exact: a piece grows by the gap,
/// a sheet by the gap less twice the margin. One size of piece is counted by fitSheet; pieces that fill whole sheets
/// by themselves are tried that way; everything else is laid on skylines (lowest place, best fit first) and in
/// maximal free rectangles, and the order of the pieces is searched from a fixed seed. Few sizes on one kind of sheet
/// are counted too: what counts one sheet can hold at most bounds the plan, and those that would help most are laid or
/// shown not to lie (CountSearch).
/// Errors: OutOfRange for sides, counts, prices, margin or gap outside their range; TooLarge when a piece fits no
/// sheet or there are more than kMaxMixedPieces, kMaxMixedSizes or kMaxMixedSheets; Missing when the sheets that can
/// be had do not suffice, or no way to lay all on them was found.
/// Sources: E. Burke, G. Kendall, G. Whitwell, "A new placement heuristic" (2004) for the lowest best fit; J. Jylanki,
/// "A thousand ways to pack the bin" (2010) for maximal rectangles; S. Fekete and J. Schepers (2001) for bounds by
/// dual feasible functions; all from memory.
base::Result<MixedPlan> packSheets(const std::vector<MixedSheet>& sheets, const std::vector<MixedPiece>& pieces,
                                   const FitRules& rules, const MixedEffort& effort);

/// The shortest length of a roll found for all pieces. Errors as packSheets.
base::Result<MixedRoll> packRoll(units::Length rollWidth, const std::vector<MixedPiece>& pieces, const FitRules& rules,
                                 const MixedEffort& effort);

} // namespace sp::layout
