// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/geometry.h"
#include "core/artwork/messages.h"
#include "core/base/result.h"
#include "core/catalogue/design_artwork.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace sp::artwork {

/// What an outline is painted with and where it stands. `colour` is "#rrggbb" of the fill, else of the
/// stroke; "pattern" where a pattern fills it; empty when the file gives no colour.
struct Ink {
    std::string colour;
    std::string layer;
    bool filled = false;

    friend bool operator==(const Ink&, const Ink&) = default;
};

/// A closed outline that is round (see subpath.h for the tolerance). Lengths in units of the drawing.
struct Disc {
    Point centre;
    double radius = 0;
    std::uint32_t ink = 0;   ///< index into Drawing::inks
    std::uint32_t shape = 0; ///< outlines of one compound path share a number
};

/// A part of a circle, counter-clockwise from the angle `from` (radians) over `sweep`.
struct ArcPart {
    Point centre;
    double radius = 0;
    double from = 0;
    double sweep = 0;
};

/// An outline that is not round, flattened.
struct Outline {
    std::uint32_t first = 0; ///< index into Drawing::points
    std::uint32_t size = 0;
    std::uint32_t ink = 0;
    std::uint32_t shape = 0;
    bool closed = false;
    bool evenOdd = false; ///< how overlapping outlines of one shape fill; else non-zero
};

/// What was there but is not an outline to count, and how often, in the order of the notes.
struct InOrderOfNotes {
    bool operator()(const base::Message& a, const base::Message& b) const;
};
using LeftOut = std::map<base::Message, std::size_t, InOrderOfNotes>;

/// What a file holds, as drawn: nothing is sized, sorted out or thrown away yet.
struct Drawing {
    catalogue::ArtworkFormat format = catalogue::ArtworkFormat::Svg; ///< of the file it was read from
    std::vector<Disc> discs;                                         ///< in drawing order, later ones on top
    std::vector<Outline> outlines;
    std::vector<Point> points;
    std::vector<Ink> inks;
    LeftOut leftOut;
    std::vector<base::Message> warnings;
    std::optional<double> millimetresPerUnit; ///< from the file's own units, when it has any
    std::string unitName;                     ///< what the file calls that unit: "mm", "in", "px"

    std::span<const Point> pointsOf(const Outline& outline) const {
        return std::span(points).subspan(outline.first, outline.size);
    }
};

/// Bounds on one file; reaching one refuses it in words (Code::TooLarge). These keep any file within about a
/// second and 200 MB on one core of 2020's making (tests/bench/count_bench).
struct Limits {
    std::size_t bytes = 64'000'000;
    std::size_t outlines = 500'000;
    std::size_t segments = 5'000'000; ///< commands of paths
    std::size_t points = 3'000'000;   ///< of outlines kept
    std::size_t visits = 1'000'000;   ///< elements met, counting each use of them
    std::size_t work = 200'000'000;   ///< bytes looked at, counting each time
};
inline constexpr int kMaxDepth = 256;
inline constexpr double kMaxCoordinate = 1e12; ///< from the origin, transforms done

/// Collects a Drawing within the bounds. After the first bound is hit `isFull()` stays true, adding does
/// nothing, and `finish` gives the error.
class DrawingBuilder {
  public:
    explicit DrawingBuilder(std::string_view fileName, const Limits& limits = {},
                            catalogue::ArtworkFormat format = catalogue::ArtworkFormat::Svg);

    const Limits& limits() const { return m_limits; }

    bool isFull() const { return m_trouble.has_value(); }
    /// Index of this ink; equal inks share one.
    std::uint32_t inkOf(std::string_view colour, std::string_view layer, bool filled);
    std::uint32_t nextShape() { return m_shapes++; }
    void add(const Disc& disc);
    void add(std::span<const Point> points, bool closed, bool evenOdd, std::uint32_t ink, std::uint32_t shape);
    /// The outline added last is this arc; arcs of one circle and ink that go round it together become a disc.
    void markArc(const ArcPart& part);
    void reject(const base::Message& reason, std::size_t count = 1);
    void reject(Note reason, std::size_t count = 1) { reject(base::say(reason), count); }
    /// Says a warning once.
    void warn(base::Message warning);
    void setUnit(std::optional<double> millimetres, std::string_view name);
    /// One element met.
    void visit();
    /// So many curves and lines of a path read.
    void countSegments(std::size_t count) {
        m_segments += count;
        if (m_segments > m_limits.segments) refuseSegments();
    }
    /// So many bytes looked at, also if they were looked at before.
    void spend(std::size_t bytes);
    void refuse(base::Error error);
    void refuseSegments();

    base::Result<Drawing> finish();

  private:
    bool hasRoom();
    void joinArcs();
    void refuseRepeats();

    std::string m_fileName;
    Limits m_limits;
    Drawing m_drawing;
    std::vector<std::pair<std::size_t, ArcPart>> m_arcs; ///< by index of the outline
    std::unordered_map<std::string, std::uint32_t> m_inkIndex;
    std::uint32_t m_lastInk = 0;
    std::uint32_t m_shapes = 0;
    std::size_t m_visits = 0;
    std::size_t m_segments = 0;
    std::size_t m_work = 0;
    std::optional<base::Error> m_trouble;
};

} // namespace sp::artwork
