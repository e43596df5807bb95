// SPDX-License-Identifier: MIT
//
// What the work at the bench takes and costs. With the figure worked by hand beside each row where no source is named.
// All prices and times are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

#include <utility>

namespace sp::costing {

namespace {

INSTANTIATE_TEST_SUITE_P(
    Labour, PartFigure,
    testing::Values(
        // 15 min + 2 colours × 3 min + 300 stones × 2 min / 100 = 27 min, whatever the quantity; minutes a piece have
        // no meaning in a step done once
        PartCase{"a step once a job",
                 [](Line&, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Weed) = {Duration::fromMinutes(15), Duration::fromMinutes(3),
                                               Duration::fromMinutes(7), Duration::fromMinutes(2)};
                 },
                 Part::LabourStep, indexOf(Step::Weed), 8'100'000},
        // 35 min of the design's own instead of the standard's 15, and 2 × 1 min
        PartCase{"art with a time of its own",
                 [](Line& l, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Art) = {Duration::fromMinutes(15), Duration::fromMinutes(1), {}, {}};
                     l.first().artTime = Duration::fromMinutes(35);
                 },
                 Part::LabourStep, indexOf(Step::Art), 11'100'000},
        // … which is the art's alone: weeding keeps its 15 min
        PartCase{"another step beside that art",
                 [](Line& l, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Weed).perJob = Duration::fromMinutes(15);
                     l.first().artTime = Duration::fromMinutes(35);
                 },
                 Part::LabourStep, indexOf(Step::Weed), 4'500'000},
        // 6 min once, and 24 × (1 min + 2 colours × 15 s + 300 stones × 10 s / 100) = 24 × 2 min
        PartCase{"a step for every piece",
                 [](Line&, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Brush) = {Duration::fromMinutes(6), Duration::fromSeconds(15),
                                                Duration::fromMinutes(1), Duration::fromSeconds(10)};
                 },
                 Part::LabourStep, indexOf(Step::Brush), 16'200'000},
        // 24 squares are 2 cycles under a platen that takes 4 × 5 of them: 1 min once, 24 × 10 s and 2 × 45 s are
        // 6 min 30 s at 0.30 a minute
        PartCase{"a step for every press cycle",
                 [](Line&, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Press) = {Duration::fromMinutes(1), {}, Duration::fromSeconds(10), {}};
                     b.bench.of(Step::Press).perCycle = Duration::fromSeconds(45);
                 },
                 Part::LabourStep, indexOf(Step::Press), 1'950'000},
        // Of garments one lies under it at a time: 24 × 55 s are 22 min
        PartCase{"a step for every press cycle of garments",
                 [](Line& l, Book& b) {
                     onHoodie(l);
                     labourCosts(b);
                     b.bench.of(Step::Press).perPiece = Duration::fromSeconds(10);
                     b.bench.of(Step::Press).perCycle = Duration::fromSeconds(45);
                 },
                 Part::LabourStep, indexOf(Step::Press), 6'600'000},
        // A time for a cycle has no meaning in a step done once
        PartCase{"a step once a job beside press cycles",
                 [](Line&, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Weed).perJob = Duration::fromMinutes(15);
                     b.bench.of(Step::Weed).perCycle = Duration::fromMinutes(5);
                 },
                 Part::LabourStep, indexOf(Step::Weed), 4'500'000},
        // Crawford at 80 %: of 2 cycles the second takes 80 %, 1.8 × 10 min at 0.30 a minute
        PartCase{"press cycles that are learned",
                 [](Line&, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Press).perCycle = Duration::fromMinutes(10);
                     b.bench.of(Step::Press).learning = Rate::fromPercent(80);
                 },
                 Part::LabourStep, indexOf(Step::Press), 5'400'000},
        // Crawford at 80 %, total of 4 units 3.142 (printed tables of operations textbooks; from memory), to more
        // places 1 + 0.8 + 3^log2(0.8) + 0.64 = 3.1421037: 10 min × that = 31.421037 min = 1,885,262 ms, and 5 min
        // once: 2,185,262 ms at 18.00 an hour
        PartCase{"a step that is learned",
                 [](Line& l, Book& b) {
                     labourCosts(b);
                     l.quantity = Count::of(4);
                     b.bench.of(Step::Brush).perJob = Duration::fromMinutes(5);
                     b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(10);
                     b.bench.of(Step::Brush).learning = Rate::fromPercent(80);
                 },
                 Part::LabourStep, indexOf(Step::Brush), 10'926'310},
        // 27 min of weeding and 54 of brushing
        PartCase{"labour together",
                 [](Line&, Book& b) {
                     labourCosts(b);
                     b.bench.of(Step::Weed).perJob = Duration::fromMinutes(27);
                     b.bench.of(Step::Brush).perJob = Duration::fromMinutes(54);
                 },
                 Part::Labour, 0, 24'300'000}));

// Half a millisecond goes to the even one: 5 and 15 stones × 10 ms / 100 are 0.5 and 1.5 ms, once and for one piece.
TEST(BenchTime, roundsHalvesToTheEvenMillisecond) {
    auto book = sample::freeBook();
    const auto ten = Duration::fromMilliseconds(10);
    book.bench.of(Step::Cut).per100Stones = ten;
    book.bench.of(Step::Brush).per100Stones = ten;
    for (const auto& [stones, milliseconds] : {std::pair{5, 0}, {15, 2}, {25, 2}, {26, 3}, {24, 2}}) {
        auto line = sample::square(1);
        line.first().stones = {{idOf("Aqua"), Count::of(stones)}};
        const auto sheet = sample::costed(line, book);
        EXPECT_EQ(sample::benchTimeOf(sheet, Step::Cut).milliseconds(), milliseconds) << stones;
        EXPECT_EQ(sample::benchTimeOf(sheet, Step::Brush).milliseconds(), milliseconds) << stones;
    }
}

} // namespace

} // namespace sp::costing
