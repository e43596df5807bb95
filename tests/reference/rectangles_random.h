// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed.h"

#include <cstdint>
#include <vector>

namespace sp::reference {

/// A sheet cut at random into parts: they fill it without waste, so the least length of a strip of its width is its
/// height.
struct CutSheet {
    units::Length width;
    units::Length height;
    std::vector<layout::MixedPiece> pieces;
};
/// Sides in whole millimetres; `parts` guillotine cuts of the largest part so far at a random place, parts turned and
/// shuffled.
CutSheet cutSheet(std::int64_t width, std::int64_t height, std::size_t parts, std::uint64_t seed);

/// One bin problem of the ten published classes, drawn by our own generator: 1 to 6 by J. O. Berkey and P. Y. Wang,
/// JORS 38 (1987); 7 to 10 by S. Martello and D. Vigo, Management Science 44 (1998); distributions from memory.
struct BinProblem {
    layout::Sheet sheet;
    std::vector<layout::MixedPiece> pieces;
};
BinProblem publishedBin(int kind, std::size_t pieces, std::uint64_t seed);

} // namespace sp::reference
