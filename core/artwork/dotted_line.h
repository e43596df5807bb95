// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/drawing.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace sp::artwork {

/// Lengths of dashes and gaps by turns as SVG writes them, in px of 1/96 in; `whole` is what a percentage is of.
/// Nothing when there are none or one cannot be read.
std::vector<double> dashesFrom(std::string_view text, double whole);

/// Whether dashes of a stroke with round ends are dots: none hardly longer than nothing, with gaps between them.
bool areDots(std::span<const double> dashes, double lineWidth);

/// A stroke that is a row of round dots, in units of the drawing (SVG 1.1, section 11.4: a dash without length has its
/// two round ends).
class DottedLine {
  public:
    /// Of dashes that are dots, moved back by `offset`. Nothing where dots touch or are no circles: how many there are
    /// to see is not certain then.
    static std::optional<DottedLine> from(std::span<const double> dashes, double offset, double lineWidth,
                                          const Matrix& matrix, std::uint32_t ink);

    /// Adds a disc for each dot of the line through these corners. One that would lie on the first, where the line
    /// meets its beginning, is the first.
    void addTo(DrawingBuilder& builder, std::span<const Point> corners, bool isClosed) const;

  private:
    struct Dot {
        double start; ///< along one round of the pattern
        double length;
        double middle() const { return start + 0.5 * length; }
    };
    std::vector<Dot> m_dots;
    double m_period = 0;
    double m_offset = 0;
    double m_radius = 0;
    std::uint32_t m_ink = 0;
};

} // namespace sp::artwork
