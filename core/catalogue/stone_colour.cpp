// SPDX-License-Identifier: MIT
#include "core/catalogue/stone_colour.h"

#include <algorithm>
#include <array>

namespace sp::catalogue {

namespace {

using enum StoneColour;

constexpr std::array kColours{
    DrawnColour{Crystal, 0xDDE6F0},      DrawnColour{Pearl, 0xF3EBDD},      DrawnColour{Silver, 0xB4B9C0},
    DrawnColour{BlackDiamond, 0x6E7680}, DrawnColour{Hematite, 0x43474F},   DrawnColour{Jet, 0x23262D},
    DrawnColour{Rose, 0xE58BA8},         DrawnColour{LightRose, 0xF4C4D0},  DrawnColour{Fuchsia, 0xC92A83},
    DrawnColour{Coral, 0xEE7A63},        DrawnColour{Red, 0xD32D32},        DrawnColour{Siam, 0xB3202E},
    DrawnColour{Orange, 0xE8761E},       DrawnColour{Amber, 0xD9A03A},      DrawnColour{Topaz, 0xB5742B},
    DrawnColour{Citrine, 0xEBD24A},      DrawnColour{Peridot, 0x9CB84A},    DrawnColour{Emerald, 0x1F8A5B},
    DrawnColour{Turquoise, 0x2BB3A3},    DrawnColour{Aquamarine, 0x4FC3CF}, DrawnColour{LightSapphire, 0x6C9BE0},
    DrawnColour{Sapphire, 0x2748A8},     DrawnColour{Lilac, 0xB79BD8},      DrawnColour{Amethyst, 0x7B3FA0},
    DrawnColour{Brown, 0x6B4226}};

/// The square of the distance. Green is seen best, red better in light colours: the weights of a much used rule of
/// thumb.
std::int64_t distance(std::uint32_t one, std::uint32_t other) {
    const auto part = [](std::uint32_t rgb, int shift) { return static_cast<std::int64_t>((rgb >> shift) & 0xFF); };
    const auto red = part(one, 16) - part(other, 16);
    const auto green = part(one, 8) - part(other, 8);
    const auto blue = part(one, 0) - part(other, 0);
    const auto mean = (part(one, 16) + part(other, 16)) / 2;
    return (512 + mean) * red * red + 1024 * green * green + (767 - mean) * blue * blue;
}

} // namespace

std::span<const DrawnColour> stoneColours() { return kColours; }

StoneColour nearestColour(std::uint32_t rgb) {
    return std::ranges::min_element(kColours, {}, [&](const DrawnColour& one) { return distance(one.rgb, rgb); })
        ->colour;
}

} // namespace sp::catalogue
