// SPDX-License-Identifier: MIT
#include "db/snapshot/json.h"

#include <fmt/format.h>

#include <limits>

namespace sp::db::snapshot {

TemperatureParts partsOf(units::Temperature temperature) {
    if (units::Temperature::fromMillicelsius(temperature.millicelsius()) == temperature)
        return {temperature.millicelsius(), units::TemperatureUnit::Celsius};
    return {temperature.millifahrenheit(), units::TemperatureUnit::Fahrenheit};
}

units::Temperature fromParts(const TemperatureParts& parts) {
    return parts.unit == units::TemperatureUnit::Celsius ? units::Temperature::fromMillicelsius(parts.milli)
                                                         : units::Temperature::fromMillifahrenheit(parts.milli);
}

Json Writer::json(units::Temperature value) {
    const auto parts = partsOf(value);
    return {{"milli", parts.milli}, {"unit", std::string(wordOf(parts.unit))}};
}

void Reader::refuseAt(std::string_view key) {
    refuse(base::Code::Damaged, std::string(key),
           fmt::format("A saved record is damaged: “{}” is missing or holds what cannot stand there; open a backup.",
                       key));
}

std::int64_t Reader::whole(const Json& json) const {
    if (!json.is_number_integer()) refuseAt(m_key);
    if (json.is_number_unsigned() &&
        json.get<std::uint64_t>() > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()))
        refuseAt(m_key);
    return json.get<std::int64_t>();
}

void Reader::take(const Json& json, bool& value) const {
    if (!json.is_boolean()) refuseAt(m_key);
    value = json.get<bool>();
}

void Reader::take(const Json& json, std::int64_t& value) const { value = whole(json); }

void Reader::take(const Json& json, std::uint32_t& value) const {
    const auto number = whole(json);
    if (number < 0 || number > std::numeric_limits<std::uint32_t>::max()) refuseAt(m_key);
    value = static_cast<std::uint32_t>(number);
}

void Reader::take(const Json& json, std::string& value) const {
    if (!json.is_string()) refuseAt(m_key);
    value = json.get<std::string>();
}

void Reader::take(const Json& json, base::Id& value) const {
    value = {};
    if (json.is_null()) return;
    std::string text;
    take(json, text);
    const auto id = base::Id::parse(text);
    if (!id || id->isNone()) refuseAt(m_key);
    value = *id;
}

void Reader::take(const Json& json, units::Date& value) const {
    std::string text;
    take(json, text);
    const auto day = units::Date::parse(text);
    if (!day) refuseAt(m_key);
    value = *day;
}

void Reader::take(const Json& json, units::Currency& value) const {
    std::string code;
    take(json, code);
    const auto currency = units::Currency::parse(code);
    if (!currency) refuseAt(m_key);
    value = *currency;
}

void Reader::take(const Json& json, units::Temperature& value) const {
    if (!json.is_object() || json.size() != 2 || !json.contains("milli") || !json.contains("unit")) refuseAt(m_key);
    TemperatureParts parts;
    parts.milli = whole(json["milli"]);
    if (parts.milli < -1'000'000'000 || parts.milli > 1'000'000'000) refuseAt(m_key);
    take(json["unit"], parts.unit);
    value = fromParts(parts);
}

} // namespace sp::db::snapshot
