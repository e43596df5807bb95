// SPDX-License-Identifier: MIT
#include "core/needs/learning.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace sp::needs;
using sp::units::Rate;

namespace {

/// What the n-th unit adds.
double unitTimeFactor(Rate learning, std::int64_t n) {
    return n == 1 ? totalTimeFactor(learning, 1) : totalTimeFactor(learning, n) - totalTimeFactor(learning, n - 1);
}

// McGraw-Hill 2004 slides, Technical Note 2 (90 %, first unit 100 minutes).
TEST(Learning, agreesWithTheSlidesAt90Percent) {
    const double printed[] = {100, 90, 84.62, 81.00, 78.30, 76.16};
    for (int n = 1; n <= 6; ++n)
        EXPECT_NEAR(100 * unitTimeFactor(Rate::fromPercent(90), n), printed[n - 1], 0.005) << n;
}

// CRAN learningCurve 1.1.2, tests/testthat/test_unit_models.R: first 100 h at 85 %, unit 125 and total of 125;
// 90 %, first 15 h, unit 14.
TEST(Learning, agreesWithThePackageLearningCurve) {
    EXPECT_NEAR(100 * unitTimeFactor(Rate::fromPercent(85), 125), 32.236, 0.0005);
    EXPECT_NEAR(100 * totalTimeFactor(Rate::fromPercent(85), 125), 5201.085, 0.0005);
    EXPECT_NEAR(15 * unitTimeFactor(Rate::fromPercent(90), 14), 10.04, 0.005);
}

// The printed tables of operations textbooks (Chase and Jacobs, Stevenson; from memory).
TEST(Learning, agreesWithTheTextbookTable) {
    EXPECT_NEAR(unitTimeFactor(Rate::fromPercent(80), 100), 0.2271, 5e-5);
    EXPECT_NEAR(totalTimeFactor(Rate::fromPercent(80), 100), 32.651, 5e-4);
    EXPECT_NEAR(unitTimeFactor(Rate::fromPercent(95), 50), 0.7486, 5e-5);
    EXPECT_NEAR(totalTimeFactor(Rate::fromPercent(95), 50), 40.224, 5e-4);
}

TEST(Learning, hasNoEffectAt100Percent) {
    EXPECT_EQ(unitTimeFactor(Rate::fromPercent(100), 1000), 1);
    EXPECT_EQ(totalTimeFactor(Rate::fromPercent(100), 1'000'000), 1'000'000);
}

TEST(Learning, longRunsAgreeWithThePlainSum) {
    for (const int percent : {50, 70, 85, 99}) {
        const auto rate = Rate::fromPercent(percent);
        double sum = 0;
        for (int n = 100'000; n >= 1; --n) sum += std::pow(n, std::log2(percent / 100.0));
        EXPECT_NEAR(totalTimeFactor(rate, 100'000) / sum, 1, 1e-11) << percent;
    }
}

} // namespace
