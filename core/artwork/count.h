// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"
#include "core/artwork/stone_sizes.h"
#include "core/units/count.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sp::artwork {

struct CountOptions {
    double millimetresPerUnit = 1; ///< > 0
    units::Length holeAllowance;   ///< how much larger than its stone a hole is drawn
    std::span<const StoneSize> sizes = publishedStoneSizes();
};

/// Why an outline is a stone or is not.
enum class Classification : std::uint8_t {
    Stone,
    Duplicate, ///< a stone is there already; not left out but the same one drawn twice
    Ring,      ///< shares its centre with the disc that counts
    Encloses,  ///< a round line around stones
    TooLarge,
    TooSmall,
    Ellipse,
    NotRound,
    Large, ///< not round and larger than any stone: a cut line, a letter, a filled shape
    Open
};
Note noteOf(Classification classification);

/// Why so many were left out, with their number for the plural.
base::Message leftOutBecause(base::Message reason, std::size_t count);

struct Stone {
    Point centre;            ///< millimetres, in the axes of the drawing
    double diameter = 0;     ///< millimetres, as drawn
    std::uint32_t disc = 0;  ///< index into Drawing::discs
    std::uint32_t group = 0; ///< index into Counted::groups
    bool collides = false;
};

/// Stones of one colour, layer and size: what one material and one template get.
struct StoneGroup {
    std::string colour; ///< as Ink::colour
    std::string layer;
    std::optional<std::size_t> size; ///< index into CountOptions::sizes; none when no size fits
    units::Length smallest;          ///< drawn diameters
    units::Length largest;
    units::Count count;
};

/// Where the stones of one colour lie: what a template and a piece of tape for it must cover.
struct ColourExtent {
    std::string colour;
    Box box; ///< millimetres, around the discs
    units::Count count;
};

struct Counted {
    std::vector<Stone> stones; ///< in drawing order
    std::vector<StoneGroup> groups;
    std::vector<ColourExtent> colours;
    std::vector<Classification> discClasses;    ///< one for each Drawing::discs
    std::vector<Classification> outlineClasses; ///< one for each Drawing::outlines
    LeftOut leftOut;                            ///< the drawing's own and those of the fates
    std::size_t duplicates = 0;                 ///< discs that were drawn once more
    std::size_t collisions = 0;                 ///< pairs of stones whose holes overlap and would tear
    Box box;                                    ///< millimetres, around all stones

    units::Length width() const;
    units::Length height() const;
};

/// Smallest and largest disc that can be a stone at all (1.5 to 12 mm unless the sizes go beyond).
double smallestStoneMm(const CountOptions& options);
double largestStoneMm(const CountOptions& options);

/// Sorts the stones out of a drawing and sizes them.
/// - Duplicates: centres within 0.02 mm and diameters within 0.04 mm. The one on top that is filled stays.
/// - Rings: discs with one centre (within 0.05 mm or a twentieth of the larger radius) are one stone, the
///   largest that fits a size; of a filled stone in the line of its hole, up to 0.6 mm larger, the stone.
/// - A disc that holds another one off its centre is a line around it, not a stone.
/// - Sizes: diameters are sorted and parted at gaps above max(0.05 mm, 2 %), each class gets the size of its
/// mean. Errors: OutOfRange when the stones lie over more than a kilometre; TooLarge when more discs lie on
/// one another than any design has; Missing when there is no stone at all, saying what there was instead.
base::Result<Counted> countStones(const Drawing& drawing, const CountOptions& options, std::string_view fileName);

} // namespace sp::artwork
