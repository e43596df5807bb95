// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <span>
#include <vector>

namespace sp::artwork {

/// Closed rings of corners, the last joined to the first.
using Rings = std::vector<std::vector<Point>>;

/// A shape to set stones on: outlines in millimetres, as a file or a font gives them; they may overlap and
/// cross.
struct Shape {
    Rings rings;
    bool evenOdd = false; ///< how they fill; else non-zero
};

/// The shapes of a drawing in millimetres, as drawn: every closed or filled outline and every disc. Outlines
/// that are only lines (cut files have no fill) make one shape together, filled even-odd, so that a ring in a
/// ring is a hole.
std::vector<Shape> shapesOf(const Drawing& drawing, double millimetresPerUnit);

/// The area the shapes cover together as clean rings, outer ones and holes, that neither cross nor touch;
/// worked out to a fifth of a micrometre. Errors: Missing (no area), OutOfRange (beyond a kilometre),
/// TooLarge (more than 100,000 corners, or lines that cross one another more often than any drawing of a
/// shape does).
base::Result<Rings> regionOf(std::span<const Shape> shapes, std::string_view fileName);

/// The region's separate pieces, such as letters: each outer ring with the holes in it, in the order of the outer
/// rings. A region of more than 2,000 rings is one piece. Rings of the kind `regionOf` gives.
std::vector<Rings> piecesOf(const Rings& region);

/// All places at least `distance` millimetres (> 0) inside the edge. Rings of the kind `regionOf` gives.
Rings insetBy(const Rings& region, double distance);

/// Square millimetres, holes taken off.
double areaOf(const Rings& region);
/// Length of all edges, holes included.
double perimeterOf(const Rings& region);

} // namespace sp::artwork
