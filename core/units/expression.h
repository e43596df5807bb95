// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/characters.h"
#include "core/units/fraction.h"
#include "core/units/messages.h"
#include "core/units/text.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace sp::units {

/// A name a person writes for a unit, in lower case and folded (see characters.h), and how many of the
/// smallest counted thing (nanometres, micro-units, …) it holds.
struct UnitName {
    std::u32string_view name;
    std::int64_t size = 1;
};

inline constexpr std::int64_t kNanometresPerFoot = 12 * kNanometresPerInch;

/// What one kind of field takes, and what its faults say of it.
struct Grammar {
    Note kind;              ///< "a length"
    Note example;           ///< "3 1/2 in"
    base::Message unitHelp; ///< what to do about an unknown word: "use in, ft, yd, mm, cm or m"
    std::span<const UnitName> units;
    std::int64_t bareSize = 1;      ///< the size of a number without a unit
    bool thousandsExpected = false; ///< "1,440" is a count, not a question
    bool unitsLead = false;         ///< "$5" as well as "5 $"
    bool clockTimes = false;        ///< "1:30" is minutes and seconds
    bool isLength = false;          ///< ' is a foot, "3-1/2" is three and a half, "9 × 12" is a size and no length
};

/// Text on its way to a value: as it was typed, and folded, character for character.
struct TypedText {
    std::u32string typed;
    std::u32string folded;
};

/// At most 200 bytes of UTF-8 with something in them. Errors: Invalid.
base::Result<TypedText> takeIn(std::string_view text, const Grammar& grammar);

/// The exact value, counted in the smallest thing, of the first `end` characters of `text`:
///   sum      = product { (+|-) product }
///   product  = factor { (*|/) factor }
///   factor   = [+|-] [leading unit [+|-]] ( "(" sum ")" [unit] | quantity )
///   quantity = number [unit { number smaller-unit }] | clock time
///   number   = decimal | whole "/" whole | whole whole "/" whole | [whole] vulgar fraction
/// Brackets nest at most 50 deep. In a sum a number without a unit counts as `bareSize`; "1/2 in" and "8.5/2
/// in" are halves of an inch multiple: the unit after a quotient of plain numbers belongs to the quotient.
/// "10-12 s", without spaces and with one unit, is a range as often as a difference and is asked about.
/// Errors: Invalid, Ambiguous, and OutOfRange for figures that do not fit 128 bits even reduced.
base::Result<Fraction> evaluate(const TypedText& text, std::size_t end, const Grammar& grammar,
                                const NumberStyle& style);

/// A text shortened and in quotes, as faults show it.
std::string shown(const TypedText& text);

/// Refuses `text`: its quote is the first value of the fault.
template<class... Values>
tl::unexpected<base::Error> refuse(Fault fault, const TypedText& text, const Values&... values) {
    return base::fail(fault, encode(text.typed), shown(text), values...);
}

} // namespace sp::units
