// SPDX-License-Identifier: MIT
#include "core/artwork/dxf_pairs.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstring>

namespace sp::artwork {

namespace {

/// Where the line that begins there ends: before its '\n', or at the end of the text. Lines are short: most end within
/// the first few bytes, before a call of memchr would have begun.
std::size_t lengthOfLine(const char* from, std::size_t left) {
    constexpr std::size_t kShort = 8;
    for (std::size_t i = 0; i < std::min(left, kShort); ++i)
        if (from[i] == '\n') return i;
    if (left <= kShort) return left;
    const void* end = std::memchr(from + kShort, '\n', left - kShort);
    return end == nullptr ? left : static_cast<std::size_t>(static_cast<const char*>(end) - from);
}

} // namespace

std::string_view DxfPairs::line() {
    const char* from = m_text.data() + m_at;
    const std::size_t left = m_text.size() - m_at;
    std::size_t size = lengthOfLine(from, left);
    m_at += std::min(left, size + 1);
    if (size > 0 && from[size - 1] == '\r') --size;
    for (; size > 0 && (*from == ' ' || *from == '\t'); --size) ++from;
    return {from, size};
}

void DxfPairs::skipPast(std::string_view word) {
    for (auto found = m_text.find(word, m_at); found != std::string_view::npos; found = m_text.find(word, m_at)) {
        const auto before = m_text.rfind('\n', found);
        m_at = before == std::string_view::npos ? found : before + 1;
        if (trimmed(line()) == word) return;
    }
    m_at = m_text.size();
}

/// Takes a line that is a code of up to four digits, blanks before it, as nearly all are; else takes nothing.
bool DxfPairs::takePlainCode(int& code) {
    constexpr int kMaxDigits = 4;
    const char* at = m_text.data() + m_at;
    const char* const end = m_text.data() + m_text.size();
    while (at != end && *at == ' ') ++at;
    int value = 0;
    int digits = 0;
    for (; at != end && isDigit(*at) && digits < kMaxDigits; ++digits) value = value * 10 + (*at++ - '0');
    if (at != end && *at == '\r') ++at;
    if (digits == 0 || at == end || *at != '\n') return false;
    m_at = static_cast<std::size_t>(at + 1 - m_text.data());
    code = value;
    return true;
}

bool DxfPairs::takeCode(int& code) {
    const auto word = trimmed(line());
    if (word.empty() && m_at >= m_text.size()) return false;
    const auto [stop, trouble] = std::from_chars(word.data(), word.data() + word.size(), code);
    m_garbled = trouble != std::errc() || stop != word.data() + word.size();
    return !m_garbled;
}

bool DxfPairs::next(DxfPair& pair) {
    if (m_at >= m_text.size() || m_garbled) return false;
    if (!takePlainCode(pair.code) && !takeCode(pair.code)) return false;
    m_garbled = m_at >= m_text.size();
    if (m_garbled) return false;
    pair.value = line();
    return true;
}

bool DxfEntity::read(DxfPairs& pairs) {
    DxfPair pair;
    m_pairs.clear();
    ++m_stamp;
    do {
        m_start = pairs.position();
        if (!pairs.next(pair)) return false;
    } while (pair.code != 0);
    m_type = trimmed(pair.value);
    for (;;) {
        const DxfPairs before = pairs;
        if (!pairs.next(pair)) return !pairs.isGarbled();
        if (pair.code == 0) {
            pairs = before;
            return true;
        }
        if (pair.code > 0 && pair.code < kIndexed) {
            const auto code = static_cast<std::size_t>(pair.code);
            if (m_stamps[code] != m_stamp) m_places[code] = static_cast<std::uint32_t>(m_pairs.size());
            m_stamps[code] = m_stamp;
        }
        m_pairs.push_back(pair);
    }
}

std::string_view DxfEntity::text(int code) const {
    if (code <= 0 || code >= kIndexed) return {};
    const auto place = static_cast<std::size_t>(code);
    return m_stamps[place] == m_stamp ? m_pairs[m_places[place]].value : std::string_view();
}

std::optional<double> DxfEntity::number(int code) const {
    const auto value = text(code);
    return value.empty() ? std::nullopt : numberFrom(value);
}

int DxfEntity::whole(int code, int otherwise) const {
    const auto value = number(code);
    return value && std::abs(*value) < 1e9 ? static_cast<int>(*value) : otherwise;
}

} // namespace sp::artwork
