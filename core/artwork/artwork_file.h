// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <string>
#include <string_view>

namespace sp::artwork {

/// Reads the bytes of a customer's file, SVG, DXF or PLT by what is in it, never by its name.
/// What gzip packed, such as an SVGZ, is unpacked first.
/// Errors: those of readSvg, readDxf, readPlt and unpackGzip; Missing (an empty file); Foreign (something else, named
/// where it is known: foreign_kinds.h).
base::Result<Drawing> readArtwork(std::string bytes, std::string_view fileName);

} // namespace sp::artwork
