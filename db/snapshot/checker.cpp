// SPDX-License-Identifier: MIT
#include "db/snapshot/checker.h"

#include "db/sqlite/utf8.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::db::snapshot {

namespace {

/// A decimal of `value` in millionths, without trailing zeros.
std::string millionths(std::int64_t value) {
    const bool isNegative = value < 0;
    const auto size = isNegative ? 0 - static_cast<std::uint64_t>(value) : static_cast<std::uint64_t>(value);
    std::string text = fmt::format("{}{}.{:06}", isNegative ? "-" : "", size / 1'000'000, size % 1'000'000);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

} // namespace

std::string inWords(std::int64_t value) { return fmt::format("{}", value); }
std::string inWords(units::Money value) { return millionths(value.micros()); }
std::string inWords(units::Length value) { return millionths(value.nanometres()) + " mm"; }
std::string inWords(units::Rate value) { return millionths(value.ppm() * 100) + " %"; }
std::string inWords(units::Duration value) { return fmt::format("{} s", millionths(value.milliseconds() * 1'000)); }
std::string inWords(units::Count value) { return fmt::format("{}", value.value()); }

void Checker::refuseField(std::string_view words, std::string_view rest) const {
    const std::string of = m_thing.empty() ? std::string() : fmt::format(" of “{}”", m_thing);
    refuse(base::Code::Invalid, std::string(words), fmt::format("The {}{} {}.", words, of, rest));
}

void Checker::refuseRange(std::string_view words, const std::string& lowest, const std::string& highest) const {
    refuseField(words, fmt::format("must be from {} to {}", lowest, highest));
}

void Checker::check(std::string_view words, const std::string& value, Text bounds) {
    if (!sqlite::isText(value)) refuseField(words, "holds characters that are not text; type it again");
    if (value.size() < bounds.shortest) refuseField(words, "is missing; type one");
    if (value.size() > bounds.longest)
        refuseField(words, fmt::format("is longer than {} bytes; shorten it", bounds.longest));
    const bool hasControls = std::any_of(value.begin(), value.end(), [&](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && !(bounds.hasLines && (c == '\n' || c == '\t'))) || byte == 0x7F;
    });
    if (hasControls) refuseField(words, "holds control characters; type it again");
    if (bounds.shortest == 1 && value.find_first_not_of(' ') == std::string::npos)
        refuseField(words, "is missing; type one");
}

void Checker::check(std::string_view words, const base::Id& value, Key key) {
    if (key == Key::Needed && value.isNone()) refuseField(words, "is missing; choose one");
}

void Checker::check(std::string_view words, units::Date value) {
    const auto first = std::chrono::sys_days(std::chrono::year(1) / 1 / 1);
    const auto last = std::chrono::sys_days(std::chrono::year(9999) / 12 / 31);
    if (value.days() < first || value.days() > last) refuseField(words, "must be a day of the years 1 to 9999");
}

void Checker::check(std::string_view words, units::Temperature value) {
    // -50 to 500 °C is what a person can type, see parseTemperature.
    if (value < units::Temperature::fromMillicelsius(-50'000) || value > units::Temperature::fromMillicelsius(500'000))
        refuseField(words, "must be from -50 to 500 °C");
}

} // namespace sp::db::snapshot
