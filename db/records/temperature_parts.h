// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/temperature.h"
#include "core/units/text.h"

#include <cstdint>

namespace sp::db::records {

/// How a temperature is kept: exact in thousandths of a degree of one of the scales, whichever it was typed in.
struct TemperatureParts {
    std::int64_t milli = 0;
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
};
TemperatureParts partsOf(units::Temperature temperature);
units::Temperature fromParts(const TemperatureParts& parts);

} // namespace sp::db::records
