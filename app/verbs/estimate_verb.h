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

/// What `stonepenny estimate` is told beside the shape.
struct EstimateOrder {
    std::string name;  ///< of the file, or the lettering, for the sentences
    std::string stone; ///< "SS10", in any case
    units::Length pitch;
    units::Length edge;
    artwork::StoneStyle style = artwork::StoneStyle::Fill;
    std::optional<artwork::ScaleProposal> scale; ///< of a file; see CountRequest
    std::span<const artwork::StoneSize> sizes = artwork::publishedStoneSizes();
};

/// "outline", "fill" or "both". Errors: Invalid.
base::Result<artwork::StoneStyle> parseStyle(std::string_view text);

/// About how many stones the shapes in an SVG, DXF or PLT file take:
/// {"estimate":true,"stone","pitch_mm","style","count","least","most","how","size_mm":[w,h],"area_mm2","outline_mm",
/// "scale":{..},"warnings":[..]}. The stone is taken at the middle of its size's range.
/// Errors: those of readArtwork and estimateStones; NotFound for a stone size that is not in the table.
base::Result<Json> estimateFile(std::string bytes, const EstimateOrder& order);

/// The same for outlines in millimetres, which is how lettering comes; without "scale".
base::Result<Json> estimateShapes(std::span<const artwork::Shape> shapes, const EstimateOrder& order);

} // namespace sp::verbs
