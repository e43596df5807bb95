// SPDX-License-Identifier: MIT
#include "tests/support/test_data.h"

namespace sp::test {

std::string dataFile(std::string_view name) { return std::string(TEST_DATA "/").append(name); }

} // namespace sp::test
