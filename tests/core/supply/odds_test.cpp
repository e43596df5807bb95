// SPDX-License-Identifier: MIT
#include "core/supply/odds.h"

#include "tests/support/seed.h"

#include <boost/math/distributions/binomial.hpp>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

using sp::supply::chanceOfAtLeast;
using sp::units::Count;
using sp::units::Rate;

namespace {

// OpenStax, Introductory Statistics, module m54267: binomial, p 0.25, n 5, P(X > 3) = 0.0153 as printed from rounded
// terms; exactly 0.015625.
TEST(Odds, agreeWithAPublishedExample) {
    EXPECT_NEAR(chanceOfAtLeast(Count::of(4), Count::of(5), Rate::fromPercent(75)), 0.015625, 1e-15);
}

// OpenStax, same book, module m54398: n 500, p 0.02, P(0..2) = 0.00258.
TEST(Odds, agreeWithAPublishedTail) {
    EXPECT_NEAR(1 - chanceOfAtLeast(Count::of(3), Count::of(500), Rate::fromPercent(98)), 0.002591, 1e-6);
}

TEST(Odds, ofTheEndsAreCertain) {
    EXPECT_EQ(chanceOfAtLeast(Count::of(0), Count::of(0), Rate::fromPercent(2)), 1.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(1), Count::of(0), Rate::fromPercent(2)), 0.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(9), Count::of(9), Rate()), 1.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(10), Count::of(9), Rate()), 0.0);
    EXPECT_NEAR(chanceOfAtLeast(Count::of(9), Count::of(9), Rate::fromPercent(50)), 1.0 / 512, 1e-18);
}

// Independent reference: Boost.Math, complement of the binomial distribution (by the incomplete beta function).
TEST(Odds, agreeWithBoostOverTheWholeRange) {
    std::mt19937_64 random(sp::test::printedSeed());
    std::size_t inside = 0;
    for (int round = 0; round < 4000; ++round) {
        const double size = std::uniform_real_distribution<double>(0, 8)(random);
        const auto n = 1 + static_cast<std::int64_t>(std::pow(10.0, size));
        const std::int64_t ppm =
            std::uniform_int_distribution<std::int64_t>(1, round % 2 == 0 ? 60'000 : 999'999)(random);
        const double keep = 1 - static_cast<double>(ppm) / 1e6;
        const double mean = static_cast<double>(n) * keep;
        const double spread = std::sqrt(mean * (1 - keep)) + 1;
        const double at = mean + spread * std::uniform_real_distribution<double>(-8, 8)(random);
        const auto k = std::clamp<std::int64_t>(static_cast<std::int64_t>(at), 1, n);
        const boost::math::binomial_distribution<double> reference(static_cast<double>(n), keep);
        const double expected = boost::math::cdf(boost::math::complement(reference, static_cast<double>(k - 1)));
        const double found = chanceOfAtLeast(Count::of(k), Count::of(n), Rate::fromPpm(ppm));
        // Boost itself loses digits far out in the tail of a very large n; 1e-8 relative is what both hold there.
        EXPECT_NEAR(found, expected, 1e-8 * expected + 1e-290) << "n " << n << " k " << k << " ppm " << ppm;
        inside += found > 1e-4 && found < 0.9999 ? 1U : 0U;
    }
    EXPECT_GT(inside, 1000U);
}

// Few stones, where every term can be summed as it stands: C(n, x) p^x q^(n - x) in long double.
TEST(Odds, agreeWithThePlainSumOfFewStones) {
    for (int n = 1; n <= 60; ++n)
        for (const std::int64_t ppm : {1LL, 20'000LL, 250'000LL, 500'000LL, 900'000LL, 999'999LL}) {
            const long double q = static_cast<long double>(ppm) / 1'000'000;
            const long double p = static_cast<long double>(1'000'000 - ppm) / 1'000'000;
            long double tail = 0;
            for (int k = n; k >= 1; --k) {
                long double term = 1;
                for (int i = 0; i < k; ++i) term *= static_cast<long double>(n - i) / (i + 1) * p;
                for (int i = 0; i < n - k; ++i) term *= q;
                tail += term;
                const auto expected = static_cast<double>(tail);
                EXPECT_NEAR(chanceOfAtLeast(Count::of(k), Count::of(n), Rate::fromPpm(ppm)), expected, 1e-11 * expected)
                    << n << ", " << k << ", " << ppm;
            }
        }
}

// The last stones of very many: p^n and 1 - q^n, by the logarithm.
TEST(Odds, ofAllAndOfAtLeastOne) {
    EXPECT_NEAR(chanceOfAtLeast(Count::of(1'000'000), Count::of(1'000'000), Rate::fromPpm(1)),
                std::exp(1e6 * std::log1p(-1e-6)), 1e-12);
    EXPECT_NEAR(chanceOfAtLeast(Count::of(1), Count::of(1'000'000), Rate::fromPpm(999'999)),
                1 - std::exp(1e6 * std::log1p(-1e-6)), 1e-12);
}

TEST(Odds, ofNothingLostOrAllLost) {
    EXPECT_EQ(chanceOfAtLeast(Count::of(5), Count::of(9), Rate()), 1.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(5), Count::of(9), Rate::fromPercent(100)), 0.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(0), Count::of(9), Rate::fromPercent(100)), 1.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(-1), Count::of(9), Rate::fromPercent(100)), 1.0);
    EXPECT_EQ(chanceOfAtLeast(Count::of(10), Count::of(9), Rate()), 0.0);
}

} // namespace
