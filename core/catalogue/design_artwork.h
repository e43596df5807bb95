// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/length.h"

#include <cstddef>
#include <cstdint>
#include <string>

namespace sp::catalogue {

enum class ArtworkFormat { Svg, Dxf, Plt };

/// Where the size of one unit of a drawing comes from.
enum class ScaleOrigin {
    File,     ///< the file names its unit
    Proposed, ///< the reading under which most discs are stones
    Typed     ///< the owner said it
};

inline constexpr std::size_t kMaxArtwork = 64'000'000;  ///< bytes of a drawing that a book takes
inline constexpr std::size_t kMaxThumbnail = 4'000'000; ///< bytes of a small picture of it

/// The drawing that a design was counted from, whole, as it was read. A design has one or none.
struct DesignArtwork {
    base::Id design;
    std::string fileName; ///< without its folder
    ArtworkFormat format = ArtworkFormat::Svg;
    std::string file;      ///< its bytes, 1 to kMaxArtwork
    std::string thumbnail; ///< PNG to show without reading the drawing again; may be empty
    units::Length unit;    ///< one unit of the drawing, 1 nm or more
    ScaleOrigin scaleFrom = ScaleOrigin::File;
    std::string unitName;        ///< "mm", "96 dpi"; may be empty
    units::Length holeAllowance; ///< by which the holes are drawn larger than the stones
    std::string counts;          ///< what was counted, as JSON; empty: not kept

    friend bool operator==(const DesignArtwork&, const DesignArtwork&) = default;
};

/// The stone that the owner chose for a colour in a drawing, remembered for the next drawing.
struct ColourMaterial {
    base::Id id;           ///< given by the book
    std::uint32_t rgb = 0; ///< 0xRRGGBB as drawn
    std::string stoneSize; ///< a name of the SS table
    base::Id material;

    friend bool operator==(const ColourMaterial&, const ColourMaterial&) = default;
};

} // namespace sp::catalogue
