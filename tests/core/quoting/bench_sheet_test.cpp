// SPDX-License-Identifier: MIT
//
// What stands on a bench sheet, in figures worked by hand from the sample shop: 24 Lanterns of 212 Aqua and 96 Jet, one
// to spare at 3 %, 2 % of the stones lost, tape that lifts twice.
#include "core/quoting/bench_sheet.h"

#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::quoting {

namespace {

using catalogue::MaterialKind;
using catalogue::Step;
using sample::idOf;
using units::Count;
using units::Duration;

BenchSheet of(std::vector<catalogue::OrderLine> lines, const catalogue::PriceBook& book = sample::priceBook()) {
    layout::FitMemo fits;
    auto sheet = benchSheetOf("2026-0042", sample::orderOf(std::move(lines)), book, fits);
    EXPECT_TRUE(sheet.has_value()) << (sheet ? "" : describe(sheet.error()));
    return sheet.value_or(BenchSheet{});
}

// 212 × 25 = 5,300, ÷ 0.98 = 5,408.2; 96 × 25 = 2,400, ÷ 0.98 = 2,448.98.
TEST(BenchSheet, hasMostStonesFirstAndWhatToFetch) {
    auto line = sample::lantern(24);
    std::swap(line.first().stones[0], line.first().stones[1]);
    const auto sheet = of({line});
    ASSERT_EQ(sheet.lines.size(), 1U);
    const auto& colours = sheet.lines[0].places[0].colours;
    ASSERT_EQ(colours.size(), 2U);
    EXPECT_EQ(colours[0].perPiece, 212);
    EXPECT_EQ(colours[0].laidOut, 5'300);
    EXPECT_EQ(colours[0].toFetch, 5'409);
    EXPECT_EQ(colours[1].perPiece, 96);
    EXPECT_EQ(colours[1].laidOut, 2'400);
    EXPECT_EQ(colours[1].toFetch, 2'449);
    EXPECT_EQ(sheet.lines[0].made(), 25);
    EXPECT_EQ(sheet.lines[0].pieces, 24);
}

// Two templates, 13 pieces of tape at two lifts, 25 backings of which ten lie on a sheet: as requirements_test.
TEST(BenchSheet, saysWhatIsCut) {
    const auto sheet = of({sample::lantern(24)});
    const auto& cuts = sheet.lines[0].places[0].cuts;
    ASSERT_EQ(cuts.size(), 3U);
    EXPECT_EQ(cuts[0].kind, MaterialKind::Template);
    EXPECT_EQ(cuts[0].use.cut, 2);
    EXPECT_EQ(cuts[1].kind, MaterialKind::Tape);
    EXPECT_EQ(cuts[1].use.cut, 13);
    EXPECT_EQ(cuts[1].lifts, 2);
    EXPECT_EQ(cuts[2].kind, MaterialKind::Backing);
    EXPECT_EQ(cuts[2].use.cut, 25);
    EXPECT_EQ(cuts[2].use.sheets, 3);
    EXPECT_GT(cuts[2].piece.width, units::Length{});
    auto onWall = sample::lantern(24);
    onWall.first().templatesOnWall = true;
    const auto wall = of({onWall});
    EXPECT_TRUE(wall.lines[0].places[0].isOnWall);
    EXPECT_EQ(wall.lines[0].places[0].cuts.size(), 2U);
}

// Each colour is brushed, then lifted, before the next; all of it together is what is planned. Trimming takes no time
// in this shop, and is no step.
TEST(BenchSheet, hasItsStepsInTheOrderOfWorking) {
    const auto sheet = of({sample::lantern(24)});
    const auto& steps = sheet.lines[0].steps;
    std::vector<Step> order;
    Duration sum;
    Duration brushed;
    for (const auto& step : steps) {
        order.push_back(step.step);
        sum += step.planned;
        if (step.step == Step::Brush) brushed += step.planned;
    }
    EXPECT_EQ(order, (std::vector<Step>{Step::Art, Step::Cut, Step::Weed, Step::SetUp, Step::Brush, Step::Lift,
                                        Step::Brush, Step::Lift, Step::Press, Step::Pack}));
    EXPECT_EQ(steps[4].mark, 0);
    EXPECT_EQ(steps[6].mark, 1);
    EXPECT_GT(steps[4].planned, steps[6].planned) << "more stones take longer";
    EXPECT_EQ(sum, sheet.lines[0].planned);
    EXPECT_EQ(sum, sheet.planned);
    EXPECT_EQ(brushed, Duration::fromMilliseconds(142'400 * 25)); // as order_work_test
}

TEST(BenchSheet, putsTheSpareWhereItsSizeIs) {
    auto line = sample::lantern(24);
    line.baseMaterial = idOf("Hoodie");
    const auto book = sample::priceBook();
    const auto& size = book.find(idOf("Hoodie"))->material.sizes.front().name;
    line.sizes = {{size, Count::of(20)}};
    const auto sheet = of({line});
    const auto& sizes = sheet.lines[0].sizes;
    ASSERT_EQ(sizes.size(), 2U);
    EXPECT_EQ(sizes[0], (catalogue::SizeCount{"", Count::of(4)}));
    EXPECT_EQ(sizes[1], (catalogue::SizeCount{size, Count::of(21)}));
    EXPECT_FALSE(sheet.lines[0].isOnBacking);
}

TEST(BenchSheet, countsItsLettersOverThePlacesOfALine) {
    auto line = sample::lantern(6);
    line.places.push_back(line.first());
    line.places[1].place = "Sleeve";
    const auto sheet = of({line});
    ASSERT_EQ(sheet.lines[0].places.size(), 2U);
    EXPECT_EQ(sheet.lines[0].places[1].firstMark, 2);
    std::int64_t last = 0;
    for (const auto& step : sheet.lines[0].steps) last = std::max(last, step.mark.value_or(0));
    EXPECT_EQ(last, 3);
}

TEST(BenchSheet, leavesChargesOut) {
    catalogue::OrderLine charge;
    charge.title = "Postage";
    charge.places.clear();
    charge.overrideEach = sample::cents(650);
    EXPECT_EQ(of({charge, sample::lantern(1)}).lines.size(), 1U);
    EXPECT_TRUE(of({charge}).lines.empty());
}

} // namespace

} // namespace sp::quoting
