// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/subpath.h"

#include <string_view>

namespace sp::artwork {

/// How an outline goes into the drawing.
struct Placing {
    Matrix matrix;
    bool evenOdd = false;
    std::uint32_t ink = 0;
    std::uint32_t shape = 0;
    const DottedLine* dots = nullptr; ///< of its stroke, where they are counted
    bool isOutline = true;            ///< also goes in as what it encloses

    /// Adds what is made of a sub-path.
    void add(Subpath& path, DrawingBuilder& builder) const;
};

/// Reads the `d` of an SVG path (SVG 1.1, section 8.3, all commands; arcs by its appendix F.6) and adds every
/// sub-path to the drawing. Like every renderer it stops at the first mistake and keeps what came before;
/// false then. `scratch` is working space.
bool addPath(std::string_view data, const Placing& placing, Subpath& scratch, DrawingBuilder& builder);

/// The pairs of a polygon or polyline; false when a number is missing or cannot be read.
bool addPolygon(std::string_view points, bool closed, const Placing& placing, Subpath& scratch,
                DrawingBuilder& builder);

/// The ellipse with these half axes: a disc when the matrix leaves it within kRoundness of a circle, else an
/// outline.
void addEllipse(Point centre, double rx, double ry, const Placing& placing, Subpath& scratch, DrawingBuilder& builder);

/// A rectangle with corners rounded by rx and ry, which are at most half its sides.
void addRectangle(Point corner, double width, double height, double rx, double ry, const Placing& placing,
                  Subpath& scratch, DrawingBuilder& builder);

} // namespace sp::artwork
