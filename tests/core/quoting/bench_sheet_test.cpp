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

BenchSheet of(std::vector<catalogue::OrderLine> lines, const catalogue::PriceBook& book = sample::priceBook(),
              const needs::SetsThere& there = {}) {
    layout::FitMemo fits;
    auto sheet = benchSheetOf("2026-0042", sample::orderOf(std::move(lines)), book, fits, there);
    EXPECT_TRUE(sheet.has_value()) << (sheet ? "" : describe(sheet.error()));
    return sheet.value_or(BenchSheet{});
}

/// A Lantern of the book.
catalogue::OrderLine known(std::int64_t pieces) {
    auto line = sample::lantern(pieces);
    line.first().design = idOf("design");
    return line;
}

std::int64_t templatesOf(const BenchPlace& place) {
    std::int64_t count = 0;
    for (const auto& cut : place.cuts)
        if (cut.kind == MaterialKind::Template) count += cut.use.cut;
    return count;
}

std::optional<Duration> plannedOf(const BenchLine& line, Step step) {
    for (const auto& one : line.steps)
        if (one.step == step) return one.planned;
    return std::nullopt;
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

// Two lines of one design and size share its two templates, with a charge between them. Drawing takes 15 minutes once
// (as order_work_test): all of it where they are cut.
TEST(BenchSheet, cutsASharedSetOnceAndSaysWhere) {
    catalogue::OrderLine charge;
    charge.title = "Postage";
    charge.places.clear();
    charge.overrideEach = sample::cents(650);
    const auto sheet = of({charge, known(10), charge, known(20), sample::lantern(5)});
    ASSERT_EQ(sheet.lines.size(), 3U);
    const auto& owner = sheet.lines[0];
    const auto& sharer = sheet.lines[1];
    EXPECT_EQ(templatesOf(owner.places[0]), 2);
    EXPECT_FALSE(owner.places[0].setFrom);
    EXPECT_EQ(templatesOf(sharer.places[0]), 0);
    EXPECT_EQ(sharer.places[0].setFrom, (BenchSpot{0, 0}));
    EXPECT_FALSE(sharer.places[0].isOnWall);
    EXPECT_EQ(plannedOf(owner, Step::Art), Duration::fromMinutes(15));
    for (const auto step : {Step::Art, Step::Cut, Step::Weed, Step::SetUp}) {
        EXPECT_TRUE(plannedOf(owner, step));
        EXPECT_FALSE(plannedOf(sharer, step)) << "nothing is cut for it";
    }
    EXPECT_EQ(templatesOf(sheet.lines[2].places[0]), 2) << "a one-off shares with nobody";
    Duration sum;
    for (const auto& line : sheet.lines) {
        Duration steps;
        for (const auto& step : line.steps) steps += step.planned;
        EXPECT_EQ(steps, line.planned) << line.title;
        sum += line.planned;
    }
    EXPECT_EQ(sum, sheet.planned);
}

TEST(BenchSheet, cutsASetOfTwoPlacesOfALineOnce) {
    auto line = known(10);
    line.places.push_back(line.first());
    line.places[0].place = "Front";
    line.places[1].place = "Back";
    const auto sheet = of({line});
    const auto& places = sheet.lines[0].places;
    EXPECT_EQ(templatesOf(places[0]), 2);
    EXPECT_EQ(templatesOf(places[1]), 0);
    EXPECT_EQ(places[1].setFrom, (BenchSpot{0, 0}));
    EXPECT_EQ(plannedOf(sheet.lines[0], Step::Art), Duration::fromMinutes(15));
}

TEST(BenchSheet, hasASetThatWasCutBeforeOnTheWall) {
    auto book = sample::priceBook();
    auto line = known(10);
    line.first().plannedPieces = Count::of(100);
    book.sets[line.first().design].sold = Count::of(1); // which says nothing of what is cut
    const auto first = of({line}, book).lines[0].places[0];
    EXPECT_FALSE(first.isOnWall);
    EXPECT_EQ(templatesOf(first), 2);
    const auto sheet = of({line, line}, book, {line.first().design});
    for (const auto& sold : sheet.lines) {
        EXPECT_TRUE(sold.places[0].isOnWall);
        EXPECT_FALSE(sold.places[0].setFrom);
        EXPECT_EQ(templatesOf(sold.places[0]), 0);
        EXPECT_FALSE(plannedOf(sold, Step::Cut));
    }
}

TEST(BenchSheet, saysWhichOfSeveralChoicesItIsOf) {
    auto order = sample::orderOf({sample::lantern(24)});
    catalogue::addChoice(order);
    layout::FitMemo fits;
    const auto sheet = benchSheetOf("", order, sample::priceBook(), fits);
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->choices, 2);
    EXPECT_EQ(sheet->choice, 1) << "the one that was added is looked at";
    EXPECT_EQ(of({sample::lantern(24)}).choices, 1);
}

// 10^13 ms a hundred stones and a million of them: a colour takes 10^17 ms, its weight in hundredths is 10^19, more
// than 64 bits hold; the weight of all fourteen times their time is 1.4 × 10^20 × 1.4 × 10^18, more than 128 bits hold.
TEST(BenchSheet, dividesTheLargestTimes) {
    auto book = sample::freeBook();
    auto& brush = book.bench.steps[static_cast<std::size_t>(Step::Brush)];
    brush.per100Stones = Duration::fromMilliseconds(10'000'000'000'000);
    auto line = sample::lantern(1);
    line.first().stones = {{idOf("Aqua"), Count::of(1'000'000)}, {idOf("Jet"), Count::of(1'000'000)}};
    line.places.resize(7, line.first());
    const auto sheet = of({line}, book);
    ASSERT_EQ(sheet.lines.size(), 1U);
    ASSERT_EQ(sheet.lines[0].made(), 1);
    std::size_t brushed = 0;
    for (const auto& step : sheet.lines[0].steps) {
        if (step.step != Step::Brush) continue;
        ++brushed;
        EXPECT_EQ(step.planned, Duration::fromMilliseconds(100'000'000'000'000'000));
    }
    EXPECT_EQ(brushed, 14U);
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
