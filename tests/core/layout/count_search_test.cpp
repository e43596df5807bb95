// SPDX-License-Identifier: MIT
#include "core/layout/bar_limits.h"
#include "core/layout/bin_counts.h"
#include "core/layout/mixed.h"
#include "core/layout/one_bin.h"
#include "core/layout/side_sums.h"
#include "core/layout/turned_counts.h"
#include "tests/reference/whole_millimetres.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace sp;
using namespace sp::layout;

namespace {

/// Every way to fill a small sheet of whole cells, one cell after the other from below and from the left: the lowest
/// free one is the corner of a box, or stays empty. Independent of what it checks, and much too slow for more.
class EveryWay {
  public:
    EveryWay(std::vector<BoxKind> kinds, int width, int height, bool mayTurn)
        : m_kinds(std::move(kinds))
        , m_width(width)
        , m_height(height)
        , m_mayTurn(mayTurn)
        , m_cells(static_cast<std::size_t>(width * height), 0) {}

    bool isOne(int from = 0) {
        if (std::all_of(m_kinds.begin(), m_kinds.end(), [](const BoxKind& kind) { return kind.count == 0; }))
            return true;
        while (from < m_width * m_height && m_cells[static_cast<std::size_t>(from)] != 0) ++from;
        if (from == m_width * m_height) return false;
        for (BoxKind& kind : m_kinds) {
            if (kind.count == 0) continue;
            for (const bool turn : {false, true}) {
                if (turn && !m_mayTurn) break;
                const int w = static_cast<int>(turn ? kind.height : kind.width);
                const int h = static_cast<int>(turn ? kind.width : kind.height);
                if (!isFree(from, w, h)) continue;
                mark(from, w, h, 1);
                --kind.count;
                const bool is = isOne(from + w);
                ++kind.count;
                mark(from, w, h, 0);
                if (is) return true;
            }
        }
        return isOne(from + 1);
    }

  private:
    bool isFree(int at, int w, int h) const {
        if (at % m_width + w > m_width || at / m_width + h > m_height) return false;
        for (int y = 0; y < h; ++y)
            for (int x = 0; x < w; ++x)
                if (m_cells[static_cast<std::size_t>(at + y * m_width + x)] != 0) return false;
        return true;
    }
    void mark(int at, int w, int h, char by) {
        for (int y = 0; y < h; ++y)
            for (int x = 0; x < w; ++x) m_cells[static_cast<std::size_t>(at + y * m_width + x)] = by;
    }

    std::vector<BoxKind> m_kinds;
    int m_width, m_height;
    bool m_mayTurn;
    std::vector<char> m_cells;
};

struct SmallSheet {
    std::vector<BoxKind> kinds;
    int width, height;
    bool mayTurn;

    BoxCounts counts() const {
        BoxCounts counts;
        for (const BoxKind& kind : kinds) counts.push_back(kind.count);
        return counts;
    }
};

SmallSheet smallSheet(std::mt19937_64& random) {
    const auto from = [&random](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    SmallSheet sheet{{}, from(3, 6), from(3, 5), from(0, 3) > 0};
    std::int64_t area = 0;
    for (int k = from(1, 3); k > 0; --k) {
        const BoxKind kind{from(1, 4), from(1, 4), from(1, 3)};
        if (!sheet.mayTurn && (kind.width > sheet.width || kind.height > sheet.height)) continue;
        area += kind.width * kind.height * kind.count;
        sheet.kinds.push_back(kind);
    }
    if (sheet.kinds.empty() || area > sheet.width * sheet.height) return smallSheet(random);
    return sheet;
}

TEST(OneBin, agreesWithEveryWayToFillASmallSheet) {
    std::mt19937_64 random(test::printedSeed());
    int laid = 0, none = 0;
    for (int n = 0; n < 3'000; ++n) {
        const auto sheet = smallSheet(random);
        std::int64_t steps = 200'000;
        const auto answer = layInOneBin(sheet.kinds, sheet.width, sheet.height, sheet.mayTurn, steps);
        ASSERT_TRUE(answer.isSure);
        const bool is = EveryWay(sheet.kinds, sheet.width, sheet.height, sheet.mayTurn).isOne();
        ASSERT_EQ(answer.isLaid(), is) << n << ": " << sheet.width << " x " << sheet.height;
        ++(is ? laid : none);
    }
    EXPECT_GT(laid, 300);
    EXPECT_GT(none, 100);
}

// What lies on a sheet breaks no limit, whatever counts the limit was made for.
TEST(BarLimits, ruleOutNothingThatLies) {
    std::mt19937_64 random(test::printedSeed());
    int ruledOut = 0;
    for (int n = 0; n < 2'000; ++n) {
        const auto sheet = smallSheet(random);
        std::int64_t steps = 1'000'000;
        const auto limit = barLimit(sheet.kinds, sheet.width, sheet.height, sheet.mayTurn, sheet.counts(), steps);
        TurnedCounts turned(sheet.kinds, sheet.width, sheet.height, sheet.mayTurn);
        const bool isOut = turned.isRuledOut(sheet.counts(), steps) || (limit && !limit->allows(sheet.counts()));
        ASSERT_GT(steps, 0);
        ruledOut += isOut ? 1 : 0;
        const auto answer = layInOneBin(sheet.kinds, sheet.width, sheet.height, sheet.mayTurn, steps);
        ASSERT_FALSE(isOut && answer.isLaid()) << n;
    }
    EXPECT_GT(ruledOut, 30);
}

// Ten by ten, boxes of 6 x 6: a line passes one, though four would go into the area of two sheets.
TEST(BarLimits, countWhatALinePasses) {
    std::int64_t steps = 1'000'000;
    const auto limit = barLimit({{6, 6, 3}}, 10, 10, true, {3}, steps);
    ASSERT_TRUE(limit);
    EXPECT_FALSE(limit->allows({2}));
    EXPECT_TRUE(limit->allows({1}));
    EXPECT_EQ(limit->bins({3}), 2);
}

// Worked by hand: 3 x + 2 y never above 12, and not two of x with three of y.
TEST(BinCounts, worthiestStaysUnderLimitsAndExclusions) {
    BinCounts may({10, 10});
    may.add({{3, 2}, 12});
    std::int64_t steps = 10'000;
    EXPECT_EQ(may.worthiest({4, 2.8}, steps)->counts, (BoxCounts{0, 6}));
    EXPECT_EQ(may.worthiest({4, 2}, steps)->counts, (BoxCounts{4, 0}));
    EXPECT_EQ(may.worthiest({4.5, 3.1}, steps)->counts, (BoxCounts{0, 6}));
    may.exclude({0, 5});
    EXPECT_EQ(may.worthiest({4, 2.8}, steps)->counts, (BoxCounts{2, 3}));
    may.exclude({2, 3});
    EXPECT_EQ(may.worthiest({4, 2.8}, steps)->counts, (BoxCounts{4, 0}));
    EXPECT_FALSE(may.allows({2, 3}));
    EXPECT_TRUE(may.allows({2, 2}));
}

TEST(SideSums, areThoseOfOneSideOfEachBox) {
    EXPECT_EQ(sideSums({{3, 5, 2}}, 9, false), (std::vector<std::int64_t>{0, 3, 6}));
    EXPECT_EQ(sideSums({{3, 5, 2}}, 9, true), (std::vector<std::int64_t>{0, 3, 5, 6, 8}));
}

struct Few {
    const char* name;
    std::vector<MixedPiece> pieces;
    std::size_t sheets;
};

MixedPiece pieces(std::int64_t width, std::int64_t height, std::int64_t count) {
    return {std::to_string(width), {reference::millimetres(width), reference::millimetres(height)}, count};
}

// What one sheet of 229 x 305 mm holds, of one size and of all, is the proof; each was not proven before that was
// asked.
TEST(CountSearch, provesManyEqualPiecesWithAFewOthers) {
    const std::vector<Few> rows{
        {"five of 120 x 82 fill a sheet", {pieces(119, 81, 31), pieces(30, 24, 8)}, 7},
        {"ten decals and their tags", {pieces(63, 99, 60), pieces(21, 34, 3), pieces(37, 17, 8)}, 6},
        {"the last two sheets share what is left", {pieces(43, 94, 26), pieces(34, 23, 3), pieces(27, 38, 19)}, 2},
        {"two thousand decals", {pieces(106, 74, 1'978), pieces(34, 25, 7)}, 248},
    };
    for (const Few& row : rows) {
        const auto plan = packSheets({{"A", {reference::millimetres(229), reference::millimetres(305)}, {}, {}}},
                                     row.pieces, {}, {20'000'000, {}});
        ASSERT_TRUE(plan) << row.name;
        EXPECT_EQ(plan->sheets.size(), row.sheets) << row.name;
        EXPECT_TRUE(plan->proven) << row.name << ": bound " << plan->sheetBound;
    }
}

// Three strips lie side by side on a sheet, whichever; seven take three sheets. Nothing is known of them beforehand.
TEST(CountSearch, beginsWithoutAnyWay) {
    const auto plan =
        packSheets({{"A", {reference::millimetres(100), reference::millimetres(100)}, {}, {}}},
                   {pieces(33, 100, 2), pieces(33, 99, 2), pieces(33, 98, 2), pieces(33, 97, 1)}, {}, {20'000'000, {}});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->sheets.size(), 3U);
}

// Boxes by the thousand on one sheet are not laid one inside the other on the stack.
TEST(OneBin, refusesToLookAtThousands) {
    std::int64_t steps = 1'000'000'000;
    const auto answer = layInOneBin({{2, 3, 20'000}, {5, 2, 20'000}}, 1'000, 1'000, true, steps);
    EXPECT_FALSE(answer.isLaid());
    EXPECT_FALSE(answer.isSure);
    EXPECT_EQ(steps, 1'000'000'000);
}

} // namespace
