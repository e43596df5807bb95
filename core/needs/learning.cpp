// SPDX-License-Identifier: MIT
#include "core/needs/learning.h"

#include <algorithm>
#include <cmath>

namespace sp::needs {

namespace {

constexpr std::int64_t kSummedUnits = 4'096;

double exponentOf(units::Rate learning) {
    return std::log2(static_cast<double>(learning.ppm()) / static_cast<double>(units::kPpm));
}

} // namespace

double totalTimeFactor(units::Rate learning, std::int64_t n) {
    const double b = exponentOf(learning);
    if (b == 0) return static_cast<double>(n);
    double sum = 0;
    const std::int64_t summed = std::min(n, kSummedUnits);
    for (std::int64_t i = summed; i >= 1; --i) sum += std::pow(static_cast<double>(i), b);
    if (n == summed) return sum;
    // The units from `summed` + 1 to n: integral, end terms and the first derivatives at both ends.
    const auto from = static_cast<double>(summed);
    const auto to = static_cast<double>(n);
    const auto power = [&](double x, double exponent) { return std::pow(x, exponent); };
    const double integral =
        std::abs(b + 1) < 1e-12 ? std::log(to / from) : (power(to, b + 1) - power(from, b + 1)) / (b + 1);
    const double ends = (power(to, b) - power(from, b)) / 2;
    const double first = b * (power(to, b - 1) - power(from, b - 1)) / 12;
    const double third = b * (b - 1) * (b - 2) * (power(to, b - 3) - power(from, b - 3)) / 720;
    return sum + integral + ends + first - third;
}

} // namespace sp::needs
