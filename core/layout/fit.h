// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/length.h"

#include <cstdint>
#include <vector>

namespace sp::layout {

/// A sheet of material; both sides > 0, at most units::kMaxLength.
struct Sheet {
    units::Length width;
    units::Length height;

    friend bool operator==(const Sheet&, const Sheet&) = default;
};

/// What is laid on it, bare: the gap is not part of it. Both sides > 0, at most units::kMaxLength.
struct Piece {
    units::Length width;
    units::Length height;

    friend bool operator==(const Piece&, const Piece&) = default;
};

struct FitRules {
    units::Length margin; ///< a strip all round the sheet that is not used; >= 0
    units::Length gap;    ///< the least distance between neighbours; >= 0; none is needed towards the margin
    bool oneWay = false;  ///< the material has a direction: no quarter turns

    friend bool operator==(const FitRules&, const FitRules&) = default;
};

/// The lower-left corner of a piece, measured from the lower-left corner of the whole sheet (margin
/// included), x along the width. Turned: the piece's height lies along the sheet's width.
struct Position {
    units::Length x;
    units::Length y;
    bool turned = false;

    friend bool operator==(const Position&, const Position&) = default;
};

/// `count` pieces fit, shown at `positions`; no way of laying them has more than `bound`. `proven` is count
/// == bound.
struct SheetFit {
    std::int64_t count = 0;
    std::int64_t bound = 0;
    bool proven = false;
    std::vector<Position> positions; ///< min(count, kMaxPositions) of them, from left to right strip by strip

    friend bool operator==(const SheetFit&, const SheetFit&) = default;
};

/// So many places are listed at most; nobody reads a drawing of more, and the memory stays bounded.
inline constexpr std::int64_t kMaxPositions = 20'000;
/// More pieces than this on one sheet or roll are refused as a slip of units.
inline constexpr std::int64_t kMaxPieces = 1'000'000'000;

/// How many equal pieces fit the sheet, all edges parallel to the sheet's, quarter turns allowed unless
/// `oneWay`. Counted exactly in nanometres.
///
/// - oneWay and square pieces: rows and columns, always proven.
/// - Up to kMaxSums sums of piece sides along the longer side (every ordinary sheet): the best five-block layout;
///   when that is below the bound, L-shaped ones too. Tried cuts are limited (kFiveBlockWork, kLShapeWork), by no
///   clock, so the answer is the same on every machine.
/// - Beyond that (long rolls, very small pieces): strips across the sheet, each the best five-block layout of its
///   length, put end to end in the best way. The bound still holds for every way of laying them.
///
/// The count is never below the better of the two plain layouts (all upright, all turned).
///
/// Errors: OutOfRange for a side that is not above zero or beyond kMaxLength, a negative margin or gap, or a margin
/// that leaves nothing; TooLarge when the piece fits the usable part no way round, or when more than kMaxPieces
/// would fit.
///
/// Sources: E. G. Birgin, R. D. Lobato, R. Morabito, JORS 61 (2010) 306-320 for the searches; F. W. Barnes, Discrete
/// Mathematics 26 (1979) 93-100 and H. Isermann, OR Spektrum 9 (1987) 235-249 for the bounds.
base::Result<SheetFit> fitSheet(const Sheet& sheet, const Piece& piece, const FitRules& rules);

inline constexpr int kMaxSums = 160;
inline constexpr std::int64_t kFiveBlockWork = 4'000'000;
/// Of a sheet laid in strips; no count of 14,500 was lower than with more.
inline constexpr std::int64_t kStripWork = 1'000'000;
/// Cuts tried on Ls when the next piece would leave less than half a piece of waste on the sheet and most lengths are
/// sums of the piece's sides; another sheet, where no L-shaped layout has been seen to help, gets kLooseWork.
inline constexpr std::int64_t kLShapeWork = 13'000'000;
inline constexpr std::int64_t kLooseWork = 30'000;

} // namespace sp::layout
