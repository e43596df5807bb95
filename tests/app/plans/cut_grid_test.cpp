// SPDX-License-Identifier: MIT
#include "app/paper/cut_grid.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>
#include <set>
#include <tuple>

using namespace sp;
using support::mm;

namespace {

planning::CutPlan planOn(units::Length width, units::Length height, std::vector<planning::CutPiece> pieces) {
    planning::CutPlan plan;
    plan.list.material.sheet.width = width;
    plan.list.material.sheet.height = height;
    plan.list.pieces = std::move(pieces);
    return plan;
}

const paper::PlanWords kMillimetres{{}, units::LengthUnit::Millimetre};

TEST(CutGrid, aPlainGridIsOneMeasuredFromTheUpperLeft) {
    const auto plan = planOn(mm(300), mm(200), {{"Fox", {mm(80), mm(50)}, 6}});
    planning::CutSheet sheet;
    for (int row = 0; row < 2; ++row)
        for (int column = 0; column < 3; ++column)
            sheet.places.push_back({0, {mm(10 + 85 * column), mm(20 + 60 * row)}});
    const auto grids = paper::cutGrids(plan, sheet);
    ASSERT_EQ(grids.size(), 1U);
    // The upper row ends at 20 + 60 + 50 = 130 mm above the lower edge: 70 mm below the upper one.
    EXPECT_EQ(paper::inWords(grids[0], plan.list, kMillimetres),
              "A Fox, 80 × 50 mm: 10 mm from the left, 70 mm from the top; across 3, every 85 mm; down 2, every 60 mm");
}

TEST(CutGrid, aTallSheetIsMeasuredAsItIsDrawnAcross) {
    const auto plan = planOn(mm(200), mm(300), {{"Fox", {mm(80), mm(50)}, 1}});
    planning::CutSheet sheet;
    sheet.places.push_back({0, {mm(10), mm(30)}});
    const auto grids = paper::cutGrids(plan, sheet);
    ASSERT_EQ(grids.size(), 1U);
    // Drawn with its 300 mm across: what was 30 mm up is 30 mm from the left, what ended at 90 of 200 mm ends 110 mm
    // below the upper edge.
    EXPECT_EQ(paper::inWords(grids[0], plan.list, kMillimetres),
              "A Fox, 50 × 80 mm, turned: 30 mm from the left, 110 mm from the top");
}

TEST(CutGrid, whatDoesNotFitTheRowsStandsByItself) {
    const auto plan = planOn(mm(400), mm(100), {{"Fox", {mm(50), mm(50)}, 4}, {"Owl", {mm(50), mm(50)}, 1}});
    planning::CutSheet sheet;
    for (const int x : {0, 60, 120, 190}) sheet.places.push_back({0, {mm(x), mm(0)}});
    sheet.places.push_back({1, {mm(250), mm(0)}});
    const auto grids = paper::cutGrids(plan, sheet);
    ASSERT_EQ(grids.size(), 3U);
    EXPECT_EQ(grids[0].across, 3);
    EXPECT_EQ(grids[1].across, 1);
    EXPECT_EQ(grids[2].piece, 1U);
}

TEST(CutGrid, everyPieceIsInOneGridAtItsPlace) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 200; ++round) {
        const bool isTall = round % 2 == 0;
        const auto plan = planOn(mm(isTall ? 500 : 900), mm(isTall ? 900 : 500),
                                 {{"Fox", {mm(30), mm(20)}, 1}, {"Owl", {mm(25), mm(25)}, 1}});
        planning::CutSheet sheet;
        for (int y = 0; y + 30 <= 500; y += 40)
            for (int x = 0; x + 30 <= 500; x += 40) {
                const auto what = random() % 6;
                if (what == 0) continue;
                sheet.places.push_back({what < 3 ? 0U : 1U, {mm(x), mm(y), what == 1}});
            }
        std::multiset<std::tuple<std::size_t, bool, std::int64_t, std::int64_t>> wanted, found;
        for (const auto& place : paper::drawnPlaces(plan, sheet))
            wanted.emplace(place.piece, place.turned, place.left.nanometres(), place.top.nanometres());
        for (const auto& grid : paper::cutGrids(plan, sheet))
            for (std::int64_t row = 0; row < grid.down; ++row)
                for (std::int64_t column = 0; column < grid.across; ++column)
                    found.emplace(grid.piece, grid.turned,
                                  grid.left.nanometres() + column * grid.everyAcross.nanometres(),
                                  grid.top.nanometres() + row * grid.everyDown.nanometres());
        EXPECT_EQ(wanted, found);
    }
}

} // namespace
