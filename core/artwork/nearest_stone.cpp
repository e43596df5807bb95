// SPDX-License-Identifier: MIT
#include "core/artwork/nearest_stone.h"

#include "core/artwork/colour.h"

#include <cmath>

namespace sp::artwork {

namespace {

double linear(std::uint32_t channel) {
    const double share = static_cast<double>(channel & 0xFF) / 255;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double labShare(double ratio) {
    constexpr double kBend = 6.0 / 29;
    return ratio > kBend * kBend * kBend ? std::cbrt(ratio) : ratio / (3 * kBend * kBend) + 4.0 / 29;
}

} // namespace

Lab labOf(std::uint32_t rgb) {
    const double red = linear(rgb >> 16);
    const double green = linear(rgb >> 8);
    const double blue = linear(rgb);
    const double x = labShare((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.95047);
    const double y = labShare(0.2126 * red + 0.7152 * green + 0.0722 * blue);
    const double z = labShare((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.08883);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double colourDistance(std::uint32_t one, std::uint32_t other) {
    const Lab from = labOf(one);
    const Lab to = labOf(other);
    return std::hypot(to.lightness - from.lightness, to.a - from.a, to.b - from.b);
}

std::optional<base::Id> nearestStone(std::string_view colour, std::string_view size,
                                     std::span<const catalogue::Material> materials) {
    const auto drawn = parseColour(colour);
    std::optional<base::Id> best;
    double bestDistance = 0;
    for (const auto& material : materials) {
        if (material.kind != catalogue::MaterialKind::Stone || material.stone.size != size) continue;
        const double away = drawn ? colourDistance(*drawn, material.stone.rgb) : 0;
        if (best && away >= bestDistance) continue;
        best = material.id;
        bestDistance = away;
    }
    return best;
}

} // namespace sp::artwork
