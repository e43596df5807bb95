// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <string>

namespace sp::artwork {

/// The bytes of a customer's file, read to its end. Errors: Missing (not there, or not to be read), TooLarge (64 MB),
/// Failed (it broke off).
base::Result<std::string> bytesOfFile(const std::string& file);

} // namespace sp::artwork
