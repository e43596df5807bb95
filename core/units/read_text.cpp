// SPDX-License-Identifier: MIT
#include "core/units/characters.h"
#include "core/units/expression.h"
#include "core/units/text.h"

#include "core/base/overflow.h"

#include <algorithm>
#include <array>
#include <vector>

namespace sp::units {

namespace {

using base::Result;

// International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly.
constexpr std::int64_t kYard = 3 * kNanometresPerFoot;
constexpr std::int64_t kCentimetre = 10 * kNanometresPerMillimetre;
constexpr std::int64_t kMetre = 1000 * kNanometresPerMillimetre;
constexpr std::int64_t kMicrometre = kNanometresPerMillimetre / 1000;

constexpr std::array kLengthUnits{
    UnitName{U"in", kNanometresPerInch},
    UnitName{U"inch", kNanometresPerInch},
    UnitName{U"inches", kNanometresPerInch},
    UnitName{U"\"", kNanometresPerInch},
    UnitName{U"''", kNanometresPerInch},
    UnitName{U"ft", kNanometresPerFoot},
    UnitName{U"foot", kNanometresPerFoot},
    UnitName{U"feet", kNanometresPerFoot},
    UnitName{U"'", kNanometresPerFoot},
    UnitName{U"yd", kYard},
    UnitName{U"yds", kYard},
    UnitName{U"yard", kYard},
    UnitName{U"yards", kYard},
    UnitName{U"mm", kNanometresPerMillimetre},
    UnitName{U"millimetre", kNanometresPerMillimetre},
    UnitName{U"millimetres", kNanometresPerMillimetre},
    UnitName{U"millimeter", kNanometresPerMillimetre},
    UnitName{U"millimeters", kNanometresPerMillimetre},
    UnitName{U"cm", kCentimetre},
    UnitName{U"centimetre", kCentimetre},
    UnitName{U"centimetres", kCentimetre},
    UnitName{U"centimeter", kCentimetre},
    UnitName{U"centimeters", kCentimetre},
    UnitName{U"m", kMetre},
    UnitName{U"metre", kMetre},
    UnitName{U"metres", kMetre},
    UnitName{U"meter", kMetre},
    UnitName{U"meters", kMetre},
    UnitName{U"\u00B5m", kMicrometre},
    UnitName{U"um", kMicrometre},
    UnitName{U"micron", kMicrometre},
    UnitName{U"microns", kMicrometre},
};

constexpr std::int64_t kPpmPerPercent = kPpm / 100;
constexpr std::array kRateUnits{UnitName{U"%", kPpmPerPercent}, UnitName{U"percent", kPpmPerPercent},
                                UnitName{U"per cent", kPpmPerPercent}};

constexpr std::int64_t kDozen = 12;
constexpr std::int64_t kGreatGross = 12 * kGross;
constexpr std::array kCountUnits{UnitName{U"gross", kGross}, UnitName{U"great gross", kGreatGross},
                                 UnitName{U"dozen", kDozen}, UnitName{U"dozens", kDozen}, UnitName{U"doz", kDozen}};

constexpr std::int64_t kSecond = 1000;
constexpr std::int64_t kMinute = 60 * kSecond;
constexpr std::array kDurationUnits{
    UnitName{U"ms", 1},
    UnitName{U"s", kSecond},
    UnitName{U"sec", kSecond},
    UnitName{U"secs", kSecond},
    UnitName{U"second", kSecond},
    UnitName{U"seconds", kSecond},
    UnitName{U"m", kMinute},
    UnitName{U"min", kMinute},
    UnitName{U"mins", kMinute},
    UnitName{U"minute", kMinute},
    UnitName{U"minutes", kMinute},
    UnitName{U"h", kMillisecondsPerHour},
    UnitName{U"hr", kMillisecondsPerHour},
    UnitName{U"hrs", kMillisecondsPerHour},
    UnitName{U"hour", kMillisecondsPerHour},
    UnitName{U"hours", kMillisecondsPerHour},
};

struct TemperatureName {
    std::u32string_view name; ///< lower case, folded
    TemperatureUnit unit;
};

constexpr std::array kTemperatureNames{
    TemperatureName{U"fahrenheit", TemperatureUnit::Fahrenheit},
    TemperatureName{U"\u2109", TemperatureUnit::Fahrenheit},
    TemperatureName{U"f", TemperatureUnit::Fahrenheit},
    TemperatureName{U"celsius", TemperatureUnit::Celsius},
    TemperatureName{U"\u2103", TemperatureUnit::Celsius},
    TemperatureName{U"c", TemperatureUnit::Celsius},
};

// Which currencies a sign stands for (common practice; from memory). A sign that is another currency's is
// refused.
struct CurrencySign {
    std::u32string_view sign;
    std::string_view codes;
};

constexpr std::array kCurrencySigns{
    CurrencySign{U"$",
                 "USD AUD CAD NZD HKD SGD TWD MXN ARS CLP COP CLF UYU BBD BMD BND BSD BZD CVE DOP FJD GYD JMD KYD "
                 "LRD NAD NIO SBD SRD TTD XCD"},
    CurrencySign{U"€", "EUR"},
    CurrencySign{U"£", "GBP EGP FKP GIP LBP SHP SYP"},
    CurrencySign{U"¥", "JPY CNY"},
};

/// The least and the most a reader takes, both included.
struct Range {
    std::int64_t least;
    std::int64_t most;
    Note words;
};

/// Checks the exact value; rounding one inside cannot leave the range, whose ends are whole.
Result<Fraction> within(const Range& range, const Fraction& value, const TypedText& text, const Grammar& grammar) {
    try {
        if (!(value < Fraction::of(range.least)) && !(Fraction::of(range.most) < value)) return value;
    } catch (const base::Overflow&) { // too far off, or too fine, to compare: outside either way
    }
    return refuse(Fault::BeyondRange, text, grammar.kind, range.words);
}

Result<Fraction> evaluateWithin(std::string_view text, const Grammar& grammar, const NumberStyle& style,
                                const Range& range, TypedText* taken = nullptr) {
    auto typed = takeIn(text, grammar);
    if (!typed) return base::fail(typed.error());
    if (taken) *taken = *typed;
    const auto value = evaluate(*typed, typed->folded.size(), grammar, style);
    if (!value) return value;
    return within(range, *value, *typed, grammar);
}

struct TemperatureTail {
    std::size_t start; ///< where the unit starts
    TemperatureUnit unit;
};

/// The unit at the end of the text ("F", "°F", "° celsius"), the degree sign alone being `bare`.
TemperatureTail temperatureTail(const std::u32string& folded, TemperatureUnit bare) {
    std::u32string text = folded;
    std::transform(text.begin(), text.end(), text.begin(), lowered);
    const auto trim = [&] {
        while (!text.empty() && isSpace(text.back())) text.pop_back();
    };
    trim();
    TemperatureTail tail{text.size(), bare};
    for (const TemperatureName& row : kTemperatureNames) {
        if (!text.ends_with(row.name)) continue;
        const std::size_t before = text.size() - row.name.size();
        if (before > 0 && text[before - 1] != U'°' && isWordCharacter(text[before - 1])) continue;
        tail.unit = row.unit;
        text.resize(before);
        trim();
        break;
    }
    if (text.ends_with(U'°')) text.pop_back();
    tail.start = text.size();
    return tail;
}

} // namespace

Result<Length> parseLength(std::string_view text, LengthUnit bare, const NumberStyle& style) {
    Grammar grammar{.kind = Note::ALength,
                    .example = Note::LengthExample,
                    .unitHelp = base::say(Note::LengthUnits),
                    .units = kLengthUnits};
    switch (bare) {
    case LengthUnit::Inch: grammar.bareSize = kNanometresPerInch; break;
    case LengthUnit::Millimetre: grammar.bareSize = kNanometresPerMillimetre; break;
    case LengthUnit::Centimetre: grammar.bareSize = kCentimetre; break;
    }
    grammar.isLength = true;
    return evaluateWithin(text, grammar, style, {0, kMaxLength.nanometres(), Note::LengthRange})
        .map([](const Fraction& nm) { return Length::fromNanometres(nm.roundedHalfEven()); });
}

Result<Money> parseMoney(std::string_view text, const Currency& currency, const NumberStyle& style) {
    std::u32string code(currency.code().begin(), currency.code().end());
    std::transform(code.begin(), code.end(), code.begin(), lowered);
    std::vector<UnitName> units{{code, kMicrosPerUnit}};
    for (const CurrencySign& row : kCurrencySigns)
        if (row.codes.find(currency.code()) != std::string_view::npos) units.push_back({row.sign, kMicrosPerUnit});
    Grammar grammar{.kind = Note::AnAmount,
                    .example = Note::AmountExample,
                    .unitHelp = base::say(Note::AmountUnits, currency.code()),
                    .units = units,
                    .bareSize = kMicrosPerUnit};
    grammar.thousandsExpected = true;
    grammar.unitsLead = true;
    constexpr std::int64_t kMax = 1'000'000'000 * kMicrosPerUnit;
    return evaluateWithin(text, grammar, style, {-kMax, kMax, Note::AmountRange}).map([](const Fraction& micros) {
        return Money::fromExact(micros);
    });
}

Result<Rate> parseRate(std::string_view text, const NumberStyle& style) {
    const Grammar grammar{.kind = Note::ARate,
                          .example = Note::RateExample,
                          .unitHelp = base::say(Note::RateUnits),
                          .units = kRateUnits,
                          .bareSize = kPpmPerPercent};
    constexpr std::int64_t kMax = 10'000 * kPpmPerPercent;
    return evaluateWithin(text, grammar, style, {-kMax, kMax, Note::RateRange}).map([](const Fraction& ppm) {
        return Rate::fromPpm(ppm.roundedHalfEven());
    });
}

Result<Count> parseCount(std::string_view text, const NumberStyle& style) {
    Grammar grammar{.kind = Note::ACount,
                    .example = Note::CountExample,
                    .unitHelp = base::say(Note::CountUnits),
                    .units = kCountUnits};
    grammar.thousandsExpected = true;
    TypedText typed;
    const auto value = evaluateWithin(text, grammar, style, {0, 1'000'000'000, Note::CountRange}, &typed);
    if (!value) return base::fail(value.error());
    if (value->floor() != value->ceiling()) return refuse(Fault::NotWhole, typed);
    return Count::of(value->floor());
}

Result<Duration> parseDuration(std::string_view text, const NumberStyle& style) {
    Grammar grammar{.kind = Note::ATime,
                    .example = Note::TimeExample,
                    .unitHelp = base::say(Note::TimeUnits),
                    .units = kDurationUnits,
                    .bareSize = kMinute};
    grammar.clockTimes = true;
    return evaluateWithin(text, grammar, style, {0, 10'000 * kMillisecondsPerHour, Note::TimeRange})
        .map([](const Fraction& ms) { return Duration::fromMilliseconds(ms.roundedHalfEven()); });
}

Result<Temperature> parseTemperature(std::string_view text, TemperatureUnit bare, const NumberStyle& style) {
    const Grammar grammar{.kind = Note::ATemperature,
                          .example = Note::TemperatureExample,
                          .unitHelp = base::say(Note::TemperatureUnits),
                          .units = {},
                          .bareSize = 1000};
    const auto typed = takeIn(text, grammar);
    if (!typed) return base::fail(typed.error());
    const TemperatureTail tail = temperatureTail(typed->folded, bare);
    const bool isCelsius = tail.unit == TemperatureUnit::Celsius;
    const Range range =
        isCelsius ? Range{-50'000, 500'000, Note::CelsiusRange} : Range{-58'000, 932'000, Note::FahrenheitRange};
    return evaluate(*typed, tail.start, grammar, style)
        .and_then([&](const Fraction& milli) { return within(range, milli, *typed, grammar); })
        .map([&](const Fraction& milli) {
            const std::int64_t rounded = milli.roundedHalfEven();
            return isCelsius ? Temperature::fromMillicelsius(rounded) : Temperature::fromMillifahrenheit(rounded);
        });
}

} // namespace sp::units
