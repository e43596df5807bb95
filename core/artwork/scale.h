// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/count.h"

#include <string>
#include <vector>

namespace sp::artwork {

/// One way to read a drawing without units, and what it would give.
struct ScaleProposal {
    std::string name; ///< "96 dpi", "90 dpi", "72 dpi", "mm", "in"
    double millimetresPerUnit = 1;
    std::size_t fitting = 0; ///< discs that fit a stone size
    double misfit = 0;       ///< mean distance of those from the middle of their size, as a share of it
};

/// All five, the best first: most discs that fit a size, then the least misfit, then the order above. Where
/// nothing fits at all, that order. `options.millimetresPerUnit` is not looked at. Discs drawn twice weigh
/// twice.
std::vector<ScaleProposal> proposeScales(const Drawing& drawing, const CountOptions& options);

/// Reads what a person says a unit is: "96 dpi" (also 96dpi), "mm", "in", "cm", or millimetres per unit as a
/// plain number ("0.2646"). Errors: Invalid, OutOfRange outside 1e-6 to 1e6 mm.
base::Result<ScaleProposal> parseScale(std::string_view text);

} // namespace sp::artwork
