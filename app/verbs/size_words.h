// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/text.h"

#include <string_view>

namespace sp::verbs {

/// A width and a height as written on a command line or in a problem file, and the unit of the latter.
struct Size {
    units::Length width;
    units::Length height;
    units::LengthUnit unit = units::LengthUnit::Inch;
};

/// Reads "9x12in", "3.5 x 2.75 in", "90mm x 4in", "228.6×304.8mm": a side without a unit takes that of the other.
/// Errors: Invalid when there are not two sides or no unit at all; what parseLength refuses.
base::Result<Size> parseSize(std::string_view text);

/// Whether a length is nothing but numbers, and not zero.
bool saysNoUnit(std::string_view length);

/// Reads "0.25in", "6mm", "1/4 in", "0": a length of a verb or a problem file says its unit, none is guessed.
/// Errors: Invalid where it says none; what parseLength refuses.
base::Result<units::Length> parseStatedLength(std::string_view text);

} // namespace sp::verbs
