// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace sp::layout {

/// weights x values may not pass `limit`, 0 or more.
struct LinearRow {
    std::vector<double> weights; ///< by variable
    double limit = 0;
};

struct LinearMaximum {
    std::vector<double> values; ///< by variable, 0 or more
    std::vector<double> prices; ///< by row: what one more of its limit would bring
};

/// The most of aim x values under all rows, by G. Dantzig's simplex method; to the rounding of doubles, and after very
/// many exchanges whatever was reached. A variable that no row limits stays 0.
LinearMaximum linearMaximum(const std::vector<double>& aim, const std::vector<LinearRow>& rows);

} // namespace sp::layout
