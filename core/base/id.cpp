// SPDX-License-Identifier: MIT
#include "core/base/id.h"

#include "core/base/messages.h"

#include <fmt/format.h>

namespace sp::base {

Id Id::fromTime(std::uint64_t unixMilliseconds, std::span<const std::uint8_t, 10> random) {
    Id id;
    for (std::size_t i = 0; i < 6; ++i)
        id.m_bytes[i] = static_cast<std::uint8_t>((unixMilliseconds >> (8 * (5 - i))) & 0xFF);
    for (std::size_t i = 0; i < 10; ++i) id.m_bytes[6 + i] = random[i];
    id.m_bytes[6] = static_cast<std::uint8_t>((id.m_bytes[6] & 0x0F) | 0x70);
    id.m_bytes[8] = static_cast<std::uint8_t>((id.m_bytes[8] & 0x3F) | 0x80);
    return id;
}

Result<Id> Id::parse(std::string_view text) {
    const auto refuse = [&] { return fail(Fault::NotAKey, std::string(text)); };
    if (text.size() != 36) return refuse();
    Bytes bytes{};
    std::size_t nibble = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (i == 8 || i == 13 || i == 18 || i == 23) {
            if (c != '-') return refuse();
            continue;
        }
        int value = -1;
        if (c >= '0' && c <= '9') value = c - '0';
        if (c >= 'a' && c <= 'f') value = c - 'a' + 10;
        if (c >= 'A' && c <= 'F') value = c - 'A' + 10;
        if (value < 0) return refuse();
        bytes[nibble / 2] = static_cast<std::uint8_t>(bytes[nibble / 2] << 4 | value);
        ++nibble;
    }
    return fromBytes(bytes);
}

std::string Id::text() const {
    std::string out;
    for (std::size_t i = 0; i < m_bytes.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10) out += '-';
        out += fmt::format("{:02x}", m_bytes[i]);
    }
    return out;
}

} // namespace sp::base
