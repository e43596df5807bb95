// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/geometry.h"

#include <optional>
#include <string_view>

namespace sp::artwork {

/// A length of SVG 1.1 (section 4.2) as written.
struct SvgLength {
    double value = 0;
    std::string_view unit; ///< "", "px", "mm", "cm", "in", "pt", "pc", "q", "%", "em", "ex" in lower case

    /// mm, cm, in, pt, pc and q are sizes in the world; px and bare numbers are not.
    bool isPhysical() const;
    /// In px of 1/96 in; `whole` is what a percentage is of.
    double pixels(double whole) const;
};
std::optional<SvgLength> parseSvgLength(std::string_view text);

inline constexpr double kMillimetresPerPixel = 25.4 / 96; ///< CSS Values and Units Level 3, section 5.2

struct ViewBox {
    double x = 0, y = 0, width = 0, height = 0;
};
/// Nothing when it cannot be read or has no extent.
std::optional<ViewBox> parseViewBox(std::string_view text);

/// SVG 1.1, section 7.8.
struct AspectRatio {
    bool stretch = false; ///< "none"
    bool slice = false;
    double alignX = 0.5; ///< 0 at the beginning, 1 at the end
    double alignY = 0.5;
};
AspectRatio parseAspectRatio(std::string_view text);

/// From the inside of the box to a viewport of this size with its corner at the origin.
Matrix fitViewBox(const ViewBox& box, double width, double height, const AspectRatio& ratio);

/// A list of transforms (SVG 1.1, section 7.6), the first one outermost. Nothing when there is a mistake in
/// it.
std::optional<Matrix> parseTransform(std::string_view text);

/// The same as a property of a style (CSS Transforms Level 1): numbers with units, of lengths and of angles. Nothing
/// for what leaves the plane or is a share of the element's size.
std::optional<Matrix> parseStyleTransform(std::string_view text);

} // namespace sp::artwork
