// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/geometry.h"

#include <optional>
#include <span>

namespace sp::artwork {

inline constexpr double kMillimetresPerPlotterUnit = 0.025; ///< HP-GL/2; 1016 to the inch

/// What the instructions SC, IP and IR make of a number: plotter units, or units of the user's own. Instructions that
/// say nothing possible are passed over.
class PltScale {
  public:
    void setPoints(std::span<const double> numbers);    ///< IP
    void forgetPoints() { m_first = m_second = {}; }    ///< IR, which goes by a sheet nobody knows
    void setUserUnits(std::span<const double> numbers); ///< SC
    void dropUserUnits() { m_kind = Kind::Plotter; }

    /// From coordinates as written to plotter units, y upwards.
    Matrix matrix() const;
    /// Whether those are plotter units indeed: user units between points that the file does not set have no size.
    bool isKnown() const { return m_kind == Kind::Plotter || m_kind == Kind::Factor || m_second; }

  private:
    enum class Kind { Plotter, Stretched, Even, Factor };
    Matrix between() const;

    std::optional<Point> m_first;
    std::optional<Point> m_second;
    Kind m_kind = Kind::Plotter;
    Point m_least;  ///< in user units, at the first point
    Point m_most;   ///< at the second, or plotter units for each user unit
    Point m_unused; ///< shares of the room left over, to the left and below
};

} // namespace sp::artwork
