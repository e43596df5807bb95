// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"

#include <cstddef>
#include <string>
#include <vector>

namespace sp::quoting {

/// The letter that a colour or a piece goes by where colours cannot be told apart: A to Z, then AA. From 0.
std::string letterOf(std::size_t index);

/// The stones in the order in which colours are brushed and take their letters: most first, of equals as they were
/// (common practice, no source).
std::vector<catalogue::StoneCount> mostFirst(std::vector<catalogue::StoneCount> stones);

} // namespace sp::quoting
