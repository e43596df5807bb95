// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit.h"

namespace sp::layout {

/// A length cut off a roll. `positions` as on a Sheet{rollWidth, length}: x across the roll, y along it.
struct RollNeed {
    units::Length length;            ///< to cut off, the margin at both ends included
    std::int64_t count = 0;          ///< pieces laid on it; no fewer than were asked for
    units::Length bound;             ///< no shorter length holds as many as were asked for
    bool proven = false;             ///< length == bound
    std::vector<Position> positions; ///< min(count, kMaxPositions) of them, from the beginning of the roll on

    friend bool operator==(const RollNeed&, const RollNeed&) = default;
};

/// More pieces are not asked for at once.
inline constexpr std::int64_t kMaxRollPieces = 1'000'000;

/// The shortest length of roll for `pieces` equal pieces, turned and spaced as fitSheet does. Strips across
/// the roll, each the best five-block layout of its length, are put end to end in the best way; when that is
/// longer than the bound, the few lengths between are searched as sheets. Bounded work, no clock. Errors:
/// those of fitSheet for the roll's width, the piece and the rules (TooLarge when the piece fits the usable
/// width no way round, or when the length would pass units::kMaxLength); OutOfRange when `pieces` is not
/// 1 to kMaxRollPieces.
base::Result<RollNeed> lengthForPieces(units::Length rollWidth, const Piece& piece, const FitRules& rules,
                                       std::int64_t pieces);

} // namespace sp::layout
