// SPDX-License-Identifier: MIT
#pragma once

#include <stdexcept>

namespace sp::base {

/// Thrown by the arithmetic of strong types when a result does not fit; never a wrap. It stays inside core:
/// the functions that other rooms call (priceOrder and its like) catch it and answer with Code::TooLarge.
class Overflow : public std::overflow_error {
  public:
    Overflow()
        : std::overflow_error("a figure is larger than the program works with") {}
};

} // namespace sp::base
