// SPDX-License-Identifier: MIT
#pragma once

#include "db/refusal.h"
#include "db/snapshot/records.h"

#include <nlohmann/json.hpp>

#include <array>
#include <string>
#include <vector>

namespace sp::db::snapshot {

using Json = nlohmann::json;

/// How a temperature is kept: exact in thousandths of a degree of one of the scales, whichever it was typed in.
struct TemperatureParts {
    std::int64_t milli = 0;
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
};
TemperatureParts partsOf(units::Temperature temperature);
units::Temperature fromParts(const TemperatureParts& parts);

/// Visits the fields of a value and makes a JSON object of them.
class Writer {
  public:
    template<class T, class... Bounds>
    void operator()(std::string_view key, std::string_view, const T& value, const Bounds&...) {
        m_object[std::string(key)] = json(value);
    }
    Json take() { return std::move(m_object); }

    static Json json(bool value) { return value; }
    static Json json(std::int64_t value) { return value; }
    static Json json(std::uint32_t value) { return std::int64_t{value}; }
    static Json json(const std::string& value) { return value; }
    static Json json(const base::Id& value) { return value.isNone() ? Json(nullptr) : Json(value.text()); }
    static Json json(units::Money value) { return value.micros(); }
    static Json json(units::Rate value) { return value.ppm(); }
    static Json json(units::Length value) { return value.nanometres(); }
    static Json json(units::Duration value) { return value.milliseconds(); }
    static Json json(units::Count value) { return value.value(); }
    static Json json(units::Date value) { return value.iso(); }
    static Json json(const units::Currency& value) { return value.code(); }
    static Json json(units::Temperature value);
    template<Named E>
    static Json json(E value) {
        return std::string(wordOf(value));
    }
    template<class T>
    static Json json(const std::optional<T>& value) {
        return value ? json(*value) : Json(nullptr);
    }
    template<class T>
    static Json json(const std::vector<T>& values) {
        Json list = Json::array();
        for (const auto& value : values) list.push_back(json(value));
        return list;
    }
    template<class T>
    static Json json(const std::array<T, catalogue::kSteps.size()>& values) {
        Json steps = Json::object();
        for (const auto step : catalogue::kSteps)
            steps[std::string(wordOf(step))] = json(values[static_cast<std::size_t>(step)]);
        return steps;
    }
    template<Walkable T>
    static Json json(const T& value) {
        Writer writer;
        Fields<T>::walk(writer, value);
        return writer.take();
    }

  private:
    Json m_object = Json::object();
};

/// Visits the fields of a value and fills them from a JSON object; refuses, as Damaged, a key that is missing or one
/// too many, and what is not of its type. Ranges are the Checker's.
class Reader {
  public:
    explicit Reader(const Json& object)
        : m_object(object) {
        if (!object.is_object()) refuseAt("the whole");
    }

    template<class T, class... Bounds>
    void operator()(std::string_view key, std::string_view, T& value, const Bounds&...) {
        const auto found = m_object.find(std::string(key));
        if (found == m_object.end()) refuseAt(key);
        m_key = key;
        take(*found, value);
        ++m_taken;
    }
    /// To be called when all fields were visited.
    void finish() const {
        if (m_taken != m_object.size()) refuseAt("a field of another program");
    }

    template<Walkable T>
    static void readInto(const Json& object, T& value) {
        Reader reader(object);
        Fields<T>::walk(reader, value);
        reader.finish();
    }

  private:
    void take(const Json& json, bool& value) const;
    void take(const Json& json, std::int64_t& value) const;
    void take(const Json& json, std::uint32_t& value) const;
    void take(const Json& json, std::string& value) const;
    void take(const Json& json, base::Id& value) const;
    void take(const Json& json, units::Date& value) const;
    void take(const Json& json, units::Currency& value) const;
    void take(const Json& json, units::Temperature& value) const;
    void take(const Json& json, units::Money& value) const { value = units::Money::fromMicros(whole(json)); }
    void take(const Json& json, units::Rate& value) const { value = units::Rate::fromPpm(whole(json)); }
    void take(const Json& json, units::Length& value) const { value = units::Length::fromNanometres(whole(json)); }
    void take(const Json& json, units::Duration& value) const {
        value = units::Duration::fromMilliseconds(whole(json));
    }
    void take(const Json& json, units::Count& value) const { value = units::Count::of(whole(json)); }
    template<Named E>
    void take(const Json& json, E& value) const {
        std::string word;
        take(json, word);
        const auto named = namedBy<E>(word);
        if (!named) refuseAt(m_key);
        value = *named;
    }
    template<class T>
    void take(const Json& json, std::optional<T>& value) const {
        value.reset();
        if (!json.is_null()) take(json, value.emplace());
    }
    template<class T>
    void take(const Json& json, std::vector<T>& values) const {
        if (!json.is_array()) refuseAt(m_key);
        values.clear();
        for (const auto& item : json) take(item, values.emplace_back());
    }
    template<class T>
    void take(const Json& json, std::array<T, catalogue::kSteps.size()>& values) const {
        if (!json.is_object() || json.size() != values.size()) refuseAt(m_key);
        for (const auto step : catalogue::kSteps) {
            const auto found = json.find(std::string(wordOf(step)));
            if (found == json.end()) refuseAt(wordOf(step));
            take(*found, values[static_cast<std::size_t>(step)]);
        }
    }
    template<Walkable T>
    void take(const Json& json, T& value) const {
        readInto(json, value);
    }
    std::int64_t whole(const Json& json) const;
    [[noreturn]] static void refuseAt(std::string_view key);

    const Json& m_object;
    std::string_view m_key;
    std::size_t m_taken = 0;
};

} // namespace sp::db::snapshot
