// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>

namespace sp::desk {

/// A step of 1, 2 or 5 times a power of ten that cuts `span` (above 0) into at most `most` parts: between the lines of
/// a chart.
inline double niceStep(double span, int most) {
    const double raw = span / most;
    const double power = std::pow(10, std::floor(std::log10(raw)));
    for (const double step : {1.0, 2.0, 5.0})
        if (step * power >= raw) return step * power;
    return 10 * power;
}

} // namespace sp::desk
