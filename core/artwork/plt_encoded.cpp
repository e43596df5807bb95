// SPDX-License-Identifier: MIT
#include "core/artwork/plt_encoded.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr unsigned kLeastDigit = 63;
constexpr unsigned kLeastOfLast64 = 191;
constexpr unsigned kLeastOfLast32 = 95;
constexpr int kMostBits = 50; // of a number: more than any sheet has, and exact in a double
constexpr double kMostFractionBits = 26;
constexpr double kMostPens = 32'767;

/// Blanks, controls and what has no meaning between the characters.
bool isPassedOver(unsigned c) { return c <= 0x20 || (c >= 0x7f && c <= 0xa0) || c == 0xff; }

bool isFlag(unsigned c) {
    const unsigned plain = c & 0x7fU;
    return plain == ':' || plain == '<' || plain == '>' || plain == '=' || plain == '7';
}

} // namespace

std::nullopt_t PltEncoded::garbled() {
    m_garbled = true;
    return std::nullopt;
}

std::optional<double> PltEncoded::number() {
    const unsigned base = m_isSevenBit ? 32 : 64;
    const unsigned leastOfLast = m_isSevenBit ? kLeastOfLast32 : kLeastOfLast64;
    const int bitsOfDigit = m_isSevenBit ? 5 : 6;
    std::uint64_t value = 0;
    for (int bits = 0; m_at < m_text.size();) {
        unsigned c = static_cast<unsigned char>(m_text[m_at++]);
        if (isPassedOver(c)) continue;
        if (m_isSevenBit) c &= 0x7fU;
        const bool isLast = c >= leastOfLast;
        const unsigned digit = c - (isLast ? leastOfLast : kLeastDigit);
        if (c < kLeastDigit || digit >= base || bits > kMostBits) return garbled();
        value |= static_cast<std::uint64_t>(digit) << static_cast<unsigned>(bits);
        bits += bitsOfDigit;
        if (!isLast) continue;
        const auto size = static_cast<double>(value >> 1U);
        return (value & 1U) != 0 ? -size : size;
    }
    return garbled();
}

std::optional<PltEncoded::Step> PltEncoded::next() {
    Step step;
    while (m_at < m_text.size()) {
        const unsigned c = static_cast<unsigned char>(m_text[m_at]);
        if (isPassedOver(c)) {
            ++m_at;
            continue;
        }
        if (!isFlag(c)) {
            const auto x = number();
            const auto y = x ? number() : std::nullopt;
            if (!y) return std::nullopt;
            step.x = std::ldexp(*x, -m_fractionBits);
            step.y = std::ldexp(*y, -m_fractionBits);
            return step;
        }
        ++m_at;
        const unsigned flag = c & 0x7fU;
        if (flag == '<') step.isUp = true;
        if (flag == '=') step.isAbsolute = true;
        if (flag == '7') m_isSevenBit = true;
        if (flag != ':' && flag != '>') continue;
        const auto value = number();
        if (!value) return std::nullopt;
        if (flag == ':') return Step{Kind::Pen, static_cast<int>(std::clamp(*value, 0.0, kMostPens))};
        m_fractionBits = static_cast<int>(std::clamp(*value, -kMostFractionBits, kMostFractionBits));
    }
    return std::nullopt;
}

} // namespace sp::artwork
