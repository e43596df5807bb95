// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/area.h"

#include <cstdint>

namespace sp::units {

/// An exact ratio of two 128-bit whole numbers, the denominator positive. Figures stay fractions until one rounding
/// makes them money. Products and sums that do not fit even after reduction throw base::Overflow.
class Fraction {
  public:
    constexpr Fraction() = default;
    static constexpr Fraction of(Int128 whole) { return Fraction(whole, 1); }
    /// `denominator` must not be zero (our own promise: callers check input first).
    static Fraction ratio(Int128 numerator, Int128 denominator);

    constexpr Int128 numerator() const { return m_numerator; }
    constexpr Int128 denominator() const { return m_denominator; }

    friend Fraction operator*(const Fraction& a, const Fraction& b);
    /// `b` must not be zero.
    friend Fraction operator/(const Fraction& a, const Fraction& b);
    friend Fraction operator+(const Fraction& a, const Fraction& b);
    friend Fraction operator-(const Fraction& a, const Fraction& b);
    /// Compares the values, not the terms.
    friend bool operator==(const Fraction& a, const Fraction& b);
    friend bool operator<(const Fraction& a, const Fraction& b);

    /// To a whole number, each throwing base::Overflow when it does not fit 64 bits.
    std::int64_t roundedHalfEven() const;
    std::int64_t roundedHalfUp() const; ///< halves away from zero: 2.5 to 3, -2.5 to -3
    std::int64_t floor() const;
    std::int64_t ceiling() const;

    /// For words, charts and bounds only.
    double approximate() const { return static_cast<double>(m_numerator) / static_cast<double>(m_denominator); }

  private:
    constexpr Fraction(Int128 numerator, Int128 denominator)
        : m_numerator(numerator)
        , m_denominator(denominator) {}

    void reduce();

    Int128 m_numerator = 0;
    Int128 m_denominator = 1;
};

} // namespace sp::units
