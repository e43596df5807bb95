// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/artwork/estimate.h"
#include "core/artwork/scale.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sp::verbs {

/// How one colour of a drawing is set, where it is not as the others are.
struct ColourOrder {
    std::string colour;                 ///< "#rrggbb"
    std::string stone;                  ///< empty: the colour is left free
    std::optional<units::Length> pitch; ///< none: as the others
};

/// What `stonepenny estimate` is told beside the shape.
struct EstimateOrder {
    std::string name;  ///< of the file, or the lettering, for the sentences
    std::string stone; ///< "SS10", in any case
    units::Length pitch;
    units::Length edge;
    artwork::StoneStyle style = artwork::StoneStyle::Fill;
    std::string outlineStone = {};                    ///< with StoneStyle::Both; empty: the same stone
    std::optional<units::Length> outlinePitch = {};   ///< none: the same pitch
    bool byColour = false;                            ///< of a file: each colour by itself
    std::vector<ColourOrder> colours = {};            ///< white is left free beside others, if it is not here
    bool withLines = false;                           ///< of a file: rows along lines that end somewhere
    std::optional<artwork::ScaleProposal> scale = {}; ///< of a file; see CountRequest
    std::span<const artwork::StoneSize> sizes = artwork::publishedStoneSizes();
};

/// "outline", "fill" or "both". Errors: Invalid.
base::Result<artwork::StoneStyle> parseStyle(std::string_view text);

/// "red=SS16@4.5mm,blue=SS10,white=none": a colour as CSS has it, its stone size and, if it is another, its pitch.
/// Errors: Invalid.
base::Result<std::vector<ColourOrder>> parseColours(std::string_view text);

/// About how many stones the shapes in an SVG, DXF or PLT file take:
/// {"estimate":true,"stone","pitch_mm","count","least","most","style","range":[..],"how","size_mm":[w,h],"area_mm2",
/// "outline_mm","lines_mm","scale":{..},"warnings":[..]}; with an outline in another stone
/// "outline":{"stone","pitch_mm", "count","least","most"} of it and "filling" alike; by colour the sum, and
/// "colours":[{"colour",..as above}] or
/// {"colour","free":true} in drawing order. The stone is taken at the middle of its size's range. Where a file has
/// nothing but lines that end somewhere, they are set.
/// Errors: those of readArtwork, estimateStones and estimateByColour; NotFound for a stone size that is not in the
/// table, and for a colour that is not in the file.
base::Result<Json> estimateFile(std::string bytes, const EstimateOrder& order);

/// The same for outlines in millimetres, which is how lettering comes; without "scale".
base::Result<Json> estimateShapes(std::span<const artwork::Shape> shapes, const EstimateOrder& order);

} // namespace sp::verbs
