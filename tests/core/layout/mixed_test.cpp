// SPDX-License-Identifier: MIT
#include "core/layout/mixed.h"

#include "tests/reference/rectangles_random.h"
#include "tests/support/amounts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

using namespace sp;
using namespace sp::layout;
using testing::HasSubstr;
using units::Length;
using units::Money;

namespace {

using sp::support::mm;

Money money(std::int64_t cents) { return Money::fromMicros(cents * 10'000); }

/// What is wrong with placements, or nothing: each against each, knowing nothing of how they were made.
std::string faultOf(const std::vector<Placement>& placements, const std::vector<MixedPiece>& pieces,
                    const std::vector<Sheet>& sheets, const FitRules& rules) {
    std::map<std::size_t, std::int64_t> laid;
    struct Box {
        std::int64_t sheet;
        Length left, right, bottom, top;
    };
    std::vector<Box> boxes;
    for (const auto& at : placements) {
        const auto& size = pieces[at.piece].size;
        if (at.at.turned && rules.oneWay) return "turned on one-way material";
        const auto& sheet = sheets[static_cast<std::size_t>(at.sheet)];
        const Box box{at.sheet, at.at.x, at.at.x + (at.at.turned ? size.height : size.width), at.at.y,
                      at.at.y + (at.at.turned ? size.width : size.height)};
        if (box.left < rules.margin || box.bottom < rules.margin || box.right > sheet.width - rules.margin ||
            box.top > sheet.height - rules.margin)
            return "a piece leaves the usable part";
        for (const Box& other : boxes)
            if (other.sheet == box.sheet && box.left < other.right + rules.gap && other.left < box.right + rules.gap &&
                box.bottom < other.top + rules.gap && other.bottom < box.top + rules.gap)
                return "two pieces are too close";
        boxes.push_back(box);
        ++laid[at.piece];
    }
    for (std::size_t p = 0; p < pieces.size(); ++p)
        if (laid[p] != pieces[p].count) return "piece " + pieces[p].id + " is not laid as often as asked";
    return {};
}

std::string faultOf(const MixedPlan& plan, const std::vector<MixedSheet>& sheets, const std::vector<MixedPiece>& pieces,
                    const FitRules& rules) {
    std::vector<Sheet> used;
    Money cost;
    for (const std::size_t kind : plan.sheets) {
        used.push_back(sheets[kind].size);
        cost += sheets[kind].price;
    }
    if (cost != plan.cost) return "the cost is not that of the sheets";
    if (plan.costBound > plan.cost || plan.sheetBound > static_cast<std::int64_t>(plan.sheets.size()))
        return "a bound is passed";
    return faultOf(plan.placements, pieces, used, rules);
}

TEST(MixedRectangles, fillsASheetExactlyAndProvesIt) {
    // By hand: 60 x 40 from 40 x 40, 20 x 25 and a turned 15 x 20.
    const std::vector<MixedSheet> sheets{{"A", {mm(60), mm(40)}, money(600), {}}};
    const std::vector<MixedPiece> pieces{
        {"X", {mm(40), mm(40)}, 1}, {"Y", {mm(20), mm(25)}, 1}, {"Z", {mm(15), mm(20)}, 1}};
    const auto plan = packSheets(sheets, pieces, {}, {});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(faultOf(*plan, sheets, pieces, {}), "");
    EXPECT_EQ(plan->sheets.size(), 1U);
    EXPECT_TRUE(plan->proven);
    const auto oneWay = packSheets(sheets, pieces, {{}, {}, true}, {});
    ASSERT_TRUE(oneWay.has_value());
    EXPECT_EQ(faultOf(*oneWay, sheets, pieces, {{}, {}, true}), "");
}

TEST(MixedRectangles, takesMarginAndGapExactly) {
    // Two pieces of 30 and a gap of 2 between margins of 4 need exactly 70.
    const std::vector<MixedPiece> pieces{{"X", {mm(30), mm(50)}, 1}, {"Y", {mm(30), mm(49)}, 1}};
    const FitRules rules{mm(4), mm(2), false};
    for (const auto& [width, count] : {std::pair(mm(70), 1U), std::pair(mm(70) - Length::fromNanometres(1), 2U)}) {
        const std::vector<MixedSheet> sheets{{"A", {width, mm(58)}, money(100), {}}};
        const auto plan = packSheets(sheets, pieces, rules, {});
        ASSERT_TRUE(plan.has_value());
        EXPECT_EQ(faultOf(*plan, sheets, pieces, rules), "");
        EXPECT_EQ(plan->sheets.size(), count);
    }
}

TEST(MixedRectangles, knowsThatLargePiecesCannotShare) {
    const std::vector<MixedSheet> sheets{{"A", {mm(100), mm(100)}, money(100), {}}};
    const std::vector<MixedPiece> pieces{{"X", {mm(51), mm(51)}, 7}, {"Y", {mm(10), mm(10)}, 3}};
    const auto plan = packSheets(sheets, pieces, {}, {});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(plan->sheets.size(), 7U);
    EXPECT_EQ(plan->sheetBound, 7);
    EXPECT_TRUE(plan->proven);
}

TEST(MixedRectangles, choosesTheCheapestSheets) {
    const std::vector<MixedSheet> sheets{{"small", {mm(50), mm(50)}, money(300), {}},
                                         {"large", {mm(100), mm(100)}, money(800), {}}};
    // Five of 50 x 50: a large and a small one, 11.00; four small and one more would be 15.00.
    const std::vector<MixedPiece> pieces{{"X", {mm(50), mm(50)}, 5}};
    const auto plan = packSheets(sheets, pieces, {}, {});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(faultOf(*plan, sheets, pieces, {}), "");
    EXPECT_EQ(plan->cost, money(1100));
    auto few = sheets;
    few[1].atMost = 0;
    EXPECT_EQ(packSheets(few, pieces, {}, {})->cost, money(1500));
    few[0].atMost = 4;
    EXPECT_THAT(packSheets(few, pieces, {}, {}).error().detail, HasSubstr("do not take all pieces"));
}

TEST(MixedRectangles, refusesWhatCannotLie) {
    const std::vector<MixedSheet> sheets{{"A", {mm(100), mm(100)}, money(100), {}}};
    EXPECT_EQ(packSheets(sheets, {{"X", {mm(101), mm(10)}, 1}}, {}, {}).error().code, base::Code::TooLarge);
    EXPECT_EQ(packSheets(sheets, {{"X", {mm(0), mm(10)}, 1}}, {}, {}).error().code, base::Code::OutOfRange);
    EXPECT_EQ(packSheets(sheets, {{"X", {mm(1), mm(10)}, 0}}, {}, {}).error().code, base::Code::OutOfRange);
    EXPECT_EQ(packSheets(sheets, {{"X", {mm(1), mm(1)}, 1'000'000'000}}, {}, {}).error().code, base::Code::TooLarge);
    EXPECT_EQ(packSheets(sheets, {{"X", {mm(1), mm(1)}, 1}}, {mm(50), {}, false}, {}).error().code,
              base::Code::OutOfRange);
    EXPECT_EQ(packSheets({}, {{"X", {mm(1), mm(1)}, 1}}, {}, {}).error().code, base::Code::Missing);
    EXPECT_EQ(packRoll(mm(5), {{"X", {mm(6), mm(7)}, 1}, {"Y", {mm(1), mm(1)}, 1}}, {}, {}).error().code,
              base::Code::TooLarge);
}

TEST(MixedRectangles, plansManyEqualPiecesBesideOthers) {
    const std::vector<MixedSheet> sheets{{"A", {mm(300), mm(200)}, money(100), {}}};
    const std::vector<MixedPiece> pieces{{"X", {mm(17), mm(11)}, 9'000}, {"Y", {mm(60), mm(45)}, 40}};
    const auto plan = packSheets(sheets, pieces, {}, {2'000'000, {}});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(plan->placements.size(), 9'040U);
    EXPECT_LE(static_cast<double>(plan->sheets.size()), 1.05 * static_cast<double>(plan->sheetBound));
}

TEST(MixedRectangles, giveTheSameAnswerTwice) {
    const auto cut = reference::cutSheet(240, 160, 30, 5);
    const auto first = packRoll(cut.width, cut.pieces, {}, {500'000, {}});
    const auto second = packRoll(cut.width, cut.pieces, {}, {500'000, {}});
    ASSERT_TRUE(first && second);
    EXPECT_EQ(first->length, second->length);
    ASSERT_EQ(first->placements.size(), second->placements.size());
    for (std::size_t i = 0; i < first->placements.size(); ++i)
        EXPECT_EQ(first->placements[i].at, second->placements[i].at);
}

/// Strips cut from a sheet have a known best length. Width, best length and number of parts are those of the
/// seven published classes (E. Hopper and B. Turton, European Journal of Operational Research 128, 2001); the
/// cuts are ours.
TEST(MixedRectangles, comeNearTheKnownLengthOfACutSheet) {
    struct Class {
        std::int64_t width, height;
        std::size_t parts;
    };
    double gap = 0;
    int problems = 0;
    for (const auto& [width, height, parts] :
         {Class{20, 20, 17}, Class{40, 15, 25}, Class{60, 30, 29}, Class{60, 60, 49}, Class{60, 90, 73},
          Class{80, 120, 97}, Class{160, 240, 197}})
        for (std::uint64_t seed = 1; seed <= 3; ++seed) {
            const auto cut = reference::cutSheet(width, height, parts, seed);
            const auto roll = packRoll(cut.width, cut.pieces, {}, {4'000'000, {}});
            ASSERT_TRUE(roll.has_value());
            EXPECT_EQ(faultOf(roll->placements, cut.pieces, {{cut.width, roll->length}}, {}), "")
                << parts << " " << seed;
            EXPECT_GE(roll->length, cut.height);
            EXPECT_LE(roll->bound, cut.height);
            gap += roll->length.millimetres() / cut.height.millimetres() - 1;
            ++problems;
        }
    EXPECT_LE(gap / problems, 0.01);
}

TEST(MixedRectangles, keepTheirBoundsOnThePublishedClasses) {
    std::size_t used = 0;
    std::int64_t bound = 0;
    for (int kind = 1; kind <= 10; ++kind)
        for (const std::size_t pieces : {20U, 60U}) {
            const auto bin = reference::publishedBin(kind, pieces, 11);
            const std::vector<MixedSheet> sheets{{"A", bin.sheet, money(100), {}}};
            const auto plan = packSheets(sheets, bin.pieces, {}, {1'000'000, {}});
            ASSERT_TRUE(plan.has_value()) << kind;
            EXPECT_EQ(faultOf(*plan, sheets, bin.pieces, {}), "") << kind;
            used += plan->sheets.size();
            bound += plan->sheetBound;
        }
    EXPECT_LE(static_cast<double>(used), 1.08 * static_cast<double>(bound));
}

TEST(MixedRectangles, stopWhenToldEvenWhereAPieceFillsASheetByItself) {
    // The plan with the large pieces on sheets of their own first must listen too: so many steps would take
    // hours.
    std::vector<MixedPiece> pieces;
    const auto mm = [](std::int64_t n) { return units::Length::fromNanometres(n * units::kNanometresPerMillimetre); };
    for (std::int64_t i = 0; i < 12; ++i) pieces.push_back({"large", {mm(60 + i), mm(55 + i)}, 1});
    for (std::int64_t i = 0; i < 30; ++i) pieces.push_back({"small", {mm(11 + i), mm(7 + i)}, 2});
    const std::vector<MixedSheet> sheets{{"A", {mm(100), mm(100)}, money(100), {}}};
    const auto plan = packSheets(sheets, pieces, {}, {1'000'000'000'000, [] { return true; }});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(faultOf(*plan, sheets, pieces, {}), "");
}

} // namespace
