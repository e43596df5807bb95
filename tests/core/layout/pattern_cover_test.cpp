// SPDX-License-Identifier: MIT
#include "core/layout/cover_prices.h"
#include "core/layout/guillotine.h"
#include "core/layout/mixed.h"
#include "core/layout/one_bin.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace sp;
using namespace sp::layout;
using units::Length;

namespace {

Length inch(double inches) { return Length::fromNanometres(std::llround(inches * 25'400'000)); }

MixedPlan planOf(std::int64_t decals, std::int64_t tags) {
    const auto plan = packSheets({{"A", {inch(9), inch(12)}, {}, {}}},
                                 {{"decal", {inch(3.5), inch(2.75)}, decals}, {"tag", {inch(1), inch(2)}, tags}},
                                 {{}, inch(0.125), false}, {12'000'000, {}});
    EXPECT_TRUE(plan);
    return plan.value_or(MixedPlan{});
}

// Three rows of three and the tags below: 3 × 2.875 in wide, 3 × 3.625 + 1.125 = 12 in high.
TEST(PatternCover, nineDecalsAndFourTagsLieOnOneSheet) {
    EXPECT_EQ(planOf(9, 4).sheets.size(), 1U);
    EXPECT_TRUE(planOf(9, 4).proven);
    EXPECT_EQ(planOf(90, 40).sheets.size(), 10U);
    EXPECT_LE(planOf(2'500, 2'500).sheets.size(), 313U);
}

// A decal and one of the others fill the long sheet, 101 + 99 = 200; the last one takes a short one.
TEST(PatternCover, takesTheCheapestMixOfSheets) {
    const auto mm = [](int n) { return Length::fromNanometres(n * std::int64_t{1'000'000}); };
    const auto plan = packSheets({{"S", {mm(100), mm(100)}, units::Money::fromMicros(1'000'000), {}},
                                  {"L", {mm(100), mm(200)}, units::Money::fromMicros(2'100'000), {}}},
                                 {{"a", {mm(100), mm(101)}, 1}, {"b", {mm(100), mm(99)}, 2}}, {}, {2'000'000, {}});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->cost, units::Money::fromMicros(3'100'000));
}

TEST(PatternCover, aRollTakesStraightRows) {
    for (const auto& [width, most] : {std::pair{9.0, 11.875}, std::pair{12.0, 8.5}}) {
        const auto roll = packRoll(inch(width), {{"decal", {inch(3.5), inch(2.75)}, 9}, {"tag", {inch(1), inch(2)}, 4}},
                                   {{}, inch(0.125), false}, {12'000'000, {}});
        ASSERT_TRUE(roll);
        EXPECT_LE(roll->length, inch(most)) << width;
    }
}

/// A sheet cut from side to side at random into so many pieces: they lie on one sheet again.
std::vector<MixedPiece> cutUp(std::uint64_t seed, std::size_t pieces, int width, int height) {
    struct Part {
        int width, height;
    };
    std::mt19937_64 random(seed);
    const auto below = [&random](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    std::vector<Part> parts{{width, height}};
    while (parts.size() < pieces) {
        auto& part = parts[static_cast<std::size_t>(below(static_cast<int>(parts.size())))];
        const bool across = part.width > part.height;
        const int side = across ? part.width : part.height;
        if (side < 20) continue;
        const int cut = 8 + below(side - 16);
        Part other = part;
        (across ? part.width : part.height) = cut;
        (across ? other.width : other.height) = side - cut;
        parts.push_back(other);
    }
    std::vector<MixedPiece> out;
    for (const auto& part : parts)
        out.push_back({std::to_string(out.size()),
                       {Length::fromNanometres(part.width * std::int64_t{1'000'000}),
                        Length::fromNanometres(part.height * std::int64_t{1'000'000})},
                       1});
    return out;
}

TEST(PatternCover, solvesPerfectSheetsOfTwelveToTwentyPieces) {
    int solved = 0;
    constexpr int kProblems = 24;
    for (int n = 0; n < kProblems; ++n) {
        const auto pieces = cutUp(static_cast<std::uint64_t>(n) + 1, 12 + static_cast<std::size_t>(n) % 9, 229, 305);
        const auto mm = [](int side) { return Length::fromNanometres(side * std::int64_t{1'000'000}); };
        const auto plan = packSheets({{"A", {mm(229), mm(305)}, {}, {}}}, pieces, {}, {12'000'000, {}});
        ASSERT_TRUE(plan);
        solved += plan->sheets.size() == 1 ? 1 : 0;
    }
    EXPECT_GE(solved, 23);
}

// Worked by hand: 3 x 2 of six on a sheet of 9 x 4, nothing left.
TEST(Guillotine, cutsASheetWithoutWaste) {
    const std::vector<BoxKind> kinds{{3, 2, 6}};
    Guillotine cutter(kinds, 9, 4, true);
    std::int64_t steps = 1'000'000;
    EXPECT_EQ(cutter.best({1.0}, steps).size(), 6U);
    EXPECT_LT(steps, 1'000'000);
}

// Two pieces of each kind; a way with both costs 3, of one alone 2: one copy of the mixed way and so on; by hand.
TEST(CoverPrices, areThoseOfTheCheapestFractions) {
    const auto found = coverPrices({{2, {1, 0}}, {2, {0, 1}}, {3, {1, 1}}}, {4, 2});
    EXPECT_NEAR(found.copies[0], 2, 1e-9);
    EXPECT_NEAR(found.copies[1], 0, 1e-9);
    EXPECT_NEAR(found.copies[2], 2, 1e-9);
    EXPECT_NEAR(4 * found.prices[0] + 2 * found.prices[1], 10, 1e-9);
    EXPECT_NEAR(found.prices[0], 2, 1e-9);
}

TEST(OneBin, findsNoWayWhereThereIsNone) {
    std::int64_t steps = 1'000'000;
    EXPECT_FALSE(layInOneBin({{6, 6, 2}}, 10, 10, true, steps).isLaid());
    EXPECT_TRUE(layInOneBin({{5, 10, 2}}, 10, 10, true, steps).isLaid());
}

} // namespace
