// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace sp::artwork {

/// No number of artwork is larger, as written.
inline constexpr double kMaxNumber = 1e9;

inline bool isSpace(char c) { return c <= ' ' && (c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f'); }
inline bool isDigit(char c) { return static_cast<unsigned char>(c - '0') <= 9; }
inline bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
inline char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c; }
std::string_view trimmed(std::string_view text);
bool equalsIgnoringCase(std::string_view text, std::string_view lowerCase);

/// Text for people and for JSON out of any bytes: valid UTF-8, what is not read as Latin-1, control
/// characters dropped, at most about 200 bytes.
std::string cleanText(std::string_view bytes);

/// Walks through text as SVG writes numbers: C locale always, "1-2" and "1.5.5" are two numbers each, white
/// space and one comma between them.
class Scanner {
  public:
    explicit Scanner(std::string_view text)
        : m_at(text.data())
        , m_end(text.data() + text.size()) {}

    bool isDone() const { return m_at == m_end; }
    char peek() const { return m_at == m_end ? '\0' : *m_at; }
    void skip() { ++m_at; }
    void skipSpace() {
        while (m_at != m_end && isSpace(*m_at)) ++m_at;
    }
    void skipSeparator() {
        if (m_at != m_end && *m_at > ',') return; // a digit, a letter, a point or a minus: the commonest first
        skipSpace();
        if (m_at != m_end && *m_at == ',') {
            ++m_at;
            skipSpace();
        }
    }
    /// True and past it, when `c` comes next.
    bool take(char c);
    /// The next number and the separator after it. Nothing when there is none, or when it is not finite or
    /// beyond kMaxNumber either way.
    std::optional<double> number() {
        double value = 0;
        return number(value) ? std::optional(value) : std::nullopt;
    }
    /// The same for long rows of numbers, a third faster: an optional is written in two stores and read in one.
    bool number(double& value) {
        skipSpace();
        if (!plainNumber(value)) return oddNumber(value);
        skipSeparator();
        return true;
    }
    /// A flag of an arc: a single 0 or 1, also without a separator after it.
    bool flag(bool& value) {
        skipSpace();
        if (peek() != '0' && peek() != '1') return false;
        value = *m_at++ == '1';
        skipSeparator();
        return true;
    }
    /// Letters, digits, - and _.
    std::string_view word();
    std::string_view rest() const { return {m_at, static_cast<std::size_t>(m_end - m_at)}; }

  private:
    /// Plain decimals of at most 15 digits, 9 before the point (so within kMaxNumber), which is nearly all there
    /// are: the digits and the power of ten are both exact doubles, so one division rounds once, as from_chars does
    /// (Clinger, 1990). False, and nothing taken, for the rest.
    bool plainNumber(double& value) {
        constexpr std::ptrdiff_t kMaxLength = 16; // with the point
        constexpr std::ptrdiff_t kMaxWhole = 9;
        const char* at = m_at;
        const bool isNegative = at != m_end && *at == '-';
        if (isNegative) ++at;
        const char* const first = at;
        const char* const stop = m_end - at > kMaxLength ? at + kMaxLength : m_end;
        std::int64_t digits = 0;
        for (; at != stop && isDigit(*at); ++at) digits = digits * 10 + (*at - '0');
        auto count = at - first;
        if (count > kMaxWhole) return false;
        std::ptrdiff_t decimals = 0;
        if (at != stop && *at == '.') {
            const char* const point = ++at;
            for (; at != stop && isDigit(*at); ++at) digits = digits * 10 + (*at - '0');
            decimals = at - point;
            count += decimals;
        }
        if (count == 0 || (at == stop ? stop != m_end : (*at | 0x20) == 'e')) return false;
        value = static_cast<double>(digits);
        if (decimals > 0) value /= kPowers[decimals];
        if (isNegative) value = -value;
        m_at = at;
        return true;
    }
    static constexpr double kPowers[] = {1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                         1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
    /// What is longer, has an exponent or a plus sign.
    bool oddNumber(double& value);

    const char* m_at;
    const char* m_end;
};

/// The whole text as one number.
std::optional<double> numberFrom(std::string_view text);

} // namespace sp::artwork
