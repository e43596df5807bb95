// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed_pattern.h"

namespace sp::layout {

// Lower bounds by dual feasible functions: f maps sides to sides so that what fits side by side still does; then the
// mapped areas of one bin's pieces never exceed the mapped bin, whichever way each piece is turned (the smaller of
// both ways is counted). Source: S. Fekete, J. Schepers, Mathematical Programming 91 (2001), from memory.

/// No packing of the boxes uses fewer bins of width x height. Every box must fit.
std::int64_t binBound(const std::vector<Box>& boxes, std::int64_t width, std::int64_t height, bool mayTurn);

/// No packing in a strip of the width is shorter.
std::int64_t stripBound(const std::vector<Box>& boxes, std::int64_t width, bool mayTurn);

} // namespace sp::layout
