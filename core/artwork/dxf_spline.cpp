// SPDX-License-Identifier: MIT
#include "core/artwork/dxf_spline.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr std::size_t kMaxDegree = 10;
constexpr std::size_t kMaxControls = 100'000;

struct Weighted {
    Point p;
    double w = 1;
};

/// The point at `t`, which lies in the span that begins at knot `span`.
Point deBoor(const Spline& spline, std::size_t span, double t) {
    std::array<Weighted, kMaxDegree + 1> d;
    const std::size_t degree = spline.degree;
    for (std::size_t i = 0; i <= degree; ++i) {
        const std::size_t at = span - degree + i;
        const double w = spline.weights.empty() ? 1 : spline.weights[at];
        d[i] = {w * spline.control[at], w};
    }
    for (std::size_t r = 1; r <= degree; ++r) {
        for (std::size_t i = degree; i >= r; --i) {
            const double left = spline.knots[span - degree + i];
            const double right = spline.knots[span + 1 + i - r];
            const double share = right > left ? (t - left) / (right - left) : 0;
            d[i].p = (1 - share) * d[i - 1].p + share * d[i].p;
            d[i].w = (1 - share) * d[i - 1].w + share * d[i].w;
        }
    }
    return (1 / d[degree].w) * d[degree].p;
}

} // namespace

bool readSplineOf(const DxfEntity& entity, Spline& spline) {
    const int degree = entity.whole(71, 3);
    if (degree < 1 || degree > static_cast<int>(kMaxDegree)) return false;
    spline.degree = static_cast<std::size_t>(degree);
    spline.closed = (entity.whole(70, 0) & 1) != 0;
    for (const DxfPair& pair : entity.pairs()) {
        if (pair.code != 10 && pair.code != 20 && pair.code != 40 && pair.code != 41) continue;
        const auto value = numberFrom(pair.value);
        if (!value) return false;
        if (pair.code == 10) spline.control.push_back({*value, 0});
        if (pair.code == 20 && !spline.control.empty()) spline.control.back().y = *value;
        if (pair.code == 40) spline.knots.push_back(*value);
        if (pair.code == 41) spline.weights.push_back(*value);
    }
    const bool weighted = spline.weights.size() == spline.control.size() &&
                          std::all_of(spline.weights.begin(), spline.weights.end(), [](double w) { return w > 0; });
    if (!weighted) spline.weights.clear();
    return spline.control.size() > spline.degree && spline.control.size() <= kMaxControls &&
           spline.knots.size() == spline.control.size() + spline.degree + 1 &&
           std::is_sorted(spline.knots.begin(), spline.knots.end());
}

std::vector<Point> pointsOn(const Spline& spline) {
    constexpr int kSteps = 8;
    std::vector<Point> points;
    for (std::size_t span = spline.degree; span < spline.control.size(); ++span) {
        const double from = spline.knots[span];
        const double to = spline.knots[span + 1];
        if (!(to > from)) continue;
        if (points.empty()) points.push_back(deBoor(spline, span, from));
        for (int i = 1; i <= kSteps; ++i) points.push_back(deBoor(spline, span, from + (to - from) * i / kSteps));
    }
    return points;
}

} // namespace sp::artwork
