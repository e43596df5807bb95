// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/dxf_pairs.h"
#include "core/artwork/geometry.h"

#include <optional>
#include <span>
#include <vector>

namespace sp::artwork {

/// A corner of a DXF polyline. A bulge is the tangent of a quarter of the angle that the arc to the next corner spans,
/// positive to the left.
struct DxfCorner {
    Point at;
    double bulge = 0;
};

/// The edges of a HATCH in a solid fill, each a closed polyline in the drawing's own units; a circle is one of two
/// corners. Nothing for a pattern or a gradient, for an edge with splines or ellipses in it, and for what does not join
/// or cannot be read: it is not certain then what is filled. Source: Autodesk, DXF Reference, "HATCH" and "Boundary
/// path data" (group codes 70, 91 to 93, 72, 73, 97, 450), from memory.
std::optional<std::vector<std::vector<DxfCorner>>> solidHatchOf(std::span<const DxfPair> pairs);

} // namespace sp::artwork
