// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/scalar.h"

namespace sp::units {

/// A share in parts per million: 8.875 % is 88,750. May be negative (a discount turned surcharge) or above one
/// (a mark-up of 150 % is 1,500,000); the place that uses it states its range.
class Rate : public Scalar<Rate> {
  public:
    constexpr Rate() = default;
    static constexpr Rate fromPpm(std::int64_t ppm) { return Rate(ppm); }
    static constexpr Rate fromPercent(std::int64_t percent) { return Rate(percent * 10'000); }
    constexpr std::int64_t ppm() const { return m_count; }

  private:
    friend class Scalar<Rate>;
    using Scalar::Scalar;
};

inline constexpr std::int64_t kPpm = 1'000'000;

} // namespace sp::units
