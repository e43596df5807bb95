// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <array>
#include <compare>
#include <cstdint>
#include <cstring>
#include <functional>
#include <span>
#include <string>
#include <string_view>

namespace sp::base {

/// A 16-byte key, UUID version 7 (RFC 9562, section 5.7): 48 bits of milliseconds, then random bits, so keys made
/// later sort later. The all-zero Id means "none yet".
class Id {
  public:
    using Bytes = std::array<std::uint8_t, 16>;

    constexpr Id() = default;

    /// Any 16 bytes, as read from a file.
    static constexpr Id fromBytes(const Bytes& bytes) {
        Id id;
        id.m_bytes = bytes;
        return id;
    }
    /// Version 7 from milliseconds since 1970 (only the low 48 bits count) and ten random bytes.
    static Id fromTime(std::uint64_t unixMilliseconds, std::span<const std::uint8_t, 10> random);
    /// Reads the 8-4-4-4-12 hexadecimal form. Errors: Invalid.
    static Result<Id> parse(std::string_view text);

    constexpr const Bytes& bytes() const { return m_bytes; }
    constexpr bool isNone() const { return m_bytes == Bytes{}; }
    /// The 8-4-4-4-12 form in lower case.
    std::string text() const;

    friend constexpr auto operator<=>(const Id&, const Id&) = default;

  private:
    Bytes m_bytes{};
};

} // namespace sp::base

/// The last eight bytes are random in version 7, so they are mixed already; the first tell keys of tests apart.
template<>
struct std::hash<sp::base::Id> {
    std::size_t operator()(const sp::base::Id& id) const noexcept {
        std::uint64_t head = 0;
        std::uint64_t tail = 0;
        std::memcpy(&head, id.bytes().data(), sizeof head);
        std::memcpy(&tail, id.bytes().data() + sizeof head, sizeof tail);
        return static_cast<std::size_t>(tail ^ (head * 0x9E3779B97F4A7C15ULL));
    }
};
