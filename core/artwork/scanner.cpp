// SPDX-License-Identifier: MIT
#include "core/artwork/scanner.h"

#include <charconv>
#include <cmath>

namespace sp::artwork {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && isSpace(text.front())) text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back())) text.remove_suffix(1);
    return text;
}

bool equalsIgnoringCase(std::string_view text, std::string_view lowerCase) {
    if (text.size() != lowerCase.size()) return false;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (lower(text[i]) != lowerCase[i]) return false;
    return true;
}

namespace {

/// Bytes of the well-formed UTF-8 sequence at the beginning (RFC 3629, section 4), or 0.
std::size_t utf8Length(std::string_view text) {
    const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    const auto tails = [&](std::size_t n) {
        for (std::size_t i = 1; i <= n; ++i)
            if ((byte(i) & 0xc0U) != 0x80U) return false;
        return true;
    };
    const unsigned a = byte(0);
    const unsigned b = byte(1);
    if (a < 0x80) return 1;
    if (a >= 0xc2 && a <= 0xdf) return tails(1) ? 2 : 0;
    if (a >= 0xe0 && a <= 0xef) return tails(2) && !(a == 0xe0 && b < 0xa0) && !(a == 0xed && b >= 0xa0) ? 3 : 0;
    if (a >= 0xf0 && a <= 0xf4) return tails(3) && !(a == 0xf0 && b < 0x90) && !(a == 0xf4 && b >= 0x90) ? 4 : 0;
    return 0;
}

} // namespace

std::string cleanText(std::string_view bytes) {
    constexpr std::size_t kMaxLength = 200;
    std::string text;
    while (!bytes.empty() && text.size() < kMaxLength) {
        const auto length = utf8Length(bytes);
        const auto first = static_cast<unsigned char>(bytes.front());
        if (length == 0) {
            text.push_back(static_cast<char>(0xc0U | (first >> 6U)));
            text.push_back(static_cast<char>(0x80U | (first & 0x3fU)));
        } else if (first >= 0x20 && first != 0x7f) {
            text.append(bytes.substr(0, length));
        }
        bytes.remove_prefix(length == 0 ? 1 : length);
    }
    return text;
}

bool Scanner::take(char c) {
    if (peek() != c) return false;
    ++m_at;
    return true;
}

bool Scanner::oddNumber(double& value) {
    const char* from = m_at;
    if (from != m_end && *from == '+') ++from;
    const char* digits = from;
    if (digits != m_end && *digits == '-' && digits == m_at) ++digits;
    if (digits == m_end || !(isDigit(*digits) || *digits == '.')) return false; // no inf, no nan
    const auto [stop, trouble] = std::from_chars(from, m_end, value);
    if (trouble == std::errc::result_out_of_range && stop != from) {
        // An underflow is a zero; an overflow is refused below.
        value = HUGE_VAL;
        for (const char* c = digits; c != stop; ++c)
            if ((*c == 'e' || *c == 'E') && c + 1 != stop && c[1] == '-') value = 0;
    } else if (trouble != std::errc()) {
        return false;
    }
    if (!(std::abs(value) <= kMaxNumber)) return false;
    m_at = stop;
    skipSeparator();
    return true;
}

std::string_view Scanner::word() {
    const char* from = m_at;
    while (m_at != m_end && (isLetter(*m_at) || isDigit(*m_at) || *m_at == '-' || *m_at == '_' ||
                             static_cast<unsigned char>(*m_at) >= 0x80))
        ++m_at;
    return {from, static_cast<std::size_t>(m_at - from)};
}

std::optional<double> numberFrom(std::string_view text) {
    Scanner scanner(trimmed(text));
    const auto value = scanner.number();
    return value && scanner.isDone() ? value : std::nullopt;
}

} // namespace sp::artwork
