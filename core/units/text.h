// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/count.h"
#include "core/units/currency.h"
#include "core/units/duration.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/temperature.h"

#include <string>
#include <string_view>

namespace sp::units {

/// How a person writes numbers: the marks of their locale. The default is the C locale with commas between
/// thousands; a group mark of 0 writes none. Reading goes by the style, and takes other marks where they cannot mean
/// anything else:
///   - the style's decimal mark is always decimal ("1,234" is 1.234 in a German style);
///   - the style's group mark with three digits is thousands for amounts and counts, and Ambiguous for other fields,
///     where thousands are rare; so is a point or comma with three digits that is no mark of the style, everywhere;
///   - a single point or comma otherwise is decimal ("3,5", "0,350", "1234,567"); two or more of one mark are
///     thousands ("1.234.567"), and before a different last mark too ("1.234,50"). Groups have three digits;
///     "1,23,456" is Invalid;
///   - an apostrophe (where ' is no foot), a hard or narrow or thin space, and in a style that groups by spaces any
///     space, stand between thousands when exactly three digits follow.
struct NumberStyle {
    char32_t decimalMark = U'.';
    char32_t groupMark = U',';

    friend bool operator==(const NumberStyle&, const NumberStyle&) = default;
};

enum class LengthUnit { Inch, Millimetre, Centimetre };
enum class TemperatureUnit { Fahrenheit, Celsius };

// Reading. Every reader takes UTF-8, arithmetic with + - * / and brackets (at most 50 deep), mixed fractions, and
// white space where people put it; works exactly (no binary floating point), rounds once, halves to even, and never
// depends on the process locale. A number without a unit in a sum counts in the field's own unit. Text of more than 200
// bytes is refused. Errors: Invalid (cannot be read, or divides by nothing), Ambiguous (1,234 where it could be 1.234
// or 1234, 10-12 s where it could be a range), OutOfRange (reads well, but lies outside the range that the reader
// states, before rounding; or has more than 30 digits).

/// A length: "3 1/2 in", "88.9 mm", `3.5"`, "8.89cm", "2*40mm + 8.9 mm", "3½", "1 ft 2 in"; a bare number is in
/// `bare`. "3-1/2 in" is three and a half, "3 - 1/2 in" two and a half. Units: in, ft, yd, mm, cm, m, µm, their names
/// and marks. Length times length is refused, "9 × 12 in" is Ambiguous. To the nanometre. Range: 0 to kMaxLength, both
/// included.
base::Result<Length> parseLength(std::string_view text, LengthUnit bare, const NumberStyle& style = {});

/// An amount of money: "6.95", "24*0.29", "1,234.50"; at most six decimals kept, rounded half to even. A currency
/// sign or code before or after is taken when it is `currency`'s own: its code, or the one of $ € £ ¥ that stands for
/// it. Another currency's is Invalid. Range: plus or minus 1,000,000,000.
base::Result<Money> parseMoney(std::string_view text, const Currency& currency, const NumberStyle& style = {});

/// A share in percent: "8.875", "8.875 %", "1/3"; rounded half to even to a millionth. Range: plus or minus 10,000 %.
base::Result<Rate> parseRate(std::string_view text, const NumberStyle& style = {});

/// A whole number of things: "24", "2*12", "10 gross", "3 dozen", "1 great gross", "1,440". A broken result is
/// refused.
/// Range: 0 to 1,000,000,000.
base::Result<Count> parseCount(std::string_view text, const NumberStyle& style = {});

/// A span of time: "10 s", "1 min 30 s", "1:30" (minutes and seconds), "2.5 min", "3 h 20 min"; a bare number is in
/// minutes. Range: 0 to 10,000 hours.
base::Result<Duration> parseDuration(std::string_view text, const NumberStyle& style = {});

/// A temperature: "320 F", "320 °F", "160 C", a bare number in `bare`; the unit once, at the end. To a thousandth of
/// a degree. Range: -50 to 500 °C.
base::Result<Temperature> parseTemperature(std::string_view text, TemperatureUnit bare, const NumberStyle& style = {});

// Writing. What is written reads back to the same value (money: to the same minor unit; temperatures:
// to the same tenth of a degree).

/// "1,234.50" with the currency's decimals, halves away from zero; no sign of the currency.
std::string formatMoney(Money amount, const Currency& currency, const NumberStyle& style = {});
/// The exact amount as a plain decimal with a point, no grouping, trailing zeros beyond the currency's decimals
/// dropped: "6.95", "0.004861". For JSON and the cost sheet.
std::string formatExact(Money amount, const Currency& currency);
/// The number alone in `unit`: inches as the nearest mixed fraction of 64ths when exact ("3 1/2"), else as decimals;
/// millimetres and centimetres as decimals, trailing zeros dropped.
std::string formatLength(Length length, LengthUnit unit, const NumberStyle& style = {});
/// "in", "mm" or "cm".
std::string_view nameOf(LengthUnit unit);
/// Percent without its sign, trailing zeros dropped: "8.875".
std::string formatRate(Rate rate, const NumberStyle& style = {});
/// "1,440".
std::string formatCount(Count count, const NumberStyle& style = {});
/// "3 h 20 min", "1 min 30 s", "10 s"; thousandths of a second only when there are any.
std::string formatDuration(Duration duration, const NumberStyle& style = {});
/// "320", to a tenth of a degree at most, in `unit`, without the unit.
std::string formatTemperature(Temperature temperature, TemperatureUnit unit, const NumberStyle& style = {});

} // namespace sp::units
