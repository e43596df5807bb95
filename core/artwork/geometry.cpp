// SPDX-License-Identifier: MIT
#include "core/artwork/geometry.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

double distance(Point a, Point b) { return std::hypot(a.x - b.x, a.y - b.y); }

bool Matrix::isFinite() const {
    return std::isfinite(a) && std::isfinite(b) && std::isfinite(c) && std::isfinite(d) && std::isfinite(e) &&
           std::isfinite(f);
}

Matrix Matrix::rotation(double degrees) {
    const double angle = degrees * kRadian;
    const double cosine = std::cos(angle);
    const double sine = std::sin(angle);
    return {cosine, sine, -sine, cosine, 0, 0};
}

HalfAxes halfAxes(const Matrix& matrix, double rx, double ry) {
    const double a = matrix.a * rx;
    const double b = matrix.b * rx;
    const double c = matrix.c * ry;
    const double d = matrix.d * ry;
    const double sum = 0.5 * (a * a + b * b + c * c + d * d);
    const double product = std::abs(a * d - b * c);
    const double large = std::sqrt(sum + std::sqrt(std::max(0.0, sum * sum - product * product)));
    return {large, large > 0 ? product / large : 0};
}

} // namespace sp::artwork
