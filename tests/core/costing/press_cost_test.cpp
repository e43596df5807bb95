// SPDX-License-Identifier: MIT
//
// What the press and the cutter cost, and how often is pressed. With the figure worked by hand beside each row where
// no source is named. All prices and times are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

INSTANTIATE_TEST_SUITE_P(
    Press, PartFigure,
    testing::Values(
        // 4 × 5 squares under a platen of 16 × 20 in: 24 are 2 cycles × 30 s at 36.00 an hour, 0.01 a second
        PartCase{"press cycles", [](Line&, Book& b) { pressRunsAt(b, 3600); }, Part::PressCycles, 0, 600'000},
        // With their border of 1/4 in 4 1/2 in wide: 3 × 4 at once, 2 cycles; 25 would be 3
        PartCase{"press cycles of what is cut with a border",
                 [](Line& l, Book& b) {
                     l.quantity = Count::of(25);
                     sheetOf(b, "Backing").border = quarters(1);
                     pressRunsAt(b, 3600);
                 },
                 Part::PressCycles, 0, 900'000},
        // Garments lie one at a time: 24 × 30 s
        PartCase{"press cycles of garments",
                 [](Line& l, Book& b) {
                     onHoodie(l);
                     pressRunsAt(b, 3600);
                 },
                 Part::PressCycles, 0, 7'200'000},
        // 17 in are more than the platen's 16 and less than its 20: turned it is pressed once
        PartCase{"press cycles of what is turned",
                 [](Line& l, Book& b) {
                     onHoodie(l);
                     l.first().width = inches(17);
                     pressRunsAt(b, 3600);
                 },
                 Part::PressCycles, 0, 7'200'000},
        // 17 × 17 in take two presses each, either way round
        PartCase{"press cycles of what is larger than the platen",
                 [](Line& l, Book& b) {
                     onHoodie(l);
                     l.first().width = l.first().height = inches(17);
                     pressRunsAt(b, 3600);
                 },
                 Part::PressCycles, 0, 14'400'000},
        // 33 × 21 in: 3 × 2 as it lies, 2 × 2 turned
        PartCase{"press cycles of what is far larger",
                 [](Line& l, Book& b) {
                     onHoodie(l);
                     l.first().width = inches(33);
                     l.first().height = inches(21);
                     pressRunsAt(b, 3600);
                 },
                 Part::PressCycles, 0, 28'800'000},
        // 25 % of 24 = 6 × (5 + 20 s) × 0.01
        PartCase{"second presses",
                 [](Line&, Book& b) {
                     pressRunsAt(b, 3600);
                     b.bench.press.secondPressShare = Rate::fromPercent(25);
                     b.bench.press.secondDwell = Duration::fromSeconds(5);
                 },
                 Part::SecondPress, 0, 1'500'000},
        // 12 min × 0.01 a second
        PartCase{"the warm-up",
                 [](Line&, Book& b) {
                     pressRunsAt(b, 3600);
                     b.bench.press.warmUp = Duration::fromMinutes(12);
                 },
                 Part::WarmUp, 0, 7'200'000},
        // 2 × 30 s
        PartCase{"test presses",
                 [](Line&, Book& b) {
                     pressRunsAt(b, 3600);
                     b.bench.press.testPresses = 2;
                 },
                 Part::TestPress, 0, 600'000},
        // OpenStax, Principles of Accounting vol. 1, m67897: 9,000 over 100,000 presses is 0.09 a press. Here 2 cycles,
        // 6 second presses and 2 tests.
        PartCase{"press wear",
                 [](Line&, Book& b) {
                     auto& press = b.bench.press;
                     press.price = cents(1'000'000);
                     press.salvage = cents(100'000);
                     press.lifePresses = 100'000;
                     press.secondPressShare = Rate::fromPercent(25);
                     press.testPresses = 2;
                 },
                 Part::PressWear, 0, 900'000},
        // (12,000 − 2,000) ÷ 10,000,000 × 300 holes, cut once
        PartCase{"cutter wear",
                 [](Line&, Book& b) {
                     b.bench.cutter = {cents(1'200'000), cents(200'000), 10'000'000};
                 },
                 Part::CutterWear, 0, 300'000}));

struct PressRow {
    const char* name;
    std::int64_t width; ///< in
    std::int64_t height;
    bool onBlank;
    std::int64_t quantity;
    std::int64_t perPress;
    std::int64_t perPiece;
    std::int64_t cycles;
};

void PrintTo(const PressRow& row, std::ostream* out) { *out << row.name; }

class PressUse : public testing::TestWithParam<PressRow> {};

// Worked by hand for a platen of 16 × 20 in.
TEST_P(PressUse, isTheOneWorkedByHand) {
    const auto& row = GetParam();
    auto line = sample::square(row.quantity);
    line.first().width = inches(row.width);
    line.first().height = inches(row.height);
    auto book = sample::freeBook();
    makeRoll(sheetOf(book, "Backing"));
    sheetOf(book, "Backing").width = inches(60);
    if (row.onBlank) line.baseMaterial = idOf("Hoodie");
    const auto sheet = sample::costed(line, book);
    EXPECT_EQ(sample::piecesPerPressOf(sheet), row.perPress);
    EXPECT_EQ(sample::pressesPerPieceOf(sheet), row.perPiece);
    EXPECT_EQ(sample::cyclesOf(sheet), row.cycles);
}

INSTANTIATE_TEST_SUITE_P(Platen, PressUse,
                         testing::Values(PressRow{"twenty at once", 4, 4, false, 20, 20, 1, 1},
                                         PressRow{"one more than a platen", 4, 4, false, 21, 20, 1, 2},
                                         PressRow{"one only", 4, 4, false, 1, 20, 1, 1},
                                         PressRow{"a blank alone", 4, 4, true, 3, 1, 1, 3},
                                         PressRow{"as large as the platen", 16, 20, false, 3, 1, 1, 3},
                                         PressRow{"as large, turned", 20, 16, false, 3, 1, 1, 3},
                                         PressRow{"two beside each other, turned", 20, 8, false, 5, 2, 1, 3},
                                         PressRow{"too wide both ways", 21, 4, false, 3, 1, 2, 6},
                                         PressRow{"too high both ways", 4, 21, true, 3, 1, 2, 6},
                                         PressRow{"wider one way only", 17, 4, true, 3, 1, 1, 3},
                                         PressRow{"higher one way only", 4, 17, true, 3, 1, 1, 3},
                                         PressRow{"two by two", 33, 21, false, 2, 1, 4, 8},
                                         PressRow{"two by two, turned", 21, 33, false, 2, 1, 4, 8}));

} // namespace

} // namespace sp::costing
