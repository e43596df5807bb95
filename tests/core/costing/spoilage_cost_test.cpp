// SPDX-License-Identifier: MIT
//
// What is lost with the pieces that are spoiled. With the figure worked by hand beside each row; all prices and times
// are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

/// 20 % spoiled: a quarter of the good ones is lost besides.
void spoilsAFifth(Book& book) { book.shop.rates.spoilage = Rate::fromPercent(20); }

void costsTenAPieceInStones(Book& book) { setPrice(book, "Aqua", 5); } // 200 × 0.05

INSTANTIATE_TEST_SUITE_P(
    Spoilage, PartFigure,
    testing::Values(
        // A quarter of 24 × 10.00
        PartCase{"spoiled stones",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     costsTenAPieceInStones(b);
                 },
                 Part::SpoiledMaterials, 0, 60'000'000},
        // … of 8 pieces of tape on 2 sheets at 1.45
        PartCase{"spoiled tape",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     useTape(b, 3, 145, kWhole);
                 },
                 Part::SpoiledMaterials, 0, 725'000},
        // … of 24 × 13.90 + 3 × 2.10
        PartCase{"spoiled blanks",
                 [](Line& l, Book& b) {
                     spoilsAFifth(b);
                     onHoodie(l);
                     setPrice(b, "Hoodie", 1390);
                     l.sizes = {{"2XL", Count::of(3)}};
                 },
                 Part::SpoiledMaterials, 0, 84'975'000},
        // What is spoiled is not packed
        PartCase{"spoiled packing",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     b.shop.packing = {{idOf("Bag")}};
                     setPrice(b, "Bag", 620, 100);
                 },
                 Part::SpoiledMaterials, 0, 0},
        // … of 0.60 for cycles and 1.50 for second presses; the warm-up and the tests are not lost with a piece
        PartCase{"spoiled pressing",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     pressRunsAt(b, 3600);
                     b.bench.press.secondPressShare = Rate::fromPercent(25);
                     b.bench.press.secondDwell = Duration::fromSeconds(5);
                     b.bench.press.warmUp = Duration::fromMinutes(12);
                     b.bench.press.testPresses = 2;
                 },
                 Part::SpoiledMaterials, 0, 525'000},
        // Templates are cut once, spoiled or not
        PartCase{"spoiled templates",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     useTemplates(b, 325);
                 },
                 Part::SpoiledMaterials, 0, 0},
        // A quarter of 24 × 2 min at 0.30; not of the art
        PartCase{"spoiled labour",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     labourCosts(b);
                     b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
                 },
                 Part::SpoiledWork, 0, 3'600'000},
        // … of the 24 × 2 min, the packing left out
        PartCase{"spoiled labour until it is packed",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     labourCosts(b);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
                     b.bench.of(Step::Pack).perPiece = Duration::fromMinutes(3);
                 },
                 Part::SpoiledWork, 0, 3'600'000},
        // … and of their overhead at 4.50 an hour
        PartCase{"spoiled overhead until it is packed",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     overheadIs(b);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
                     b.bench.of(Step::Pack).perPiece = Duration::fromMinutes(3);
                 },
                 Part::SpoiledWork, 0, 900'000},
        // … of 24 × 2 min at 4.50 an hour
        PartCase{"spoiled overhead",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     overheadIs(b);
                     b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
                 },
                 Part::SpoiledWork, 0, 900'000},
        // … of 0.09 × (2 cycles + 6 second presses); not of the tests nor of the cutter
        PartCase{"spoiled wear",
                 [](Line&, Book& b) {
                     spoilsAFifth(b);
                     auto& press = b.bench.press;
                     press.price = cents(900'000);
                     press.secondPressShare = Rate::fromPercent(25);
                     press.testPresses = 2;
                     b.bench.cutter.price = cents(1'200'000);
                 },
                 Part::SpoiledWork, 0, 180'000},
        // 24 × 20.00 × a quarter
        PartCase{"the allowance for a customer's garment",
                 [](Line& l, Book& b) {
                     spoilsAFifth(b);
                     l.customersGarment = true;
                     l.baseMaterial = {};
                     b.shop.rates.garmentAllowance = cents(2000);
                 },
                 Part::GarmentAllowance, 0, 120'000'000}));

// An order of before rules 3 is costed as it was: 24 bags at 0.0620, 24 × 3 min of packing at 0.30 and its overhead of
// 4.50 an hour are lost with a quarter of the pieces too: (1.488 ÷ 4) and (21.60 + 5.40) ÷ 4. Now nothing of them is.
TEST(Spoilage, tookThePackingAlongBeforeRules3) {
    auto book = sample::freeBook();
    spoilsAFifth(book);
    labourCosts(book);
    overheadIs(book);
    book.shop.packing = {{idOf("Bag")}};
    setPrice(book, "Bag", 620, 100);
    book.bench.of(Step::Pack).perPiece = Duration::fromMinutes(3);
    for (const std::int64_t rules : {1, 2, 3}) {
        layout::FitMemo fits;
        const auto sheet = costLine(sample::square(24), book, fits, {}, rules);
        ASSERT_TRUE(sheet) << rules;
        EXPECT_EQ(sample::amountOf(*sheet, Part::SpoiledMaterials).micros(), rules < 3 ? 372'000 : 0) << rules;
        EXPECT_EQ(sample::amountOf(*sheet, Part::SpoiledWork).micros(), rules < 3 ? 6'750'000 : 0) << rules;
        // Neither hours nor wage were ever counted for it.
        EXPECT_EQ(sheet->spoiledLabour, Money{}) << rules;
        EXPECT_EQ(sheet->spoiledTime, Duration{}) << rules;
    }
}

} // namespace

} // namespace sp::costing
