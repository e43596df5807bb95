// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/dotted_line.h"
#include "core/artwork/drawing.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace sp::artwork {

/// How far from a circle an outline may be and still be a disc: no sample farther from the fitted circle than
/// this share of its radius. Regular polygons pass from ten corners on (a twelve-sided one is off by 1.7 %),
/// ellipses up to axes of 1.06 : 1; a hexagon (6.7 %) and an octagon (3.8 %) do not.
inline constexpr double kRoundness = 0.03;
/// How far the end may be from the beginning, as a share of the radius, and the outline still be closed.
inline constexpr double kMaxGap = 0.05;

/// Of one sub-path; a text of a whole page as one has a fraction of them.
inline constexpr std::size_t kMaxSegmentsInOne = 200'000;

struct RoundFit {
    Point centre;
    double radius = 0;
};

/// One sub-path in units of the drawing (transforms already done): lines and cubic curves. Meant to be
/// reused.
class Subpath {
  public:
    void start(Point at);
    void lineTo(Point to);
    void cubicTo(Point control1, Point control2, Point to);
    /// An arc of what `fromUnitCircle` makes of the unit circle, from where the path stands, which must be
    /// the image of `arm` on that circle, over `sweep` radians, positive from x to y; at most two full turns.
    void arc(const Matrix& fromUnitCircle, Point arm, double sweep);
    void close() { m_closed = true; }

    /// The circle this outline is, within kRoundness, closed and going round once; or the circle that a cutter makes
    /// of it: curves that go round once and some way on, with lines before and after them that lead in or out, no
    /// farther from its centre than twice its radius (a spoke, an overcut); or short lines alone that do so. Else
    /// nothing. Least squares after Kasa (1976) on points of the curves and on both corners and middles of lines, since
    /// the corners of any regular polygon lie on a circle. The radius is that of the corners where there are only
    /// lines.
    std::optional<RoundFit> fitCircle();
    /// The corners of the outline flattened to a 2000th of each curve's length.
    std::vector<Point>& flatten();

    /// Adds itself to the drawing as a disc or as an outline. A path without extent is left out by name (round ends
    /// of its stroke may show it as a dot), one of more than kMaxSegmentsInOne segments refuses the file (TooLarge).
    void addTo(DrawingBuilder& builder, bool evenOdd, std::uint32_t ink, std::uint32_t shape);
    /// Adds the dots of its stroke alone. Left out and refused as above.
    void addDotsTo(DrawingBuilder& builder, const DottedLine& dots);

  private:
    struct Segment {
        bool curved = false;
        Point control1;
        Point control2;
        Point to;
    };

    /// An arc as it was given, not yet made into curves.
    struct Turn {
        Matrix fromUnitCircle;
        Point arm;
        double sweep = 0;
    };

    std::optional<RoundFit> fitWhole();
    std::optional<RoundFit> fitCut();
    std::optional<ArcPart> fitArc();
    bool mayOvercut() const;
    double sampleCurves();
    double radiusOfCorners(Point centre) const;

    bool endsMeet(double reach) const;
    void append(const Segment& segment);
    void draw(const Turn& turn);
    void drawTurns();
    std::optional<RoundFit> wheel() const;

    /// What an arc of one piece needs; paths repeat their arcs.
    struct Step {
        double angle = 0, cosine = 1, sine = 0, reach = 0;
    };

    Step m_step;
    Point m_first;
    Point m_last;
    bool m_closed = false;
    bool m_curved = false;
    bool m_wasDrawn = false; ///< somewhere, if only to where it began
    bool m_isTooLong = false;
    std::vector<Turn> m_turns; ///< while there is nothing else: most holes are two arcs and need no curves
    std::vector<Segment> m_segments;
    std::vector<Point> m_samples;
};

} // namespace sp::artwork
