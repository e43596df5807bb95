// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/region.h"

#include <memory>
#include <string>

namespace sp::artwork {

/// A file whose shapes are to be set with stones.
struct ShapeFile {
    std::string name; ///< without folder
    std::string bytes;
    Drawing drawing;
    Box box; ///< around its shapes, else its lines, in units of the drawing; neither side is nothing
};

/// Reads an SVG, DXF or PLT file for its shapes. Errors: those of bytesOfFile and readArtwork; Missing when there is no
/// closed or filled outline and no line that is neither level nor upright.
base::Result<std::shared_ptr<const ShapeFile>> readShapeFile(const std::string& path, const std::string& name);

/// Outlines in millimetres as an SVG file, one path for each shape, so that a book can keep what has no file of its
/// own. Reading it with readArtwork gives the same outlines, to a ten-thousandth of a millimetre.
std::string svgOf(std::span<const Shape> shapes);

} // namespace sp::artwork
