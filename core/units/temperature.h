// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>

namespace sp::units {

/// A temperature (not a difference of two), counted in ninths of a millidegree Celsius, so that thousandths of a
/// degree of either scale are exact. F = 9 C / 5 + 32 (NIST SP 811, table B.8; from memory).
class Temperature {
  public:
    constexpr Temperature() = default;
    static constexpr Temperature fromMillicelsius(std::int64_t mC) { return Temperature(mC * 9); }
    static constexpr Temperature fromMillifahrenheit(std::int64_t mF) { return Temperature((mF - 32'000) * 5); }

    /// Thousandths of a degree, to the nearest, halves away from zero.
    constexpr std::int64_t millicelsius() const { return divideToNearest(m_ninths, 9); }
    constexpr std::int64_t millifahrenheit() const { return divideToNearest(m_ninths, 5) + 32'000; }

    friend constexpr auto operator<=>(const Temperature&, const Temperature&) = default;

  private:
    constexpr explicit Temperature(std::int64_t ninths)
        : m_ninths(ninths) {}

    static constexpr std::int64_t divideToNearest(std::int64_t n, std::int64_t by) {
        return (n >= 0 ? n + by / 2 : n - by / 2) / by;
    }

    std::int64_t m_ninths = 0;
};

} // namespace sp::units
