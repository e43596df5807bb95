// SPDX-License-Identifier: MIT
//
// The SVG reader and the counting behind it, on any bytes.
#include "core/artwork/svg_reader.h"
#include "tests/fuzz/artwork_promises.h"

#include <cstddef>
#include <cstdint>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    sp::fuzz::checkDrawing(
        sp::artwork::readSvg(std::string(reinterpret_cast<const char*>(data), size), "file", sp::fuzz::kSmallLimits));
    return 0;
}
