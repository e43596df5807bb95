// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace sp::test {

/// The path of a file below tests/data, such as "books/version_1.sql".
std::string dataFile(std::string_view name);

} // namespace sp::test
