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

struct StoneSetting {
    units::Length diameter; ///< of the stone, > 0
    units::Length pitch;    ///< centre to centre, at least the diameter

    friend bool operator==(const StoneSetting&, const StoneSetting&) = default;
};

struct EstimateRequest {
    units::Length diameter; ///< see StoneSetting
    units::Length pitch;
    units::Length edge; ///< kept free between the stones and the edge of the shape, >= 0
    StoneStyle style = StoneStyle::Fill;
    std::optional<StoneSetting> outline = {}; ///< with StoneStyle::Both: the stone of the outline, if it is another
};

/// How many stones, and between which two a layout by hand will lie.
struct Tally {
    units::Count count;
    units::Count least;
    units::Count most;

    void add(const Tally& other);

    friend bool operator==(const Tally&, const Tally&) = default;
};

/// About how many stones a shape takes before anyone has drawn them.
struct Estimate : Tally {
    std::vector<Point> centres; ///< millimetres, where they would sit; no two nearer than they are wide
    /// Those in the stone of EstimateRequest itself.
    Tally filling() const;

    Tally outline;                        ///< of these the first ones, in the stone of EstimateRequest::outline
    double area = 0;                      ///< of the shape, square millimetres
    double outlineLength = 0;             ///< of its edges, millimetres
    double lineLength = 0;                ///< of its lines, millimetres
    Box box;                              ///< of the shape and its lines, millimetres
    base::Message how;                    ///< "staggered rows turned by 15 degrees", for the picture's caption
    std::size_t pieces = 0;               ///< separate pieces of the shape, such as letters
    std::size_t bare = 0;                 ///< of these, narrower than a stone: they hold none
    std::optional<base::Message> warning; ///< what to do about those; none when there are none
    std::vector<base::Message> range;     ///< where a layout by hand may differ, and by how much; at least one
};

/// Sets stones along the edge, in rows over the area, or both, every stone wholly inside the shape. Every piece of the
/// shape has rows of its own; where more stones stand along its edge, with rows or lines beside it inside, it has
/// those, so that a filling never takes fewer than the outline. Rows keep the pitch; along a line it is evened out, and
/// may be three quarters of it.
///
/// How sure: rows are counted exactly for the best lattice; a layout by hand may lose the edge or win a
/// little. With A and P the area and perimeter of where centres may be, and p the pitch, it lies between the
/// lower of that count, the plain grid and 2 A / (√3 p²), and the higher of that count and 2 A / (√3 p²) + P
/// / (4 p); measured against published packings of circles (Wikipedia, "Circle packing in a circle") and
/// rectangles. Along an edge or a line, one stone more or less for each stretch between corners. A part of the shape
/// that no stone comes to, being narrower than one, may get a row of its own by hand: half its perimeter over the
/// pitch.
///
/// Errors: those of regionOf; OutOfRange (a pitch below the diameter, a diameter of nothing); Missing (no
/// part of the shape is wide enough for one stone); TooLarge (more than 100,000 stones).
base::Result<Estimate> estimateStones(std::span<const Shape> shapes, const EstimateRequest& request,
                                      std::string_view fileName);

/// The same with rows of stones along `lines`, which the shapes' stones keep free: see runAlongLines. There may be no
/// shapes then.
base::Result<Estimate> estimateStones(std::span<const Shape> shapes, std::span<const Line> lines,
                                      const EstimateRequest& request, std::string_view fileName);

/// What is covered already, as `regionOf` gives it: its stones and those of its lines, a row each. None at all is no
/// error here.
base::Result<Estimate> estimateRegion(const Rings& region, std::span<const Line> lines, const EstimateRequest& request,
                                      std::string_view fileName);

} // namespace sp::artwork
