// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/scalar.h"

namespace sp::units {

/// A length in nanometres. 1/64 in and 0.01 mm are both whole numbers of it (1 in = 25.4 mm exactly, international
/// yard and pound agreement of 1959).
class Length : public Scalar<Length> {
  public:
    constexpr Length() = default;
    static constexpr Length fromNanometres(std::int64_t nm) { return Length(nm); }
    static constexpr Length fromMicrometres(std::int64_t um) { return Length(um * 1'000); }
    /// Whole 64ths of an inch; 64 of them are an inch.
    static constexpr Length fromInch64ths(std::int64_t n) { return Length(n * 396'875); }
    constexpr std::int64_t nanometres() const { return m_count; }
    /// For drawing and for words only; never compared, never stored.
    constexpr double millimetres() const { return static_cast<double>(m_count) / 1e6; }

  private:
    friend class Scalar<Length>;
    using Scalar::Scalar;
};

inline constexpr std::int64_t kNanometresPerMillimetre = 1'000'000;
inline constexpr std::int64_t kNanometresPerInch = 25'400'000;

/// No piece, sheet or roll is longer than this (1 km); longer input is refused as absurd.
inline constexpr Length kMaxLength = Length::fromNanometres(1'000'000'000'000);

} // namespace sp::units
