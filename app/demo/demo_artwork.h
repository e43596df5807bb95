// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::demo {

/// How what one ink of a shape draws is set with stones.
struct InkStones {
    const char* ink;      ///< in the shape's SVG, "#rrggbb"
    const char* material; ///< by its name in the demo's book
    const char* size;     ///< a name of the SS table
    std::uint32_t rgb = 0;
    double pitch = 0; ///< millimetres from centre to centre, at least the stone's diameter
    enum class Style { Outline, Fill, Both } style = Style::Fill;
};

/// A design of the demo before its stones lie: shapes drawn for it and what they are set with.
struct DemoShape {
    const char* design; ///< by its name
    const char* kind;   ///< what it is an example of, for the test
    double width = 0;   ///< millimetres, of the stones
    double height = 0;
    const char* svg; ///< in millimetres
    std::vector<InkStones> inks;
};

/// Six designs of as many kinds: filled, two colours, lettering, outline, three sizes, a row.
std::span<const DemoShape> demoShapes();

struct LaidStones {
    std::string material; ///< by its name in the demo's book
    std::int64_t count = 0;
};

/// A design's stones as they lie.
struct DemoArtwork {
    std::string svg;                ///< a disc for each stone, in millimetres, in the colours of the stones
    std::string counts;             ///< as catalogue::DesignArtwork::counts
    std::vector<LaidStones> stones; ///< by material, most stones first
};

/// Lays the stones by the app's own engine and moves them apart or together by what is missing to the design's size,
/// a few hundredths at most. Errors: those of readSvg and estimateByColour, which the shapes here give none of.
base::Result<DemoArtwork> layStones(const DemoShape& shape);

} // namespace sp::demo
