// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace sp::artwork {

/// A colour as CIE 1976 L*a*b* (CIE 15, D65 white), from sRGB as IEC 61966-2-1 defines it.
struct Lab {
    double lightness = 0; ///< 0 to 100
    double a = 0;
    double b = 0;
};
Lab labOf(std::uint32_t rgb);

/// How far apart two colours look: the straight distance in L*a*b*.
double colourDistance(std::uint32_t one, std::uint32_t other);

/// Which stone a drawn colour most likely stands for: of the stones of that size the one whose colour looks nearest,
/// the first of equals. A colour that is none ("pattern", "") goes to the first stone of the size. Nothing when the
/// materials hold no stone of that size.
std::optional<base::Id> nearestStone(std::string_view colour, std::string_view size,
                                     std::span<const catalogue::Material> materials);

} // namespace sp::artwork
