// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/fraction.h"
#include "core/units/text.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace sp::units {

/// A number as it stands in folded text (see characters.h), and the place after it.
struct ScannedNumber {
    Fraction value;
    bool isWhole = true; ///< no decimal mark
    std::size_t end = 0;
};

enum class NumberFault { Ambiguous, OddMarks, TooManyDigits, PowerOfTen };

struct NumberProblem {
    NumberFault fault = NumberFault::OddMarks;
    std::size_t end = 0;
    std::u32string first;  ///< Ambiguous: the two things it may mean,
    std::u32string second; ///< each spelt so that it reads
};

/// How a single mark between digits is understood; text.h has the whole rule.
struct NumberRules {
    NumberStyle style;              ///< its marks folded
    bool thousandsExpected = false; ///< amounts and counts: the style's group mark and three digits are thousands
    bool apostropheIsAFoot = false; ///< then it groups only when it is the style's own mark
};

/// True when a number starts at `at`: a digit, or a decimal mark and a digit.
bool startsNumber(std::u32string_view text, std::size_t at, const NumberRules& rules);

/// Reads the number that starts at `at`. At most 30 digits count, zeros at the outer ends aside.
tl::expected<ScannedNumber, NumberProblem> scanNumber(std::u32string_view text, std::size_t at,
                                                      const NumberRules& rules);

/// The run of digits that starts at `at`, perhaps empty.
std::u32string_view digitsAt(std::u32string_view text, std::size_t at);

/// The fraction of two whole numbers "1/2" that starts at `at`, spaces round the stroke allowed; nothing when
/// there is none, or when either has over nine digits. The denominator may be zero.
struct ScannedRatio {
    Int128 numerator = 0;
    Int128 denominator = 1;
    std::size_t end = 0;
    bool isProper() const { return numerator > 0 && numerator < denominator; }
};
std::optional<ScannedRatio> scanRatio(std::u32string_view text, std::size_t at, const NumberRules& rules);

} // namespace sp::units
