// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/estimate.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::artwork {

/// How one colour of a drawing is set with stones.
struct ColourRequest {
    std::string colour;                    ///< as Ink::colour
    std::optional<EstimateRequest> stones; ///< none: the colour is left free, and only cut out of what lies below it
};

struct ColourEstimate {
    std::string colour;
    bool isFree = false; ///< asked to be left so; its estimate is empty then
    Estimate estimate;   ///< without stones where nothing of the colour is to be seen, or it is too narrow (`bare`)
};

/// The colours of a drawing's closed or filled outlines, discs and lines, in drawing order, each once.
std::vector<std::string> coloursOf(const Drawing& drawing);

/// White as drawings have it: where there are other colours, it is the paper as a rule, and free.
inline constexpr std::string_view kWhite = "#ffffff";

/// Stones for each colour of a drawing by itself, told apart as colourPartsOf does, in its order. A colour that
/// `requests` do not name is left free. `withLines`: lines that end somewhere get a row of stones.
/// Stones of two colours keep clear of each other. Errors: those of colourPartsOf and estimateStones; Missing when
/// there is nothing to set, or no stone fits anywhere.
base::Result<std::vector<ColourEstimate>> estimateByColour(const Drawing& drawing, double millimetresPerUnit,
                                                           std::span<const ColourRequest> requests, bool withLines,
                                                           std::string_view fileName);

} // namespace sp::artwork
