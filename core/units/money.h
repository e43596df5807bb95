// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/fraction.h"
#include "core/units/scalar.h"

namespace sp::units {

/// An amount of the book's one currency in micro-units (1e-6). Sums are exact.
class Money : public Scalar<Money> {
  public:
    constexpr Money() = default;
    static constexpr Money fromMicros(std::int64_t micros) { return Money(micros); }
    /// The one place where an exact figure becomes money: rounded once, to the micro-unit, halves to even.
    /// Throws base::Overflow when it does not fit.
    static Money fromExact(const Fraction& micros) { return Money(micros.roundedHalfEven()); }

    constexpr std::int64_t micros() const { return m_count; }
    constexpr Fraction exact() const { return Fraction::of(m_count); }

  private:
    friend class Scalar<Money>;
    using Scalar::Scalar;
};

inline constexpr std::int64_t kMicrosPerUnit = 1'000'000;

} // namespace sp::units
