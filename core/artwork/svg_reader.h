// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <string>
#include <string_view>

namespace sp::artwork {

/// Reads an SVG drawing (SVG 1.1 and the parts of 2 that drawing programs write): every painted circle,
/// ellipse, rectangle, polygon and path with its colour, layer and place, through groups, transforms, use,
/// symbol, nested svg, style sheets and entities of the file itself. Not drawn and so not read: defs, symbols
/// not used, clip paths, masks, patterns, markers, gradients, metadata. Named and counted in `leftOut`:
/// hidden and unpainted outlines, text, bitmaps, dotted lines, patterns and markers, what is unknown. Nothing outside
/// the text is ever opened and no script is run.
///
/// Units of the drawing are those of the viewBox where the file states a physical size, else px of the
/// outermost svg. The layer is the label of the nearest layer group, else the id of the outermost group.
///
/// `text` is UTF-8, UTF-16, UTF-32 or Latin-1 with the usual marks. `fileName` is for the sentences.
/// Errors: Foreign (not SVG), Damaged (ends early or is not well formed), TooLarge (a bound of drawing.h).
base::Result<Drawing> readSvg(std::string text, std::string_view fileName, const Limits& limits = {});

} // namespace sp::artwork
