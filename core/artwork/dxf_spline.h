// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/dxf_pairs.h"
#include "core/artwork/geometry.h"

#include <vector>

namespace sp::artwork {

/// A B-spline, rational when it has weights.
struct Spline {
    std::size_t degree = 3;
    bool closed = false;
    std::vector<double> knots; ///< not falling; control.size() + degree + 1 of them
    std::vector<Point> control;
    std::vector<double> weights; ///< none, or one for each control point
};

/// Takes a SPLINE entity apart. False when it does not hold together: no control points, knots missing or
/// falling, a degree below 1 or above 10, more than 100,000 control points.
bool readSplineOf(const DxfEntity& entity, Spline& spline);

/// Points along it, eight to each span between knots, by de Boor's recursion.
std::vector<Point> pointsOn(const Spline& spline);

} // namespace sp::artwork
