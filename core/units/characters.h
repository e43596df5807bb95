// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sp::units {

/// Characters of typed text. Nothing here asks the process locale.

/// Well-formed UTF-8, as `decode` reads it, without NUL.
bool isText(std::string_view bytes);

/// Strict UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF), or nothing.
std::optional<std::u32string> decode(std::string_view utf8);
std::string encode(std::u32string_view characters);

/// The text between typographic quotes for a sentence: at most 30 characters, invisible ones shown as a
/// space.
std::string quoted(std::u32string_view text);

inline constexpr char32_t kHardSpace = U'\u00A0';

/// One of a family of look-alikes for the whole family: every dash is '-', every straight, curly or prime
/// mark is ' or ", every division sign is '/', spaces that may not break are kHardSpace and all other spaces
/// ' ', both mu are U+00B5, the ordinal mark is a degree sign. One character stays one, so places in the text
/// stay the same.
char32_t folded(char32_t character);

inline bool isDigit(char32_t c) { return c >= U'0' && c <= U'9'; }
/// A space after folding.
inline bool isSpace(char32_t c) { return c == U' ' || c == kHardSpace; }
/// What words (names of units) are made of, after folding: letters of any script, the degree sign,
/// superscripts.
bool isWordCharacter(char32_t c);
char32_t lowered(char32_t c); ///< A to Z only

struct VulgarFraction {
    int numerator;
    int denominator;
};
/// ½ is 1/2 and so on for the single characters that are fractions.
std::optional<VulgarFraction> vulgarFraction(char32_t c);

} // namespace sp::units
