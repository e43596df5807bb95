// SPDX-License-Identifier: MIT
#include "core/artwork/outline_run.h"

#include "core/artwork/neighbours.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr double kCornerTurn = 35 * kRadian;
constexpr double kRoundingMm = 1e-6;
constexpr double kGrainMm = 0.01; ///< lengths as alike as this are equal

/// The corners of a ring or line from one true corner to the next, both included.
struct Piece {
    std::vector<Point> points;
    bool endsALine = false; ///< a stone stands on its end as well
};

bool isCorner(Point before, Point here, Point after) {
    const Point a = here - before;
    const Point b = after - here;
    return std::abs(std::atan2(cross(a, b), dot(a, b))) > kCornerTurn;
}

void splitRing(const std::vector<Point>& ring, std::vector<Piece>& pieces) {
    const std::size_t n = ring.size();
    std::vector<std::size_t> corners;
    for (std::size_t i = 0; i < n; ++i)
        if (isCorner(ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n])) corners.push_back(i);
    if (corners.empty()) corners.push_back(0);
    for (std::size_t k = 0; k < corners.size(); ++k) {
        const std::size_t end = k + 1 < corners.size() ? corners[k + 1] : corners[0] + n;
        auto& piece = pieces.emplace_back();
        for (std::size_t i = corners[k]; i <= end; ++i) piece.points.push_back(ring[i % n]);
    }
}

void splitLine(const std::vector<Point>& line, std::vector<Piece>& pieces) {
    std::size_t start = 0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const bool isEnd = i + 1 == line.size();
        if (!isEnd && !isCorner(line[i - 1], line[i], line[i + 1])) continue;
        auto& piece = pieces.emplace_back();
        for (std::size_t k = start; k <= i; ++k) piece.points.push_back(line[k]);
        piece.endsALine = isEnd;
        start = i;
    }
}

double lengthOf(const std::vector<Point>& line) {
    double length = 0;
    for (std::size_t i = 1; i < line.size(); ++i) length += distance(line[i - 1], line[i]);
    return length;
}

/// The longest stretches first, so that a shape turned by a quarter holds the same.
void sortLongestFirst(std::vector<Piece>& pieces) {
    const auto grains = [](const Piece& piece) { return std::llround(lengthOf(piece.points) / kGrainMm); };
    std::stable_sort(pieces.begin(), pieces.end(),
                     [&](const Piece& a, const Piece& b) { return grains(a) > grains(b); });
}

/// `steps` places at even distances along the piece, its beginning included, its end not.
std::vector<Point> placesOn(const std::vector<Point>& piece, double length, std::size_t steps) {
    std::vector<Point> places;
    const double step = length / static_cast<double>(steps);
    double passed = 0;
    std::size_t i = 1;
    for (std::size_t k = 0; k < steps; ++k) {
        const double wanted = static_cast<double>(k) * step;
        while (i + 1 < piece.size() && passed + distance(piece[i - 1], piece[i]) < wanted) {
            passed += distance(piece[i - 1], piece[i]);
            ++i;
        }
        const double edge = distance(piece[i - 1], piece[i]);
        const double share = edge > 0 ? std::min(1.0, (wanted - passed) / edge) : 0;
        places.push_back(piece[i - 1] + share * (piece[i] - piece[i - 1]));
    }
    return places;
}

bool areApart(const std::vector<Point>& places, Point end, double apart) {
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Point next = i + 1 < places.size() ? places[i + 1] : end;
        if (places.size() > 1 && distance(places[i], next) < apart - kRoundingMm) return false;
    }
    return true;
}

OutlineRun runOn(std::vector<Piece> pieces, double pitch, double apart) {
    OutlineRun run;
    Box box;
    for (const Piece& piece : pieces) {
        run.length += lengthOf(piece.points);
        for (const Point p : piece.points) box.add(p);
    }
    Neighbours taken(box, apart, static_cast<std::size_t>(std::min(run.length / pitch, 1e7)) + 16);
    sortLongestFirst(pieces);
    for (const Piece& piece : pieces) {
        const double length = lengthOf(piece.points);
        auto steps = static_cast<std::size_t>(std::max(1.0, std::round(length / pitch)));
        auto places = placesOn(piece.points, length, steps);
        // On bends the straight way is shorter than the way along; a few steps fewer mend that.
        for (int tries = 0; tries < 8 && steps > 1 && !areApart(places, piece.points.back(), apart); ++tries) {
            steps -= std::max<std::size_t>(1, steps / 64);
            places = placesOn(piece.points, length, steps);
        }
        if (piece.endsALine) places.push_back(piece.points.back());
        ++run.pieces;
        for (const Point place : places) {
            bool isFree = true;
            taken.near(place, apart, [&](std::uint32_t other) {
                isFree = distance(run.centres[other], place) >= apart - kRoundingMm;
                return isFree;
            });
            if (!isFree) continue;
            taken.add(place, static_cast<std::uint32_t>(run.centres.size()));
            run.centres.push_back(place);
        }
    }
    return run;
}

} // namespace

OutlineRun runAlong(const Rings& rings, double pitch, double apart) {
    std::vector<Piece> pieces;
    for (const auto& ring : rings) splitRing(ring, pieces);
    return runOn(std::move(pieces), pitch, apart);
}

OutlineRun runAlongLines(std::span<const Line> lines, double pitch, double apart) {
    std::vector<Piece> pieces;
    for (const Line& line : lines) {
        if (line.closed)
            splitRing(line.points, pieces);
        else
            splitLine(line.points, pieces);
    }
    return runOn(std::move(pieces), pitch, apart);
}

} // namespace sp::artwork
