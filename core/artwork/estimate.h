// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/messages.h"
#include "core/artwork/region.h"
#include "core/units/count.h"
#include "core/units/length.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::artwork {

enum class StoneStyle { Outline, Fill, Both };

struct EstimateRequest {
    units::Length diameter; ///< of the stone, > 0
    units::Length pitch;    ///< centre to centre, at least the diameter
    units::Length edge;     ///< kept free between the stones and the edge of the shape, >= 0
    StoneStyle style = StoneStyle::Fill;
};

/// About how many stones a shape takes before anyone has drawn them.
struct Estimate {
    std::vector<Point> centres; ///< millimetres, where they would sit; no two nearer than the diameter
    units::Count count;         ///< that many
    units::Count least;         ///< a layout by hand will lie between these two
    units::Count most;
    double area = 0;                      ///< of the shape, square millimetres
    double outlineLength = 0;             ///< of its edges, millimetres
    Box box;                              ///< of the shape, millimetres
    base::Message how;                    ///< "staggered rows turned by 15 degrees", for the picture's caption
    std::size_t pieces = 0;               ///< separate pieces of the shape, such as letters
    std::size_t bare = 0;                 ///< of these, narrower than a stone: they hold none
    std::optional<base::Message> warning; ///< what to do about those; none when there are none
};

/// Sets stones along the edge, in rows over the area, or both, every stone wholly inside the shape. Every piece of the
/// shape has rows of its own; where more stones stand along its edge, with rows or lines beside it inside, it has those,
/// so that a filling never takes fewer than the outline. Rows keep the pitch; along a line it is evened out, and may
/// be three quarters of it.
///
/// How sure: rows are counted exactly for the best lattice; a layout by hand may lose the edge or win a
/// little. With A and P the area and perimeter of where centres may be, and p the pitch, it lies between the
/// lower of that count, the plain grid and 2 A / (√3 p²), and the higher of that count and 2 A / (√3 p²) + P
/// / (4 p); measured against published packings of circles (Wikipedia, "Circle packing in a circle") and
/// rectangles. Along an edge, one stone more or less for each stretch between corners.
///
/// Errors: those of regionOf; OutOfRange (a pitch below the diameter, a diameter of nothing); Missing (no
/// part of the shape is wide enough for one stone); TooLarge (more than 100,000 stones).
base::Result<Estimate> estimateStones(std::span<const Shape> shapes, const EstimateRequest& request,
                                      std::string_view fileName);

} // namespace sp::artwork
