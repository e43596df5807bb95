// SPDX-License-Identifier: MIT
#include "core/layout/free_places.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <tuple>

namespace sp::layout {

namespace {

using Sides = std::tuple<std::int64_t, std::int64_t, std::int64_t, std::int64_t>;

std::vector<Sides> sidesOf(const FreePlaces& free) {
    std::vector<Sides> sides;
    for (const auto& place : free.places()) sides.emplace_back(place.left, place.low, place.right, place.high);
    std::sort(sides.begin(), sides.end());
    return sides;
}

// By hand: 2 × 2 in the middle of 10 × 10 leaves a strip along each side, each over the whole length.
TEST(FreePlaces, aPieceInTheMiddleLeavesAStripAlongEachSide) {
    FreePlaces free({0, 0, 10, 10});
    free.take({4, 4, 6, 6});
    EXPECT_EQ(sidesOf(free), (std::vector<Sides>{{0, 0, 4, 10}, {0, 0, 10, 4}, {0, 6, 10, 10}, {6, 0, 10, 10}}));
    free.take({0, 0, 10, 10});
    EXPECT_TRUE(free.places().empty());
}

TEST(FreePlaces, whatIsNotTouchedStays) {
    FreePlaces free({0, 0, 10, 10});
    free.take({0, 0, 5, 10});
    free.take({0, 0, 5, 3});
    EXPECT_EQ(sidesOf(free), (std::vector<Sides>{{5, 0, 10, 10}}));
}

/// Every rectangle of whole sides that is free and that no free one is larger than, by trying all.
std::vector<Sides> byTrying(const std::vector<FreePlaces::Place>& used, std::int64_t side) {
    std::vector<FreePlaces::Place> all;
    for (std::int64_t left = 0; left < side; ++left)
        for (std::int64_t right = left + 1; right <= side; ++right)
            for (std::int64_t low = 0; low < side; ++low)
                for (std::int64_t high = low + 1; high <= side; ++high) {
                    const FreePlaces::Place place{left, low, right, high};
                    if (std::none_of(used.begin(), used.end(), [&](const auto& u) { return u.touches(place); }))
                        all.push_back(place);
                }
    std::vector<Sides> largest;
    for (const auto& place : all) {
        const auto holders =
            std::count_if(all.begin(), all.end(), [&](const auto& other) { return other.holds(place); });
        if (holders == 1) largest.emplace_back(place.left, place.low, place.right, place.high);
    }
    std::sort(largest.begin(), largest.end());
    return largest;
}

TEST(FreePlaces, areAllOfTheLargestAndNoOthers) {
    std::mt19937_64 random(test::printedSeed());
    constexpr std::int64_t kSide = 7;
    const auto below = [&](std::int64_t n) {
        return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(n));
    };
    for (int round = 0; round < 60; ++round) {
        FreePlaces free({0, 0, kSide, kSide});
        std::vector<FreePlaces::Place> used;
        for (std::int64_t n = below(4) + 1; n > 0; --n) {
            const auto x = below(kSide);
            const auto y = below(kSide);
            used.push_back({x, y, x + 1 + below(kSide - x), y + 1 + below(kSide - y)});
            free.take(used.back());
        }
        EXPECT_EQ(sidesOf(free), byTrying(used, kSide));
    }
}

} // namespace

} // namespace sp::layout
