// SPDX-License-Identifier: MIT
#include "core/base/ensure.h"
#include "core/units/characters.h"
#include "core/units/measured.h"
#include "core/units/text.h"

#include <fmt/format.h>

namespace sp::units {

namespace {

constexpr NumberStyle kPlain{U'.', U'\0'};

std::uint64_t magnitude(std::int64_t value) {
    return value < 0 ? ~static_cast<std::uint64_t>(value) + 1 : static_cast<std::uint64_t>(value);
}

std::uint64_t powerOfTen(int exponent) {
    std::uint64_t power = 1;
    for (int i = 0; i < exponent; ++i) power *= 10;
    return power;
}

/// Divided to the nearest, halves up.
std::uint64_t nearest(std::uint64_t value, std::uint64_t by) {
    return value / by + (value % by >= by - value % by ? 1 : 0);
}

std::string grouped(std::uint64_t whole, const NumberStyle& style) {
    std::string digits = std::to_string(whole);
    if (style.groupMark == 0 || style.groupMark == style.decimalMark) return digits;
    const std::string mark = encode(std::u32string(1, style.groupMark));
    for (std::size_t at = digits.size(); at > 3;) {
        at -= 3;
        digits.insert(at, mark);
    }
    return digits;
}

/// `value` / 10^places as a decimal with at least `fewest` places, zeros beyond them dropped.
std::string decimal(std::uint64_t value, int places, int fewest, const NumberStyle& style, bool isGrouped = false) {
    const std::uint64_t one = powerOfTen(places);
    std::string out = isGrouped ? grouped(value / one, style) : std::to_string(value / one);
    std::string broken = places == 0 ? std::string() : fmt::format("{:0{}}", value % one, places);
    while (broken.size() > static_cast<std::size_t>(fewest) && broken.back() == '0') broken.pop_back();
    if (!broken.empty()) out += encode(std::u32string(1, style.decimalMark)) + broken;
    return out;
}

std::string withSign(bool isNegative, std::string text) { return isNegative ? "-" + std::move(text) : text; }

/// Inches with as few decimals as read back to the same nanometre. Eight always do, even cut off instead of
/// rounded (which keeps the longest length from reading as longer): the error is below 0.254 nm.
std::string decimalInches(std::uint64_t nm, const NumberStyle& style) {
    constexpr int kMaxPlaces = 8;
    const Int128 length = static_cast<Int128>(nm);
    for (int places = 1;; ++places) {
        const Int128 scale = static_cast<Int128>(powerOfTen(places));
        const Int128 half = places < kMaxPlaces ? kNanometresPerInch : 0;
        const Int128 written = (2 * length * scale + half) / (2 * kNanometresPerInch);
        const Int128 off = 2 * (written * kNanometresPerInch - length * scale);
        const bool readsBack = -scale < off && off < scale; // a tie may round the wrong way
        if (!readsBack && places < kMaxPlaces) continue;
        const auto whole = static_cast<std::uint64_t>(written / scale);
        const std::string broken = decimal(static_cast<std::uint64_t>(written % scale), places, 0, style);
        return std::to_string(whole) + broken.substr(1);
    }
}

std::string inches(std::uint64_t nm, const NumberStyle& style) {
    const auto step = static_cast<std::uint64_t>(Length::fromInch64ths(1).nanometres());
    if (nm % step != 0) return decimalInches(nm, style);
    std::uint64_t numerator = nm / step % 64;
    std::uint64_t denominator = 64;
    const std::uint64_t whole = nm / step / 64;
    if (numerator == 0) return std::to_string(whole);
    while (numerator % 2 == 0) {
        numerator /= 2;
        denominator /= 2;
    }
    const std::string fraction = fmt::format("{}/{}", numerator, denominator);
    return whole == 0 ? fraction : fmt::format("{} {}", whole, fraction);
}

} // namespace

std::string formatMoney(Money amount, const Currency& currency, const NumberStyle& style) {
    const std::uint64_t minor =
        nearest(magnitude(amount.micros()), static_cast<std::uint64_t>(currency.microsPerMinor()));
    return withSign(amount.isNegative() && minor != 0,
                    decimal(minor, currency.decimals(), currency.decimals(), style, true));
}

std::string formatExact(Money amount, const Currency& currency) {
    return withSign(amount.isNegative(), decimal(magnitude(amount.micros()), 6, currency.decimals(), kPlain));
}

std::string formatLength(Length length, LengthUnit unit, const NumberStyle& style) {
    const std::uint64_t nm = magnitude(length.nanometres());
    std::string text;
    switch (unit) {
    case LengthUnit::Inch: text = inches(nm, style); break;
    case LengthUnit::Millimetre: text = decimal(nm, 6, 0, style); break;
    case LengthUnit::Centimetre: text = decimal(nm, 7, 0, style); break;
    }
    return withSign(length.isNegative(), std::move(text));
}

std::string measuredLength(Length length, LengthUnit unit, const NumberStyle& style) {
    const std::uint64_t nm = magnitude(length.nanometres());
    const auto signedText = [&](std::uint64_t steps, int places) {
        return withSign(length.isNegative() && steps != 0, decimal(steps, places, 0, style));
    };
    switch (unit) {
    case LengthUnit::Inch: {
        const auto sixteenth = static_cast<std::uint64_t>(Length::fromInch64ths(4).nanometres());
        if (nm % sixteenth == 0) return formatLength(length, unit, style);
        return signedText(nearest(nm, static_cast<std::uint64_t>(kNanometresPerInch) / 100), 2);
    }
    case LengthUnit::Millimetre: return signedText(nearest(nm, 100'000), 1);
    case LengthUnit::Centimetre: return signedText(nearest(nm, 100'000), 2);
    }
    return {};
}

std::string_view nameOf(LengthUnit unit) {
    switch (unit) {
    case LengthUnit::Inch: return "in";
    case LengthUnit::Millimetre: return "mm";
    case LengthUnit::Centimetre: return "cm";
    }
    base::ensure(false, "a unit of length is one of three");
    return {};
}

std::string formatRate(Rate rate, const NumberStyle& style) {
    return withSign(rate.isNegative(), decimal(magnitude(rate.ppm()), 4, 0, style));
}

std::string formatCount(Count count, const NumberStyle& style) {
    return withSign(count.isNegative(), grouped(magnitude(count.value()), style));
}

std::string formatDuration(Duration duration, const NumberStyle& style) {
    const std::uint64_t ms = magnitude(duration.milliseconds());
    const std::uint64_t hours = ms / 3'600'000;
    const std::uint64_t minutes = ms / 60'000 % 60;
    const std::uint64_t rest = ms % 60'000;
    std::string text;
    const auto add = [&](const std::string& number, const char* unit) {
        if (!text.empty()) text += ' ';
        text += number + unit;
    };
    if (hours != 0) add(std::to_string(hours), " h");
    if (minutes != 0) add(std::to_string(minutes), " min");
    if (rest != 0 || ms == 0) add(decimal(rest, 3, 0, style), " s");
    return withSign(duration.isNegative(), std::move(text));
}

std::string formatTemperature(Temperature temperature, TemperatureUnit unit, const NumberStyle& style) {
    const std::int64_t milli =
        unit == TemperatureUnit::Celsius ? temperature.millicelsius() : temperature.millifahrenheit();
    const std::uint64_t tenths = nearest(magnitude(milli), 100);
    return withSign(milli < 0 && tenths != 0, decimal(tenths, 1, 0, style));
}

} // namespace sp::units
