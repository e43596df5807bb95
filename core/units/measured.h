// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/text.h"

namespace sp::units {

/// The number alone in `unit`, as it is read and measured: inches as a fraction of 16ths where it is one, else with at
/// most two decimals; millimetres with at most one, centimetres with at most two. Halves away from zero. Unlike
/// formatLength it need not read back to the same length, so it is for reading, not for a field.
std::string measuredLength(Length length, LengthUnit unit, const NumberStyle& style = {});

} // namespace sp::units
