// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/region.h"
#include "core/units/length.h"

#include <string>
#include <vector>

namespace sp::artwork {

/// What is to be spelled before there is artwork.
struct LetteringOrder {
    std::string text;     ///< UTF-8, one or several lines
    std::string font;     ///< an installed family, in any case
    units::Length height; ///< of its capital letters, > 0
};

/// The outlines of lettering in millimetres, lines under each other at the font's own distance; curves are flattened to
/// a few thousandths of the height. Letters fill non-zero, as fonts do. Needs a QGuiApplication.
/// Errors: NotFound (no such font; none is taken in its place), Missing (nothing that leaves an outline), OutOfRange (a
/// height of nothing or above 10 m), TooLarge (more than 2,000 letters).
base::Result<std::vector<Shape>> outlinesOf(const LetteringOrder& order);

} // namespace sp::artwork
