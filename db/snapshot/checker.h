// SPDX-License-Identifier: MIT
#pragma once

#include "db/refusal.h"
#include "db/snapshot/records.h"

#include <array>
#include <string>
#include <vector>

namespace sp::db::snapshot {

/// What a number reads as in the sentence that refuses it: "12.50", "3.5 mm", "8.875 %".
std::string inWords(std::int64_t value);
std::string inWords(units::Money value);
std::string inWords(units::Length value);
std::string inWords(units::Rate value);
std::string inWords(units::Duration value);
std::string inWords(units::Count value);

/// Visits the fields of a value and refuses, as Invalid, what is out of its bounds.
class Checker {
  public:
    /// `thing` is how the person knows it: a name, or empty.
    explicit Checker(std::string thing)
        : m_thing(std::move(thing)) {}

    template<class T, class... Bounds>
    void operator()(std::string_view, std::string_view words, const T& value, const Bounds&... bounds) {
        check(words, value, bounds...);
    }

    [[noreturn]] void refuseField(std::string_view words, std::string_view rest) const;

  private:
    void check(std::string_view, bool) {}
    void check(std::string_view words, std::int64_t value, Range range) { inside(words, value, range, value); }
    void check(std::string_view words, std::uint32_t value, Range range) {
        inside(words, std::int64_t{value}, range, std::int64_t{value});
    }
    void check(std::string_view words, units::Money v, Range r) {
        inside(words, v.micros(), r, v, units::Money::fromMicros(r.lowest), units::Money::fromMicros(r.highest));
    }
    void check(std::string_view words, units::Length v, Range r) {
        inside(words, v.nanometres(), r, v, units::Length::fromNanometres(r.lowest),
               units::Length::fromNanometres(r.highest));
    }
    void check(std::string_view words, units::Rate v, Range r) {
        inside(words, v.ppm(), r, v, units::Rate::fromPpm(r.lowest), units::Rate::fromPpm(r.highest));
    }
    void check(std::string_view words, units::Duration v, Range r) {
        inside(words, v.milliseconds(), r, v, units::Duration::fromMilliseconds(r.lowest),
               units::Duration::fromMilliseconds(r.highest));
    }
    void check(std::string_view words, units::Count v, Range r) {
        inside(words, v.value(), r, v, units::Count::of(r.lowest), units::Count::of(r.highest));
    }
    void check(std::string_view words, const std::string& value, Text bounds);
    void check(std::string_view words, const base::Id& value, Key key);
    void check(std::string_view words, units::Date value);
    void check(std::string_view, const units::Currency&) {}
    void check(std::string_view words, units::Temperature value);
    template<Named E>
    void check(std::string_view words, E value) {
        if (wordOf(value).empty()) refuseField(words, "is none of those there are; choose one of the list");
    }
    template<class T, class... Bounds>
    void check(std::string_view words, const std::optional<T>& value, const Bounds&... bounds) {
        if (value) check(words, *value, bounds...);
    }
    template<class T, class... Bounds>
    void check(std::string_view words, const std::vector<T>& values, Length length, const Bounds&... bounds) {
        if (values.size() > length.longest)
            refuseField(words, "are more than " + std::to_string(length.longest) + "; take some out");
        for (const auto& value : values) check(words, value, bounds...);
    }
    template<class T, std::size_t N>
    void check(std::string_view words, const std::array<T, N>& values) {
        for (const auto& value : values) check(words, value);
    }
    template<Walkable T>
    void check(std::string_view, const T& value) {
        Fields<T>::walk(*this, value);
    }

    template<class T, class... Ends>
    void inside(std::string_view words, std::int64_t raw, Range range, const T&, const Ends&... ends) const {
        if (raw >= range.lowest && raw <= range.highest) return;
        if constexpr (sizeof...(ends) == 2)
            refuseRange(words, inWords(ends)...);
        else
            refuseRange(words, inWords(range.lowest), inWords(range.highest));
    }
    [[noreturn]] void refuseRange(std::string_view words, const std::string& lowest, const std::string& highest) const;

    std::string m_thing;
};

} // namespace sp::db::snapshot
