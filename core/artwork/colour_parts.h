// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/region.h"

#include <string>
#include <string_view>
#include <vector>

namespace sp::artwork {

/// What is to be seen of a drawing in one colour, in millimetres.
struct ColourPart {
    std::string colour; ///< as Ink::colour
    Rings region;       ///< of the kind `regionOf` gives; may be empty
    std::vector<Line> lines;
};

/// A drawing's colours told apart, in the order in which they first appear: what lies on top is cut out of what lies
/// below it, and a colour of which nothing is to be seen has a part all the same. Where the drawing has filled shapes,
/// lines without a filling are lines; where it has none (a cut file), closed ones are areas and a smaller one lies on a
/// larger. Lines that end somewhere come with `withLines` alone. Errors: those of regionOf but Missing; TooLarge also
/// for very many corners in colours by turns.
base::Result<std::vector<ColourPart>> colourPartsOf(const Drawing& drawing, double millimetresPerUnit, bool withLines,
                                                    std::string_view fileName);

} // namespace sp::artwork
