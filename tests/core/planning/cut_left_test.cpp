// SPDX-License-Identifier: MIT
// What stays free on the sheets of a cutting plan, against a search through every rectangle of a sheet that is ruled
// in inches, and by hand.
#include "core/planning/cut_plan.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

namespace sp::planning {

namespace {

using support::inches;
using units::Length;

CutList listOn(std::int64_t width, std::int64_t height) {
    CutList list;
    list.material.name = "Felt";
    list.material.kind = catalogue::MaterialKind::Backing;
    list.material.sheet.width = inches(width);
    list.material.sheet.height = inches(height);
    list.material.sheet.oneWay = true;
    return list;
}

CutPiece pieces(std::int64_t width, std::int64_t height, std::int64_t count = 1) {
    return {std::to_string(width) + " by " + std::to_string(height), {inches(width), inches(height)}, count};
}

CutPlan planned(const CutList& list) {
    layout::MixedEffort effort;
    effort.steps = 100'000;
    const auto plan = planCut(list, effort);
    EXPECT_TRUE(plan.has_value()) << (plan ? "" : describe(plan.error()));
    return plan.value_or(CutPlan{});
}

/// Whole inches; a length between two marks fails the test.
std::int64_t marks(Length length) {
    EXPECT_EQ(length.nanometres() % inches(1).nanometres(), 0);
    return length.nanometres() / inches(1).nanometres();
}

std::int64_t areaOf(const layout::Piece& piece) { return marks(piece.width) * marks(piece.height); }

/// The most square inches in one rectangle that is a gap away from all pieces and a margin from the edge: every
/// rectangle of the sheet is tried.
std::int64_t mostLeft(const CutPlan& plan, const CutSheet& sheet) {
    const auto& traits = plan.list.material.sheet;
    const auto gap = marks(traits.gap);
    const auto margin = marks(traits.margin);
    const auto right = marks(traits.width) - margin;
    const auto high = marks(traits.height) - margin;
    const auto isFree = [&](std::int64_t x, std::int64_t y, std::int64_t toX, std::int64_t toY) {
        return std::ranges::none_of(sheet.places, [&](const CutPlace& place) {
            const auto& size = plan.list.pieces[place.piece].size;
            const auto wide = marks(place.at.turned ? size.height : size.width);
            const auto tall = marks(place.at.turned ? size.width : size.height);
            return x < marks(place.at.x) + wide + gap && marks(place.at.x) - gap < toX &&
                   y < marks(place.at.y) + tall + gap && marks(place.at.y) - gap < toY;
        });
    };
    std::int64_t most = 0;
    for (auto x = margin; x < right; ++x)
        for (auto y = margin; y < high; ++y)
            for (auto toX = x + 1; toX <= right; ++toX)
                for (auto toY = y + 1; toY <= high && isFree(x, y, toX, toY); ++toY)
                    most = std::max(most, (toX - x) * (toY - y));
    return most;
}

} // namespace

// A piece of 4 × 8 in at the corner of 9 × 12 in leaves 5 × 12 in beside it, and 9 × 4 in above it.
TEST(CutLeft, isTheLargerOfTwoStrips) {
    auto list = listOn(9, 12);
    list.pieces = {pieces(4, 8)};
    const auto plan = planned(list);
    ASSERT_EQ(plan.sheets.size(), 1U);
    EXPECT_EQ(areaOf(plan.sheets[0].left), 60);
    EXPECT_EQ(plan.sheets[0].left.width, inches(5));
    list.pieces = {pieces(8, 4)}; // … 9 × 8 in above it, and 1 × 12 in beside it
    EXPECT_EQ(planned(list).sheets[0].left.height, inches(8));
}

// Half of a sheet is cut away by 9 × 12 in from 9 × 12 in; a margin and a gap count on each side.
TEST(CutLeft, isNothingOnAFullSheet) {
    auto list = listOn(9, 12);
    list.pieces = {pieces(9, 12)};
    const auto full = planned(list);
    EXPECT_TRUE(full.sheets[0].left.width.isZero());
    EXPECT_TRUE(full.sheets[0].left.height.isZero());
    list.material.sheet.margin = inches(1);
    list.material.sheet.gap = inches(1);
    list.pieces = {pieces(7, 4)}; // 7 × 10 in inside the margin; a gap above the piece, 5 in stay
    EXPECT_EQ(areaOf(planned(list).sheets[0].left), 35);
}

TEST(CutLeft, isTheLargestRectangleOfAnySheet) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t n) {
        return 1 + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(n));
    };
    for (int round = 0; round < 60; ++round) {
        auto list = listOn(6 + upTo(6), 6 + upTo(6));
        auto& traits = list.material.sheet;
        traits.margin = inches(upTo(2) - 1);
        traits.gap = inches(upTo(2) - 1);
        traits.oneWay = random() % 2 == 0;
        for (auto n = upTo(4); n > 0; --n) list.pieces.push_back(pieces(upTo(5), upTo(5), upTo(3)));
        const auto plan = planned(list);
        std::int64_t before = 0;
        for (const auto& sheet : plan.sheets) {
            const auto left = areaOf(sheet.left);
            EXPECT_EQ(left, mostLeft(plan, sheet));
            EXPECT_GE(left, before) << "the sheet with most left is the last";
            before = left;
        }
    }
}

// Pieces of 5 × 5 and of 9 × 10 in do not share a sheet of 9 × 12 in: 7 × 9 in stay on one, 2 × 9 in on the other,
// whichever is first in the list.
TEST(CutLeft, isMostOnTheLastSheet) {
    auto list = listOn(9, 12);
    for (const bool swapped : {false, true}) {
        list.pieces = {pieces(5, 5), pieces(9, 10)};
        if (swapped) std::swap(list.pieces[0], list.pieces[1]);
        const auto plan = planned(list);
        ASSERT_EQ(plan.sheets.size(), 2U);
        EXPECT_EQ(areaOf(plan.sheets[0].left), 18);
        EXPECT_EQ(areaOf(plan.sheets[1].left), 63);
    }
}

// Six hundred pieces are looked at, one more is not: what would be left between them is of no use.
TEST(CutLeft, isNotLookedForBetweenTooManyPieces) {
    auto list = listOn(31, 20); // 620 square inches
    list.pieces = {pieces(1, 1, 600)};
    EXPECT_GT(areaOf(planned(list).sheets.at(0).left), 0);
    list.pieces[0].count = 601;
    const auto plan = planned(list);
    EXPECT_EQ(plan.count, 1);
    EXPECT_TRUE(plan.sheets.at(0).left.width.isZero());
}

} // namespace sp::planning
