// SPDX-License-Identifier: MIT
#include "core/supply/odds.h"

#include <boost/math/distributions/binomial.hpp>
#include <gtest/gtest.h>

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
    constexpr unsigned kSeed = 20240611;
    std::mt19937_64 random(kSeed);
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
        EXPECT_NEAR(found, expected, 1e-8 * expected + 1e-290)
            << "seed " << kSeed << " n " << n << " k " << k << " ppm " << ppm;
        inside += found > 1e-4 && found < 0.9999 ? 1U : 0U;
    }
    EXPECT_GT(inside, 1000U);
}

} // namespace
