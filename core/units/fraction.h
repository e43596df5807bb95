// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/ensure.h"
#include "core/units/int128.h"

#include <cstdint>

namespace sp::units {

/// An exact ratio of two 128-bit whole numbers, the denominator positive. Figures stay fractions until one rounding
/// makes them money. Products and sums that do not fit even after reduction throw base::Overflow.
class Fraction {
  public:
    constexpr Fraction() = default;
    static constexpr Fraction of(Int128 whole) { return Fraction(whole, 1); }
    /// `denominator` must not be zero (our own promise: callers check input first).
    static Fraction ratio(Int128 numerator, Int128 denominator) {
        base::ensure(denominator != 0, "a fraction has a denominator other than zero");
        return denominator < 0 ? turned(numerator, denominator) : Fraction(numerator, denominator);
    }

    constexpr Int128 numerator() const { return m_numerator; }
    constexpr Int128 denominator() const { return m_denominator; }

    friend Fraction operator*(const Fraction& a, const Fraction& b) {
        // Nearly always: factors of 64 bits, whose products cannot overflow.
        if (fits64(a.m_numerator) && fits64(b.m_numerator) && fits64(a.m_denominator) && fits64(b.m_denominator))
            return {wide(a.m_numerator, b.m_numerator), wide(a.m_denominator, b.m_denominator)};
        return wideProduct(a, b);
    }
    /// `b` must not be zero.
    friend Fraction operator/(const Fraction& a, const Fraction& b) {
        return a * ratio(b.m_denominator, b.m_numerator);
    }
    friend Fraction operator+(const Fraction& a, const Fraction& b) {
        // Often: whole numbers of 64 bits, whose sum cannot overflow.
        if (a.m_denominator == 1 && b.m_denominator == 1 && fits64(a.m_numerator) && fits64(b.m_numerator))
            return {a.m_numerator + b.m_numerator, 1};
        if (b.m_numerator == 0) return a;
        return wideSum(a, b);
    }
    friend Fraction operator-(const Fraction& a, const Fraction& b) {
        return a + Fraction(-b.m_numerator, b.m_denominator);
    }
    /// Compares the values, not the terms.
    friend bool operator==(const Fraction& a, const Fraction& b);
    friend bool operator<(const Fraction& a, const Fraction& b);

    /// To a whole number, each throwing base::Overflow when it does not fit 64 bits.
    std::int64_t roundedHalfEven() const {
        if (!fits64(m_numerator) || !fits64(m_denominator) || m_numerator < 0) return wideRoundedHalfEven();
        const auto n = static_cast<std::uint64_t>(m_numerator);
        const auto d = static_cast<std::uint64_t>(m_denominator);
        const std::uint64_t quotient = n / d;
        const std::uint64_t rest = n % d;
        const bool up = rest > d - rest || (rest == d - rest && (quotient & 1) != 0);
        return static_cast<std::int64_t>(quotient + (up ? 1 : 0));
    }
    std::int64_t roundedHalfUp() const; ///< halves away from zero: 2.5 to 3, -2.5 to -3
    std::int64_t floor() const;
    std::int64_t ceiling() const;

    /// For words, charts and bounds only.
    double approximate() const { return static_cast<double>(m_numerator) / static_cast<double>(m_denominator); }

  private:
    constexpr Fraction(Int128 numerator, Int128 denominator)
        : m_numerator(numerator)
        , m_denominator(denominator) {}

    static constexpr bool fits64(Int128 value) { return value == static_cast<std::int64_t>(value); }
    static constexpr Int128 wide(Int128 a, Int128 b) {
        return static_cast<Int128>(static_cast<std::int64_t>(a)) * static_cast<std::int64_t>(b);
    }
    static Fraction turned(Int128 numerator, Int128 denominator);
    static Fraction wideProduct(const Fraction& a, const Fraction& b);
    static Fraction wideSum(const Fraction& a, const Fraction& b);
    std::int64_t wideRoundedHalfEven() const;
    void reduce();

    Int128 m_numerator = 0;
    Int128 m_denominator = 1;
};

} // namespace sp::units
