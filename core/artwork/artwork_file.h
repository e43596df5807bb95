// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <string>
#include <string_view>

namespace sp::artwork {

/// Reads the bytes of a customer's file, SVG, DXF or PLT by what is in it, never by its name.
/// Errors: those of readSvg, readDxf and readPlt; Missing (an empty file); Foreign (something else, named where it can
/// be: a bitmap, a zip, a compressed SVG, a PDF).
base::Result<Drawing> readArtwork(std::string bytes, std::string_view fileName);

} // namespace sp::artwork
