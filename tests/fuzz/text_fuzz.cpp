// SPDX-License-Identifier: MIT
//
// Every reader of typed text, on any bytes: what is accepted lies in the stated range and writes and reads
// back; what is refused says so in one printable sentence. The first byte chooses the style of numbers and
// the currency.
#include "core/base/ensure.h"
#include "core/units/text.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

using namespace sp;
using namespace sp::units;

namespace {

constexpr std::array kStyles{
    NumberStyle{U'.', U','},      NumberStyle{U',', U'.'}, NumberStyle{U',', U'\u202F'},
    NumberStyle{U'.', U'\u2019'}, NumberStyle{U',', U' '}, NumberStyle{U'.', U'\0'},
};
constexpr std::array<std::string_view, 4> kCurrencies{"USD", "JPY", "KWD", "EUR"};

/// A refusal has a code of the contract, and a fault whose values a person can be shown.
void checkRefusal(const base::Error& error) {
    base::ensure(error.code == base::Code::Invalid || error.code == base::Code::Ambiguous ||
                     error.code == base::Code::OutOfRange,
                 "a reader refuses with one of three codes");
    base::ensure(error.fault.room == base::Room::Units, "a refusal is a fault of the room");
    const std::string values = describe(error.message());
    base::ensure(values.size() < 300, "a refusal is of bearable length");
    for (const char c : values) base::ensure(static_cast<unsigned char>(c) >= 0x20, "a value has no controls");
}

void checkLength(std::string_view text, const NumberStyle& style) {
    for (const auto unit : {LengthUnit::Inch, LengthUnit::Millimetre, LengthUnit::Centimetre}) {
        const auto length = parseLength(text, unit, style);
        if (!length) {
            checkRefusal(length.error());
            continue;
        }
        base::ensure(!length->isNegative() && *length <= kMaxLength, "a length is in range");
        for (const auto written : {LengthUnit::Inch, LengthUnit::Millimetre, LengthUnit::Centimetre})
            base::ensure(parseLength(formatLength(*length, written, style), written, style) == *length,
                         "a length reads back");
    }
}

void checkMoney(std::string_view text, const Currency& currency, const NumberStyle& style) {
    const auto money = parseMoney(text, currency, style);
    if (!money) return checkRefusal(money.error());
    constexpr std::int64_t kMax = 1'000'000'000'000'000;
    base::ensure(money->micros() >= -kMax && money->micros() <= kMax, "an amount is in range");
    base::ensure(parseMoney(formatExact(*money, currency), currency) == *money, "an exact amount reads back");
    const std::string written = formatMoney(*money, currency, style);
    const auto again = parseMoney(written, currency, style);
    base::ensure(again.has_value() && again->micros() % currency.microsPerMinor() == 0, "a written amount reads");
    const std::int64_t off = again->micros() - money->micros();
    base::ensure(2 * (off < 0 ? -off : off) <= currency.microsPerMinor(), "an amount reads back to its minor unit");
}

void checkRest(std::string_view text, const NumberStyle& style) {
    if (const auto rate = parseRate(text, style)) {
        base::ensure(rate->ppm() >= -100'000'000 && rate->ppm() <= 100'000'000, "a rate is in range");
        base::ensure(parseRate(formatRate(*rate, style), style) == *rate, "a rate reads back");
    } else {
        checkRefusal(rate.error());
    }
    if (const auto count = parseCount(text, style)) {
        base::ensure(count->value() >= 0 && count->value() <= 1'000'000'000, "a count is in range");
        base::ensure(parseCount(formatCount(*count, style), style) == *count, "a count reads back");
    } else {
        checkRefusal(count.error());
    }
    if (const auto time = parseDuration(text, style)) {
        base::ensure(!time->isNegative() && time->milliseconds() <= 36'000'000'000, "a time is in range");
        base::ensure(parseDuration(formatDuration(*time, style), style) == *time, "a time reads back");
    } else {
        checkRefusal(time.error());
    }
}

void checkTemperature(std::string_view text, const NumberStyle& style) {
    for (const auto unit : {TemperatureUnit::Fahrenheit, TemperatureUnit::Celsius}) {
        const auto heat = parseTemperature(text, unit, style);
        if (!heat) {
            checkRefusal(heat.error());
            continue;
        }
        base::ensure(heat->millicelsius() >= -50'000 && heat->millicelsius() <= 500'000, "a temperature is in range");
        const std::string written = formatTemperature(*heat, unit, style);
        const auto again = parseTemperature(written, unit, style);
        base::ensure(again.has_value() && formatTemperature(*again, unit, style) == written,
                     "a written temperature reads back to its tenth");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    const NumberStyle& style = kStyles[data[0] % kStyles.size()];
    const Currency currency = Currency::parse(kCurrencies[data[0] / 8 % kCurrencies.size()]).value();
    const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
    checkLength(text, style);
    checkMoney(text, currency, style);
    checkRest(text, style);
    checkTemperature(text, style);
    return 0;
}
