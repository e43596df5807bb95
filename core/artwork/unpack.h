// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace sp::artwork {

/// Whether these bytes begin as gzip does (RFC 1952, section 2.3).
bool isGzip(std::string_view bytes);

/// What gzip packed. Errors: Damaged (breaks off or is garbled), TooLarge (more than `most` bytes come out; no more
/// than that is ever unpacked).
base::Result<std::string> unpackGzip(std::string_view bytes, std::size_t most, std::string_view fileName);

} // namespace sp::artwork
