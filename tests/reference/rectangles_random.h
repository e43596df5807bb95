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

} // namespace sp::reference
