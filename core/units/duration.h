// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/scalar.h"

namespace sp::units {

/// A span of time in milliseconds.
class Duration : public Scalar<Duration> {
  public:
    constexpr Duration() = default;
    static constexpr Duration fromMilliseconds(std::int64_t ms) { return Duration(ms); }
    static constexpr Duration fromSeconds(std::int64_t s) { return Duration(s * 1'000); }
    static constexpr Duration fromMinutes(std::int64_t min) { return Duration(min * 60'000); }
    constexpr std::int64_t milliseconds() const { return m_count; }

  private:
    friend class Scalar<Duration>;
    using Scalar::Scalar;
};

inline constexpr std::int64_t kMillisecondsPerHour = 3'600'000;

} // namespace sp::units
