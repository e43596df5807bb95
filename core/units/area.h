// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/length.h"

#include <compare>

namespace sp::units {

__extension__ using Int128 = __int128;

/// An area in square nanometres, 128 bits, so that a kilometre by a kilometre is exact.
class Area {
  public:
    constexpr Area() = default;
    static constexpr Area of(Length width, Length height) {
        return Area(static_cast<Int128>(width.nanometres()) * height.nanometres());
    }
    constexpr Int128 squareNanometres() const { return m_nm2; }
    /// For words only.
    constexpr double squareMillimetres() const { return static_cast<double>(m_nm2) / 1e12; }

    friend constexpr auto operator<=>(const Area&, const Area&) = default;
    friend constexpr Area operator+(Area a, Area b) { return Area(a.m_nm2 + b.m_nm2); }
    friend constexpr Area operator-(Area a, Area b) { return Area(a.m_nm2 - b.m_nm2); }

  private:
    constexpr explicit Area(Int128 nm2)
        : m_nm2(nm2) {}

    Int128 m_nm2 = 0;
};

} // namespace sp::units
