// SPDX-License-Identifier: MIT
#include "db/records/temperature_parts.h"

namespace sp::db::records {

TemperatureParts partsOf(units::Temperature temperature) {
    if (units::Temperature::fromMillicelsius(temperature.millicelsius()) == temperature)
        return {temperature.millicelsius(), units::TemperatureUnit::Celsius};
    return {temperature.millifahrenheit(), units::TemperatureUnit::Fahrenheit};
}

units::Temperature fromParts(const TemperatureParts& parts) {
    return parts.unit == units::TemperatureUnit::Celsius ? units::Temperature::fromMillicelsius(parts.milli)
                                                         : units::Temperature::fromMillifahrenheit(parts.milli);
}

} // namespace sp::db::records
