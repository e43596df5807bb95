// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>

namespace sp::catalogue {

/// Colours that stones are sold in, by which a picture's colour is chosen. What makers call theirs differs; these are
/// the words that several use. Common practice, no source.
enum class StoneColour {
    Crystal,
    Pearl,
    Silver,
    BlackDiamond,
    Hematite,
    Jet,
    Rose,
    LightRose,
    Fuchsia,
    Coral,
    Red,
    Siam,
    Orange,
    Amber,
    Topaz,
    Citrine,
    Peridot,
    Emerald,
    Turquoise,
    Aquamarine,
    LightSapphire,
    Sapphire,
    Lilac,
    Amethyst,
    Brown,
};

/// How one is drawn.
struct DrawnColour {
    StoneColour colour;
    std::uint32_t rgb; ///< 0xRRGGBB; by eye
};

/// All of them, in the order above: without a hue, then round the circle of hues.
std::span<const DrawnColour> stoneColours();

/// The one that is drawn most like that, by the distance that the eye sees in red, green and blue.
StoneColour nearestColour(std::uint32_t rgb);

} // namespace sp::catalogue
