// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sp::artwork {

inline bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
}
inline bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
inline bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
inline char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c;
}
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
        while (m_at != m_end && isSpace(*m_at))
            ++m_at;
    }
    void skipSeparator();
    /// True and past it, when `c` comes next.
    bool take(char c);
    /// The next number and the separator after it. Nothing when there is none, or when it is not finite or
    /// beyond kLargestNumber either way.
    std::optional<double> number();
    /// A flag of an arc: a single 0 or 1, also without a separator after it.
    std::optional<bool> flag();
    /// Letters, digits, - and _.
    std::string_view word();
    std::string_view rest() const { return {m_at, static_cast<std::size_t>(m_end - m_at)}; }

  private:
    bool plainNumber(double& value);

    const char* m_at;
    const char* m_end;
};

/// The whole text as one number.
std::optional<double> numberFrom(std::string_view text);

} // namespace sp::artwork
