// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/overflow.h"

#include <compare>
#include <cstdint>

namespace sp::units {

/// What the additive strong types share: one signed 64-bit count of a named unit. Only sums, differences, a sign
/// and comparisons of the same type exist; products are named functions (see fraction.h). A sum that does not fit
/// throws base::Overflow, it never wraps.
template<class Derived>
class Scalar {
  public:
    constexpr Scalar() = default;

    constexpr bool isZero() const { return m_count == 0; }
    constexpr bool isNegative() const { return m_count < 0; }

    friend constexpr auto operator<=>(const Scalar& a, const Scalar& b) = default;

    friend constexpr Derived operator+(const Derived& a, const Derived& b) {
        std::int64_t sum = 0;
        if (__builtin_add_overflow(a.m_count, b.m_count, &sum)) throw base::Overflow();
        return Derived::fromRaw(sum);
    }
    friend constexpr Derived operator-(const Derived& a, const Derived& b) {
        std::int64_t difference = 0;
        if (__builtin_sub_overflow(a.m_count, b.m_count, &difference)) throw base::Overflow();
        return Derived::fromRaw(difference);
    }
    friend constexpr Derived operator-(const Derived& a) { return Derived{} - a; }
    constexpr Derived& operator+=(const Derived& other) {
        auto& self = static_cast<Derived&>(*this);
        return self = self + other;
    }
    constexpr Derived& operator-=(const Derived& other) {
        auto& self = static_cast<Derived&>(*this);
        return self = self - other;
    }

  protected:
    constexpr explicit Scalar(std::int64_t count)
        : m_count(count) {}

    static constexpr Derived fromRaw(std::int64_t count) { return Derived(count); }

    std::int64_t m_count = 0;
};

} // namespace sp::units
