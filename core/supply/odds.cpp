// SPDX-License-Identifier: MIT
#include "core/supply/odds.h"

#include <cmath>
#include <numbers>

namespace sp::supply {

namespace {

/// ln n! less its Stirling approximation, n at least 1.
double stirlingError(double n) {
    if (n < 16) {
        double factorial = 1;
        for (double i = 2; i <= n; ++i) factorial *= i;
        return std::log(factorial) - (n + 0.5) * std::log(n) + n - 0.5 * std::log(2 * std::numbers::pi);
    }
    const double nn = n * n;
    return (1.0 / 12 - (1.0 / 360 - (1.0 / 1260 - (1.0 / 1680 - 1.0 / 1188 / nn) / nn) / nn) / nn) / n;
}

/// x ln(x / m) + m - x without cancellation where x is near m.
double deviance(double x, double m) {
    if (std::abs(x - m) >= 0.1 * (x + m)) return x * std::log(x / m) + m - x;
    const double v = (x - m) / (x + m);
    double sum = (x - m) * v;
    double term = 2 * x * v;
    for (int j = 1; j < 1000; ++j) {
        term *= v * v;
        const double next = sum + term / (2 * j + 1);
        if (next == sum) break;
        sum = next;
    }
    return sum;
}

/// ln share, `rest` being 1 - share: of the two the smaller is the exact one.
double logarithmOf(double share, double rest) { return share > 0.5 ? std::log1p(-rest) : std::log(share); }

/// P(X = x) for n trials that succeed with p; 0 < p < 1, q = 1 - p.
double chanceOfExactly(double x, double n, double p, double q) {
    if (x == 0) return std::exp(n * logarithmOf(q, p));
    if (x == n) return std::exp(n * logarithmOf(p, q));
    const double exponent =
        stirlingError(n) - stirlingError(x) - stirlingError(n - x) - deviance(x, n * p) - deviance(n - x, n * q);
    return std::exp(exponent) * std::sqrt(n / (2 * std::numbers::pi * x * (n - x)));
}

} // namespace

double chanceOfAtLeast(units::Count needed, units::Count received, units::Rate loss) {
    if (needed.value() <= 0) return 1;
    if (needed > received) return 0;
    const double q = static_cast<double>(loss.ppm()) / static_cast<double>(units::kPpm);
    const double p = static_cast<double>(units::kPpm - loss.ppm()) / static_cast<double>(units::kPpm);
    if (loss.ppm() <= 0) return 1;
    if (loss.ppm() >= units::kPpm) return 0;

    const auto n = static_cast<double>(received.value());
    const auto k = static_cast<double>(needed.value());
    constexpr double kNegligible = 1e-18;
    double sum = 0;
    if (k > n * p) {
        double term = chanceOfExactly(k, n, p, q);
        for (double x = k; x <= n && term > sum * kNegligible; ++x) {
            sum += term;
            term *= (n - x) / (x + 1) * (p / q);
        }
        return sum;
    }
    double term = chanceOfExactly(k - 1, n, p, q);
    for (double x = k - 1; x >= 0 && term > sum * kNegligible; --x) {
        sum += term;
        term *= x / (n - x + 1) * (q / p);
    }
    return 1 - sum;
}

} // namespace sp::supply
