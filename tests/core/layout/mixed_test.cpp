// SPDX-License-Identifier: MIT
#include "core/layout/messages.h"
#include "core/layout/mixed.h"

#include "tests/reference/rectangles_published.h"
#include "tests/reference/rectangles_random.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

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
    EXPECT_EQ(packSheets(few, pieces, {}, {}).error().fault, idOf(Fault::NotEnoughSheets));
}

TEST(MixedRectangles, usesAsFewAsCanBeHadWhereThatIsEnough) {
    // Two of 12 and 9 x 14 1/2 in leave 2 x 14 1/2 and 5 x 14 1/2 in beside them; the others fill those.
    const auto inch = [](double sides) { return units::Length::fromInch64ths(static_cast<std::int64_t>(sides * 64)); };
    std::vector<MixedPiece> pieces;
    for (const auto& [width, height] : {std::pair(12.0, 14.5),
                                        {2.0, 14.0},
                                        {2.0, 0.5},
                                        {3.0, 13.5},
                                        {9.0, 14.5},
                                        {2.0, 14.5},
                                        {0.5, 1.0},
                                        {2.0, 1.0}})
        pieces.push_back({"X" + std::to_string(pieces.size()), {inch(width), inch(height)}, 1});
    const FitRules oneWay{{}, {}, true};
    for (const std::int64_t atMost : {2, 3, 9}) {
        const std::vector<MixedSheet> sheets{{"A", {inch(14), inch(14.5)}, money(1906), atMost}};
        const auto plan = packSheets(sheets, pieces, oneWay, {});
        ASSERT_TRUE(plan.has_value()) << atMost << ": " << describe(plan.error());
        EXPECT_EQ(faultOf(*plan, sheets, pieces, oneWay), "");
        EXPECT_EQ(plan->sheets.size(), 2U) << atMost;
        EXPECT_TRUE(plan->proven);
    }
    // One sheet is fewer than the bound: that is said for certain.
    const std::vector<MixedSheet> one{{"A", {inch(14), inch(14.5)}, money(1906), 1}};
    EXPECT_EQ(packSheets(one, pieces, oneWay, {}).error().fault, idOf(Fault::NotEnoughSheets));
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
    const auto cut = reference::cutSheet(240, 160, 30, test::printedSeed());
    const auto first = packRoll(cut.width, cut.pieces, {}, {500'000, {}});
    const auto second = packRoll(cut.width, cut.pieces, {}, {500'000, {}});
    ASSERT_TRUE(first && second);
    EXPECT_EQ(first->length, second->length);
    ASSERT_EQ(first->placements.size(), second->placements.size());
    for (std::size_t i = 0; i < first->placements.size(); ++i)
        EXPECT_EQ(first->placements[i].at, second->placements[i].at);
}

/// The 21 strips of Hopper and Turton, whose least length is known (source: tests/data/rectangles/strips.txt).
TEST(PublishedStrips, areLaidNearTheirLeastLength) {
    const auto strips = reference::publishedStrips();
    ASSERT_EQ(strips.size(), 21U);
    double gap = 0;
    for (const auto& strip : strips) {
        const auto roll = packRoll(strip.width, strip.pieces, {}, {2'000'000, {}});
        ASSERT_TRUE(roll.has_value()) << strip.name;
        EXPECT_EQ(faultOf(roll->placements, strip.pieces, {{strip.width, roll->length}}, {}), "") << strip.name;
        EXPECT_GE(roll->length, strip.leastLength) << strip.name;
        EXPECT_LE(roll->bound, strip.leastLength) << strip.name;
        gap += roll->length.millimetres() / strip.leastLength.millimetres() - 1;
    }
    EXPECT_LE(gap / 21, 0.02);
}

/// One in ten of the 500 published bins (source: tests/data/rectangles/bins.txt); pack_bench takes all of them.
TEST(PublishedBins, areFilledAndNeverBeatTheirBounds) {
    const auto all = reference::publishedBins();
    ASSERT_EQ(all.size(), 50U);
    std::size_t used = 0;
    std::int64_t bound = 0;
    for (const auto& ten : all) {
        ASSERT_EQ(ten.problems.size(), 10U);
        std::int64_t together = 0;
        for (const auto& bin : ten.problems) {
            ASSERT_EQ(bin.laid.size(), static_cast<std::size_t>(bin.pieces));
            const std::vector<MixedSheet> sheets{{"A", bin.sheet, money(100), {}}};
            const bool isSample = bin.number == 1;
            const auto plan = packSheets(sheets, bin.laid, {}, {isSample ? 500'000 : 1, {}});
            ASSERT_TRUE(plan.has_value()) << bin.kind << " " << bin.pieces << " " << bin.number;
            together += plan->sheetBound;
            if (!isSample) continue;
            EXPECT_EQ(faultOf(*plan, sheets, bin.laid, {}), "") << bin.kind << " " << bin.pieces;
            used += plan->sheets.size();
            bound += plan->sheetBound;
        }
        EXPECT_LE(together, ten.fewest) << "a bound above what others have packed is wrong: class "
                                        << ten.problems[0].kind << " with " << ten.problems[0].pieces;
    }
    EXPECT_LE(static_cast<double>(used), 1.05 * static_cast<double>(bound));
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
