// SPDX-License-Identifier: MIT
#include "core/units/fraction.h"

#include "core/base/ensure.h"
#include "core/base/overflow.h"

#include <limits>
#include <optional>

namespace sp::units {

namespace {

Int128 gcd(Int128 a, Int128 b) {
    if (a < 0) a = -a;
    while (b != 0) {
        const Int128 rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

/// The one number without a negative; it counts as not fitting, so that signs can always be turned.
constexpr Int128 kUnturnable = std::numeric_limits<Int128>::min();

std::optional<Int128> product(Int128 a, Int128 b) {
    Int128 out = 0;
    if (__builtin_mul_overflow(a, b, &out) || out == kUnturnable) return std::nullopt;
    return out;
}

std::optional<Int128> total(Int128 a, Int128 b) {
    Int128 out = 0;
    if (__builtin_add_overflow(a, b, &out) || out == kUnturnable) return std::nullopt;
    return out;
}

Int128 productOrThrow(Int128 a, Int128 b) {
    const auto out = product(a, b);
    if (!out) throw base::Overflow();
    return *out;
}

std::int64_t narrow(Int128 value) {
    if (value < std::numeric_limits<std::int64_t>::min() || value > std::numeric_limits<std::int64_t>::max())
        throw base::Overflow();
    return static_cast<std::int64_t>(value);
}

struct Division {
    Int128 quotient; ///< towards minus infinity
    Int128 rest;     ///< 0 <= rest < denominator
};

Division divideDown(Int128 numerator, Int128 denominator) {
    if (denominator == 1) return {numerator, 0};
    if (numerator >= 0 && numerator <= std::numeric_limits<std::int64_t>::max() &&
        denominator <= std::numeric_limits<std::int64_t>::max()) {
        const auto n = static_cast<std::uint64_t>(numerator);
        const auto d = static_cast<std::uint64_t>(denominator);
        return {static_cast<Int128>(n / d), static_cast<Int128>(n % d)};
    }
    Division out{numerator / denominator, numerator % denominator};
    if (out.rest < 0) {
        out.rest += denominator;
        out.quotient -= 1;
    }
    return out;
}

} // namespace

Fraction Fraction::turned(Int128 numerator, Int128 denominator) { return Fraction(-numerator, -denominator); }

void Fraction::reduce() {
    const Int128 common = gcd(m_numerator, m_denominator);
    if (common > 1) {
        m_numerator /= common;
        m_denominator /= common;
    }
}

Fraction Fraction::wideProduct(const Fraction& a, const Fraction& b) {
    const auto numerator = product(a.m_numerator, b.m_numerator);
    const auto denominator = product(a.m_denominator, b.m_denominator);
    if (numerator && denominator) return Fraction(*numerator, *denominator);
    Fraction left(a.m_numerator, b.m_denominator);
    Fraction right(b.m_numerator, a.m_denominator);
    left.reduce();
    right.reduce();
    return Fraction(productOrThrow(left.m_numerator, right.m_numerator),
                    productOrThrow(left.m_denominator, right.m_denominator));
}

Fraction Fraction::wideSum(const Fraction& a, const Fraction& b) {
    if (a.m_denominator == b.m_denominator)
        if (const auto sum = total(a.m_numerator, b.m_numerator)) return Fraction(*sum, a.m_denominator);
    const auto over = [](const Fraction& left, const Fraction& right, Int128 common) -> std::optional<Fraction> {
        const auto x = product(left.m_numerator, right.m_denominator / common);
        const auto y = product(right.m_numerator, left.m_denominator / common);
        const auto d = product(left.m_denominator, right.m_denominator / common);
        const auto sum = x && y ? total(*x, *y) : std::nullopt;
        if (!sum || !d) return std::nullopt;
        return Fraction(*sum, *d);
    };
    if (const auto sum = over(a, b, 1)) return *sum;
    Fraction left = a;
    Fraction right = b;
    left.reduce();
    right.reduce();
    const auto sum = over(left, right, gcd(left.m_denominator, right.m_denominator));
    if (!sum) throw base::Overflow();
    return *sum;
}

bool operator==(const Fraction& a, const Fraction& b) { return (a - b).m_numerator == 0; }

bool operator<(const Fraction& a, const Fraction& b) { return (a - b).m_numerator < 0; }

std::int64_t Fraction::wideRoundedHalfEven() const {
    const auto [quotient, rest] = divideDown(m_numerator, m_denominator);
    const Int128 other = m_denominator - rest;
    const bool up = rest > other || (rest == other && (quotient & 1) != 0);
    return narrow(quotient + (up ? 1 : 0));
}

std::int64_t Fraction::roundedHalfUp() const {
    const auto [quotient, rest] = divideDown(m_numerator, m_denominator);
    const Int128 other = m_denominator - rest;
    const bool up = rest > other || (rest == other && m_numerator > 0);
    return narrow(quotient + (up ? 1 : 0));
}

std::int64_t Fraction::floor() const { return narrow(divideDown(m_numerator, m_denominator).quotient); }

std::int64_t Fraction::ceiling() const {
    const auto [quotient, rest] = divideDown(m_numerator, m_denominator);
    return narrow(quotient + (rest != 0 ? 1 : 0));
}

} // namespace sp::units
