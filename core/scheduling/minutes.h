// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/duration.h"

#include <cstdint>

namespace sp::scheduling {

/// Whole minutes of a time at the bench, a minute begun counted: what a list and a sheet say.
constexpr std::int64_t minutesBegun(units::Duration time) { return (time.milliseconds() + 59'999) / 60'000; }

} // namespace sp::scheduling
