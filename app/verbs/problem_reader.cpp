// SPDX-License-Identifier: MIT
#include "app/verbs/problem_reader.h"

#include "app/words/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <set>

namespace sp::verbs {

using base::Code;

namespace {

constexpr std::size_t kMaxFile = 16 * 1024 * 1024;

/// Throws the sentence, whose first value is the place in the problem.
template<class... Values>
[[noreturn]] void throwError(Code code, const std::string& place, const char* source, const Values&... values) {
    const auto shown = place.empty() ? words::told(QT_TRANSLATE_NOOP("App", "The file"), {}).toStdString() : place;
    throw ProblemError{words::makeError(code, place, source, shown, values...)};
}

/// A name from the file as a person can be shown it.
std::string shown(std::string_view name) {
    std::string out;
    for (const char c : name.substr(0, 60)) out += static_cast<unsigned char>(c) < 0x20 ? '?' : c;
    return out;
}

std::string numberText(const Json& json, const std::string& place) {
    if (json.is_string()) return json.get<std::string>();
    if (json.is_number()) return json.dump();
    throwError(Code::Invalid, place, QT_TRANSLATE_NOOP("App", "%1 must be a number, as in 12 or \"12.50\"."));
}

} // namespace

std::int64_t exactDecimal(std::string_view text, int decimals, const std::string& place) {
    const auto unreadable = [&] {
        throwError(Code::Invalid, place, QT_TRANSLATE_NOOP("App", "%1 must be a number, as in 12 or \"12.50\"."));
    };
    std::string_view rest = text;
    const bool negative = !rest.empty() && rest.front() == '-';
    if (negative) rest.remove_prefix(1);
    int exponent = 0;
    if (const auto e = rest.find_first_of("eE"); e != std::string_view::npos) {
        std::string_view power = rest.substr(e + 1);
        if (!power.empty() && power.front() == '+') power.remove_prefix(1);
        const auto read = std::from_chars(power.data(), power.data() + power.size(), exponent);
        if (read.ec != std::errc() || read.ptr != power.data() + power.size() || exponent < -40 || exponent > 40)
            unreadable();
        rest = rest.substr(0, e);
    }
    std::string digits;
    const auto point = rest.find('.');
    const std::string_view whole = rest.substr(0, point);
    const std::string_view part = point == std::string_view::npos ? std::string_view() : rest.substr(point + 1);
    digits.append(whole).append(part);
    if (whole.empty() || (point != std::string_view::npos && part.empty()) || digits.size() > 60 ||
        !std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; }))
        unreadable();
    int shift = decimals + exponent - static_cast<int>(part.size());
    while (shift < 0 && !digits.empty()) {
        if (digits.back() != '0')
            throwError(Code::OutOfRange, place, QT_TRANSLATE_NOOP("App", "%1 must have %2 decimals at most."),
                       decimals);
        digits.pop_back();
        ++shift;
    }
    std::int64_t value = 0;
    constexpr std::int64_t kMax = 1'000'000'000'000'000'000;
    for (const char c : digits) {
        if (value > kMax / 10)
            throwError(Code::TooLarge, place, QT_TRANSLATE_NOOP("App", "%1 is larger than the program works with."));
        value = value * 10 + (c - '0');
    }
    for (; shift > 0 && value != 0; --shift) {
        if (value > kMax / 10)
            throwError(Code::TooLarge, place, QT_TRANSLATE_NOOP("App", "%1 is larger than the program works with."));
        value *= 10;
    }
    if (value > kMax)
        throwError(Code::TooLarge, place, QT_TRANSLATE_NOOP("App", "%1 is larger than the program works with."));
    return negative ? -value : value;
}

Json parsedProblem(std::string_view text) {
    if (text.size() > kMaxFile) throwError(Code::TooLarge, "", QT_TRANSLATE_NOOP("App", "%1 is larger than 16 MB."));
    // JSON lets a key stand twice and most readers take the last: one of the two was not meant.
    std::vector<std::set<std::string>> keys;
    std::string twice;
    const auto look = [&](int, Json::parse_event_t event, Json& parsed) {
        if (event == Json::parse_event_t::object_start) keys.emplace_back();
        if (event == Json::parse_event_t::object_end) keys.pop_back();
        if (event == Json::parse_event_t::key && !keys.back().insert(parsed.get<std::string>()).second)
            twice = parsed.get<std::string>();
        return true;
    };
    Json json = Json::parse(text, look, false);
    if (!twice.empty())
        throwError(Code::Ambiguous, shown(twice),
                   QT_TRANSLATE_NOOP("App", "%1 stands twice in one object: leave one of them."));
    if (json.is_discarded())
        throwError(Code::Invalid, "",
                   QT_TRANSLATE_NOOP("App", "%1 is not JSON: check its brackets, commas and quotes."));
    return json;
}

ProblemObject::ProblemObject(const Json& json, std::string path)
    : m_json(&json)
    , m_path(std::move(path)) {
    if (!json.is_object())
        throwError(Code::Invalid, m_path, QT_TRANSLATE_NOOP("App", "%1 must be an object in braces."));
}

std::string ProblemObject::place(std::string_view key) const {
    return m_path.empty() ? shown(key) : m_path + "." + shown(key);
}

bool ProblemObject::has(std::string_view key) const { return m_json->contains(key); }

const Json& ProblemObject::take(std::string_view key) {
    const auto found = m_json->find(key);
    if (found == m_json->end()) throwError(Code::Missing, place(key), QT_TRANSLATE_NOOP("App", "%1 is missing."));
    m_taken.emplace_back(key);
    return *found;
}

std::string ProblemObject::text(std::string_view key) {
    const Json& json = take(key);
    if (!json.is_string())
        throwError(Code::Invalid, place(key), QT_TRANSLATE_NOOP("App", "%1 must be text in quotes."));
    const auto name = json.get<std::string>();
    if (name.empty() || name.size() > 200 || shown(name.substr(0, 60)) != name.substr(0, 60))
        throwError(Code::Invalid, place(key), QT_TRANSLATE_NOOP("App", "%1 must be 1 to 200 printable letters."));
    return name;
}

units::Count ProblemObject::count(std::string_view key) {
    return units::Count::of(exactDecimal(numberText(take(key), place(key)), 0, place(key)));
}

units::Money ProblemObject::money(std::string_view key) {
    const std::int64_t micros = exactDecimal(numberText(take(key), place(key)), 6, place(key));
    if (micros > 1'000'000'000'000'000 || micros < -1'000'000'000'000'000)
        throwError(Code::TooLarge, place(key), QT_TRANSLATE_NOOP("App", "%1 is larger than the program works with."));
    return units::Money::fromMicros(micros);
}

units::Rate ProblemObject::rate(std::string_view key) {
    return units::Rate::fromPpm(exactDecimal(numberText(take(key), place(key)), 6, place(key)));
}

units::Length ProblemObject::length(std::string_view key) {
    const Json& json = take(key);
    if (!json.is_string())
        throwError(Code::Invalid, place(key),
                   QT_TRANSLATE_NOOP("App", "%1 must be a length in quotes, as in \"0.25in\"."));
    const auto text = json.get<std::string>();
    if (saysNoUnit(text))
        throwError(Code::Invalid, place(key), QT_TRANSLATE_NOOP("App", "%1 says no unit: write it as 0.25in or 6mm."));
    const auto read = parseStatedLength(text);
    if (!read) throw ProblemError{read.error()};
    return *read;
}

Size ProblemObject::size(std::string_view key) {
    const Json& json = take(key);
    if (!json.is_string())
        throwError(Code::Invalid, place(key),
                   QT_TRANSLATE_NOOP("App", "%1 must be a size in quotes, as in \"9x12in\"."));
    const auto read = parseSize(json.get<std::string>());
    if (!read) throw ProblemError{read.error()};
    return *read;
}

bool ProblemObject::flag(std::string_view key) {
    const Json& json = take(key);
    if (!json.is_boolean())
        throwError(Code::Invalid, place(key), QT_TRANSLATE_NOOP("App", "%1 must be true or false."));
    return json.get<bool>();
}

ProblemObject ProblemObject::object(std::string_view key) { return {take(key), place(key)}; }

std::vector<ProblemObject> ProblemObject::list(std::string_view key) {
    const Json& json = take(key);
    if (!json.is_array())
        throwError(Code::Invalid, place(key), QT_TRANSLATE_NOOP("App", "%1 must be a list in square brackets."));
    std::vector<ProblemObject> list;
    for (std::size_t i = 0; i < json.size(); ++i) list.emplace_back(json[i], fmt::format("{}[{}]", place(key), i));
    return list;
}

std::vector<std::pair<std::string, units::Rate>> ProblemObject::shares(std::string_view key) {
    const Json& json = take(key);
    if (!json.is_object())
        throwError(Code::Invalid, place(key),
                   QT_TRANSLATE_NOOP("App", "%1 must be an object of shares, as in {\"M\":\"0.02\"}."));
    std::vector<std::pair<std::string, units::Rate>> shares;
    for (const auto& [name, value] : json.items()) {
        const std::string at = place(key) + "." + shown(name);
        shares.emplace_back(name, units::Rate::fromPpm(exactDecimal(numberText(value, at), 6, at)));
    }
    return shares;
}

void ProblemObject::done() const {
    for (const auto& [key, value] : m_json->items())
        if (std::find(m_taken.begin(), m_taken.end(), key) == m_taken.end())
            throwError(Code::Invalid, place(key),
                       QT_TRANSLATE_NOOP("App", "%1 is not known here: check its spelling or leave it out."));
}

} // namespace sp::verbs
