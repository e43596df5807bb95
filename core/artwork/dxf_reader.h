// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <string_view>

namespace sp::artwork {

/// Reads the entities of an ASCII DXF drawing (DXF reference, group codes): CIRCLE, ARC (arcs that make a
/// circle together become one disc), ELLIPSE, LWPOLYLINE and POLYLINE with bulges, SPLINE, LINE, and INSERT
/// of blocks with scale, turn and arrays. Layers and colours by name, by layer and by block; layers that are
/// off or frozen and invisible entities are left out as hidden. Other entities are named and counted, points
/// and hatches with what to do. The y
/// axis is turned to grow downwards. Millimetres per unit come from $INSUNITS, when it names a unit. Errors:
/// Damaged (breaks off or is garbled), TooLarge (a bound of drawing.h).
base::Result<Drawing> readDxf(std::string_view text, std::string_view fileName, const Limits& limits = {});

/// 0xRRGGBB of a colour number 1 to 255; 7, the colour of the pen on paper, is black.
std::uint32_t colourOfNumber(int number);

} // namespace sp::artwork
