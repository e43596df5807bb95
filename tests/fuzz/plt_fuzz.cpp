// SPDX-License-Identifier: MIT
//
// The PLT reader and the counting behind it, on any bytes.
#include "core/artwork/plt_reader.h"
#include "tests/fuzz/artwork_promises.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    sp::fuzz::checkDrawing(sp::artwork::readPlt(std::string_view(reinterpret_cast<const char*>(data), size), "file",
                                                sp::fuzz::kSmallLimits));
    return 0;
}
