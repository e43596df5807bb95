// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <cstdint>
#include <span>
#include <string>
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

/// A shape with what paints it.
struct PaintedShape {
    Shape shape;
    std::string colour;       ///< as Ink::colour
    std::uint32_t number = 0; ///< later ones lie on top
    bool filled = false;      ///< else lines alone: all of one colour are one shape, filled even-odd
};

/// The same shapes as `shapesOf`, each by itself, from the lowest to the topmost.
std::vector<PaintedShape> paintedShapesOf(const Drawing& drawing, double millimetresPerUnit);

/// A line without a filling, in millimetres.
struct Line {
    std::vector<Point> points; ///< two or more
    std::string colour;        ///< as Ink::colour
    std::uint32_t number = 0;  ///< see PaintedShape
    bool closed = false;
};

/// The lines of a drawing that end somewhere, such as a swoosh or single-line script; with `closedToo` those that do
/// not as well.
std::vector<Line> linesOf(const Drawing& drawing, double millimetresPerUnit, bool closedToo = false);

/// Lines as if they were shapes, for checkInvolved.
std::vector<Shape> shapesAlong(std::span<const Line> lines);

/// Whether the shapes of a drawing, lines that end somewhere left aside, have no more corners than checkInvolved lets
/// pass; asked before they are drawn. Error: TooLarge.
base::Result<void> checkCorners(const Drawing& drawing, double millimetresPerUnit, std::string_view fileName);

/// Whether working out what the shapes cover is bearable. Errors: OutOfRange, TooLarge, as of regionOf.
base::Result<void> checkInvolved(std::span<const Shape> shapes, std::string_view fileName);

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

/// The region without what is nearer than `distance` millimetres (> 0) to a line.
Rings besideLines(const Rings& region, std::span<const Line> lines, double distance);

/// What is left of the lines that lie `distance` millimetres (> 0) or more from all of `others`.
std::vector<Line> linesBeside(std::vector<Line> lines, std::span<const Line> others, double distance);

/// The parts of `region` where no disc of this radius (> 0) inside it comes to, longer than `longerThan` millimetres.
std::vector<Rings> narrowPartsOf(const Rings& region, double radius, double longerThan);

/// Square millimetres, holes taken off.
double areaOf(const Rings& region);
/// Length of all edges, holes included.
double perimeterOf(const Rings& region);

} // namespace sp::artwork
