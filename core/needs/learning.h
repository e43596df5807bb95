// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/rate.h"

#include <cstdint>

namespace sp::needs {

/// Time of the first n units together, as a multiple of the first, by the Crawford unit curve: the n-th takes n^b with
/// b = ln r / ln 2. `learning` r from 50 to 100 %, n from 1. Exact sum to 4,096 units, from there on the
/// Euler-Maclaurin formula to the third derivative (relative error below 1e-12). Source: T. P. Wright 1936 for the
/// curve; Crawford's reading as in the vignette of the CRAN package learningCurve 1.1.2.
double totalTimeFactor(units::Rate learning, std::int64_t n);

} // namespace sp::needs
