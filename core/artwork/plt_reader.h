// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <string_view>

namespace sp::artwork {

/// Reads a plot file of HP-GL/2 (HP PCL 5 technical reference, part II, chapters 17 to 23): what is drawn with the pen
/// down (PA, PR, PD, PU, PE), circles and arcs (CI, AA, AR, AT, RT), curves (BZ, BR), rectangles and wedges (EA, ER,
/// EW, RA, RR, WG), polygons (PM with EP, FP), with user units (SC, IP). A pen is a layer, "SP2", and a colour; lines
/// drawn without one (SP0) are left out as not painted, labels as text. Sheets of one file (PG and the like) lie side
/// by side. The y axis is turned to grow downwards. A unit is 0.025 mm, unless the file has user units between points
/// that it does not set: then it has none.
/// Errors: Damaged (breaks off or is garbled), TooLarge (a bound of drawing.h).
base::Result<Drawing> readPlt(std::string_view text, std::string_view fileName, const Limits& limits = {});

} // namespace sp::artwork
