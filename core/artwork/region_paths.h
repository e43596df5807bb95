// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/region.h"

#include <polyclipping/clipper.hpp>

#include <cmath>

// Rings as the library that clips them has them: whole steps of 10 nm. For the sources of this room alone.
namespace sp::artwork {

inline constexpr double kPerMillimetre = 100'000;
inline constexpr double kCleanSteps = 20; ///< corners that bend less are dropped

inline ClipperLib::Path toPath(const std::vector<Point>& ring) {
    ClipperLib::Path path;
    path.reserve(ring.size());
    for (const Point p : ring)
        path.emplace_back(std::llround(p.x * kPerMillimetre), std::llround(p.y * kPerMillimetre));
    return path;
}

inline std::vector<Point> toPoints(const ClipperLib::Path& path) {
    std::vector<Point> points;
    points.reserve(path.size());
    for (const auto& p : path)
        points.push_back({static_cast<double>(p.X) / kPerMillimetre, static_cast<double>(p.Y) / kPerMillimetre});
    return points;
}

inline ClipperLib::Paths toPaths(const Rings& rings) {
    ClipperLib::Paths paths;
    for (const auto& ring : rings) paths.push_back(toPath(ring));
    return paths;
}

inline Rings toRings(const ClipperLib::Paths& paths) {
    Rings rings;
    for (const auto& path : paths)
        if (path.size() >= 3) rings.push_back(toPoints(path));
    return rings;
}

/// What a shape covers, as paths that do not cross, to be filled non-zero.
inline ClipperLib::Paths simplePaths(const Shape& shape) {
    ClipperLib::Paths clean;
    ClipperLib::SimplifyPolygons(toPaths(shape.rings), clean,
                                 shape.evenOdd ? ClipperLib::pftEvenOdd : ClipperLib::pftNonZero);
    return clean;
}

/// What is left of lines where `taken` (to be filled non-zero) is not. A closed line that is cut is open.
std::vector<Line> linesOutside(std::vector<Line> lines, const ClipperLib::Paths& taken);

} // namespace sp::artwork
