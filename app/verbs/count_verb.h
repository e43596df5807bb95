// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/artwork/count.h"
#include "core/artwork/scale.h"

#include <optional>
#include <string>
#include <string_view>

namespace sp::verbs {

/// What `stonepenny count FILE` is told beside the file.
struct CountRequest {
    std::string fileName;                        ///< for the sentences
    std::optional<artwork::ScaleProposal> scale; ///< from artwork::parseScale; else the file's, else the likeliest
    units::Length holeAllowance;
    std::span<const artwork::StoneSize> sizes = artwork::publishedStoneSizes();
};

/// Counts the stones in the bytes of an SVG, DXF or PLT file:
/// {"size_mm":[w,h],"scale":{"mm_per_unit":"..","from":".."},"stones":[{"colour","layer","size","diameter_mm":[..],
/// "count"}],"duplicates","collisions","left_out":[{"reason","count"}],"warnings":[..]}.
/// `size_mm` are numbers to a thousandth, around all stones; `from` is "given", "file" or "guess"; `size` is
/// null where no stone fits. Errors: those of readArtwork and countStones.
base::Result<Json> countStonesVerb(std::string bytes, const CountRequest& request);

/// Which scale to read a drawing by, and where it comes from.
struct ChosenScale {
    double millimetresPerUnit = 1;
    std::string from;
};
std::vector<std::string> sentencesOf(const std::vector<base::Message>& warnings);

/// `wished` if there is one, else the file's own, else the likeliest, with a warning added to `warnings`.
ChosenScale chooseScale(const artwork::Drawing& drawing, const std::optional<artwork::ScaleProposal>& wished,
                        const artwork::CountOptions& options, std::vector<std::string>& warnings);

/// {"mm_per_unit":"..","from":".."}
Json scaleJson(const ChosenScale& scale);

} // namespace sp::verbs
