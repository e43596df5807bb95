// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string_view>

namespace sp::artwork {

/// What an SVG element is to a count of stones.
enum class SvgKind : std::uint8_t {
    Group, ///< g, a: only holds others
    Svg,
    Switch,
    Use,
    Circle,
    Ellipse,
    Rectangle,
    Path,
    Polygon,
    Polyline,
    Line,
    Text,
    Image,
    Foreign,
    Script,
    NotDrawn, ///< defs and all that stands for something else
    Unknown
};

/// By its name without a prefix.
SvgKind svgKindOf(std::string_view name);

} // namespace sp::artwork
