// SPDX-License-Identifier: MIT
#include "core/layout/bounds.h"
#include "core/layout/fit.h"

#include "tests/support/amounts.h"
#include "tests/support/layout_check.h"
#include "tests/support/seed.h"
#include "tests/support/waste_search.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <ostream>
#include <random>

using namespace sp::layout;
using sp::support::faultOf;
using sp::support::WasteSearch;
using sp::units::Length;

namespace {

using sp::support::nm;

struct Question {
    Sheet sheet;
    Piece piece;
    FitRules rules;

    friend std::ostream& operator<<(std::ostream& out, const Question& q) {
        return out << q.sheet.width.nanometres() << 'x' << q.sheet.height.nanometres() << " of "
                   << q.piece.width.nanometres() << 'x' << q.piece.height.nanometres() << " margin "
                   << q.rules.margin.nanometres() << " gap " << q.rules.gap.nanometres();
    }
};

SheetFit fit(const Question& q) {
    auto answer = fitSheet(q.sheet, q.piece, q.rules);
    EXPECT_TRUE(answer.has_value()) << q;
    return answer ? *answer : SheetFit{};
}

/// Shop sizes: 9 x 12 in, pieces 15 to 150 mm by the tenth, margin and gap 0 to 6 mm.
class ShopSizes : public testing::Test {
  protected:
    std::mt19937_64 m_random{sp::test::printedSeed()};

    std::int64_t between(std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(most - least + 1));
    }
    Question question() {
        const auto tenths = [this](std::int64_t least, std::int64_t most) {
            return nm(between(least, most) * 100'000);
        };
        return {
            {nm(228'600'000), nm(304'800'000)}, {tenths(150, 1500), tenths(150, 1500)}, {tenths(0, 60), tenths(0, 60)}};
    }
};

TEST_F(ShopSizes, liesBetweenThePlainLayoutsAndTheBound) {
    for (int k = 0; k < 400; ++k) {
        const Question q = question();
        const SheetFit answer = fit(q);
        const auto rows = [&](Length along, Length side) {
            return (along - q.rules.margin - q.rules.margin + q.rules.gap).nanometres() /
                   (side + q.rules.gap).nanometres();
        };
        const auto plain = std::max(rows(q.sheet.width, q.piece.width) * rows(q.sheet.height, q.piece.height),
                                    rows(q.sheet.width, q.piece.height) * rows(q.sheet.height, q.piece.width));
        EXPECT_GE(answer.count, plain) << q;
        EXPECT_LE(answer.count, answer.bound) << q;
        EXPECT_EQ(answer.proven, answer.count == answer.bound) << q;
        EXPECT_EQ(answer.positions.size(), static_cast<std::size_t>(answer.count)) << q;
        EXPECT_EQ(faultOf(answer.positions, q.sheet, q.piece, q.rules), "") << q;
    }
}

// Measured over 40 seeds: 396 to 400 of 400, on average 398.7 (52 of 16,000 unproven). Nine unproven in one draw would
// come about once in a hundred thousand seeds.
TEST_F(ShopSizes, isProvenForNearlyEverySheet) {
    int proven = 0;
    for (int k = 0; k < 400; ++k) proven += fit(question()).proven ? 1 : 0;
    RecordProperty("proven", proven);
    EXPECT_GE(proven, 392);
}

TEST_F(ShopSizes, neverFallsWhenTheSheetGrows) {
    for (int k = 0; k < 150; ++k) {
        Question q = question();
        const SheetFit before = fit(q);
        const Length more = nm(between(1, 40'000'000));
        (k % 2 == 0 ? q.sheet.width : q.sheet.height) += more;
        const SheetFit after = fit(q);
        EXPECT_GE(after.count, before.count) << q;
        EXPECT_GE(after.bound, before.count) << q;
    }
}

TEST_F(ShopSizes, isTheSameInAnyUnitAndSeenFromAnySide) {
    for (int k = 0; k < 150; ++k) {
        const Question q = question();
        const SheetFit answer = fit(q);
        const auto times = [](Length length) { return nm(length.nanometres() * 7); };
        const Question scaled{{times(q.sheet.width), times(q.sheet.height)},
                              {times(q.piece.width), times(q.piece.height)},
                              {times(q.rules.margin), times(q.rules.gap)}};
        const Question turned{{q.sheet.height, q.sheet.width}, q.piece, q.rules};
        const Question swapped{q.sheet, {q.piece.height, q.piece.width}, q.rules};
        for (const Question& same : {scaled, turned, swapped}) {
            const SheetFit other = fit(same);
            EXPECT_EQ(other.count, answer.count) << same;
            EXPECT_EQ(other.bound, answer.bound) << same;
            EXPECT_EQ(faultOf(other.positions, same.sheet, same.piece, same.rules), "") << same;
        }
    }
}

TEST(SmallSheets, allAgreeWithTryingEverything) {
    int asked = 0;
    for (int width = 1; width <= 10; ++width) {
        for (int height = 1; height <= width; ++height) {
            for (int a = 1; a <= width; ++a) {
                for (int b = 1; b <= std::min(a, height); ++b) {
                    const Question q{{nm(width), nm(height)}, {nm(a), nm(b)}, {}};
                    const SheetFit answer = fit(q);
                    const int most = WasteSearch(width, height, a, b).most();
                    ASSERT_EQ(answer.count, most) << q;
                    ASSERT_GE(answer.bound, most) << q;
                    ASSERT_EQ(faultOf(answer.positions, q.sheet, q.piece, q.rules), "") << q;
                    ++asked;
                }
            }
        }
    }
    EXPECT_GT(asked, 1000);
}

TEST(LShapeBound, isNeverBelowTryingEverything) {
    for (const auto& [a, b] : {std::pair{3, 2}, std::pair{4, 1}, std::pair{4, 3}, std::pair{5, 2}}) {
        for (int width = 4; width <= 9; ++width) {
            for (int height = 4; height <= 9; ++height) {
                for (int armX = 1; armX < width; ++armX) {
                    for (int armY = 1; armY < height; ++armY) {
                        WasteSearch search(width, height, a, b);
                        search.cutCorner(armX, armY);
                        ASSERT_GE(lShapeBound(width, height, armX, armY, a, b), search.most())
                            << width << ',' << height << ',' << armX << ',' << armY << " of " << a << 'x' << b;
                    }
                }
            }
        }
    }
}

// The worked case of Barnes' theorem with r = s = 1: one cell of 5 x 5 stays empty under bars of 1 x 4, and
// (side - r)(side - s) of 7 x 7 under bars of 1 x 4. Counts by hand: 25 / 4 = 6, (49 - 1) / 4 = 12.
TEST(BarnesBound, leavesTheCellsThatBarsCannotCover) {
    EXPECT_EQ(barnesBound({5, 5, 4, 1}), 6);
    EXPECT_EQ(barnesBound({7, 7, 4, 1}), 12);
    EXPECT_EQ(barnesBound({6, 6, 4, 1}), 8); // area alone allows 9; r = s = 2 leaves 4 cells
    EXPECT_EQ(WasteSearch(6, 6, 4, 1).most(), 8);
}

} // namespace
