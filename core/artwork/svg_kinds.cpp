// SPDX-License-Identifier: MIT
#include "core/artwork/svg_kinds.h"

#include <unordered_map>

namespace sp::artwork {

SvgKind svgKindOf(std::string_view name) {
    static const std::unordered_map<std::string_view, SvgKind> kinds = {
        {"g", SvgKind::Group},
        {"a", SvgKind::Group},
        {"svg", SvgKind::Svg},
        {"switch", SvgKind::Switch},
        {"use", SvgKind::Use},
        {"circle", SvgKind::Circle},
        {"ellipse", SvgKind::Ellipse},
        {"rect", SvgKind::Rectangle},
        {"path", SvgKind::Path},
        {"polygon", SvgKind::Polygon},
        {"polyline", SvgKind::Polyline},
        {"line", SvgKind::Line},
        {"text", SvgKind::Text},
        {"flowRoot", SvgKind::Text},
        {"image", SvgKind::Image},
        {"foreignObject", SvgKind::Foreign},
        {"script", SvgKind::Script},
        {"defs", SvgKind::NotDrawn},
        {"symbol", SvgKind::NotDrawn},
        {"clipPath", SvgKind::NotDrawn},
        {"mask", SvgKind::NotDrawn},
        {"pattern", SvgKind::NotDrawn},
        {"marker", SvgKind::NotDrawn},
        {"linearGradient", SvgKind::NotDrawn},
        {"radialGradient", SvgKind::NotDrawn},
        {"meshgradient", SvgKind::NotDrawn},
        {"hatch", SvgKind::NotDrawn},
        {"filter", SvgKind::NotDrawn},
        {"font", SvgKind::NotDrawn},
        {"font-face", SvgKind::NotDrawn},
        {"style", SvgKind::NotDrawn},
        {"title", SvgKind::NotDrawn},
        {"desc", SvgKind::NotDrawn},
        {"metadata", SvgKind::NotDrawn},
        {"view", SvgKind::NotDrawn},
        {"cursor", SvgKind::NotDrawn},
        {"color-profile", SvgKind::NotDrawn},
        {"animate", SvgKind::NotDrawn},
        {"animateMotion", SvgKind::NotDrawn},
        {"animateTransform", SvgKind::NotDrawn},
        {"animateColor", SvgKind::NotDrawn},
        {"set", SvgKind::NotDrawn},
    };
    const auto found = kinds.find(name);
    return found == kinds.end() ? SvgKind::Unknown : found->second;
}

} // namespace sp::artwork
