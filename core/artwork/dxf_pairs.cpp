// SPDX-License-Identifier: MIT
#include "core/artwork/dxf_pairs.h"

#include "core/artwork/scanner.h"

#include <charconv>
#include <cmath>

namespace sp::artwork {

std::string_view DxfPairs::line() {
    const auto end = m_text.find('\n', m_at);
    std::string_view one = m_text.substr(m_at, end == std::string_view::npos ? end : end - m_at);
    m_at = end == std::string_view::npos ? m_text.size() : end + 1;
    if (one.ends_with('\r')) one.remove_suffix(1);
    while (!one.empty() && (one.front() == ' ' || one.front() == '\t'))
        one.remove_prefix(1);
    return one;
}

bool DxfPairs::next(DxfPair& pair) {
    if (m_at >= m_text.size() || m_garbled) return false;
    const auto code = trimmed(line());
    if (code.empty() && m_at >= m_text.size()) return false;
    const auto [stop, trouble] = std::from_chars(code.data(), code.data() + code.size(), pair.code);
    m_garbled = trouble != std::errc() || stop != code.data() + code.size() || m_at >= m_text.size();
    if (m_garbled) return false;
    pair.value = line();
    return true;
}

bool DxfEntity::read(DxfPairs& pairs) {
    DxfPair pair;
    m_pairs.clear();
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
        m_pairs.push_back(pair);
    }
}

std::string_view DxfEntity::text(int code) const {
    for (const DxfPair& pair : m_pairs)
        if (pair.code == code) return pair.value;
    return {};
}

std::optional<double> DxfEntity::number(int code) const {
    return numberFrom(text(code));
}

int DxfEntity::whole(int code, int otherwise) const {
    const auto value = number(code);
    return value && std::abs(*value) < 1e9 ? static_cast<int>(*value) : otherwise;
}

} // namespace sp::artwork
