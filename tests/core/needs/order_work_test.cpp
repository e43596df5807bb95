// SPDX-License-Identifier: MIT
//
// What the bench makes of an order, in figures worked by hand from the sample shop's standards.
#include "core/needs/order_work.h"

#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::needs {

namespace {

using catalogue::Step;
using units::Count;
using units::Duration;
using units::Rate;

OrderWork of(const std::vector<catalogue::OrderLine>& lines, const catalogue::PriceBook& book,
             const SetsThere& there = {}) {
    layout::FitMemo fits;
    auto work = workOf(lines, book, fits, there);
    EXPECT_TRUE(work.has_value()) << (work ? "" : describe(work.error()));
    return work.value_or(OrderWork{});
}

catalogue::PriceBook bookSpoiling(std::int64_t percent) {
    auto book = sample::priceBook();
    book.shop.rates.spoilage = Rate::fromPercent(percent);
    return book;
}

/// A Lantern of the book.
catalogue::OrderLine known(std::int64_t pieces) {
    auto line = sample::lantern(pieces);
    line.first().design = sample::idOf("design");
    return line;
}

// At 3 % of 24 pieces one is a spare: 142.4 s of brushing each for 25, packing for 24.
TEST(OrderWork, isThatOfSparesTooButTheyAreNotPacked) {
    const auto book = bookSpoiling(3);
    const auto work = of({sample::lantern(24)}, book);
    ASSERT_EQ(work.lines.size(), 1U);
    EXPECT_EQ(work.lines[0].spares.pieces, 1);
    EXPECT_EQ(work.lines[0].takes.pieces, 25);
    EXPECT_EQ(work.lines[0].bench.of(Step::Brush), Duration::fromMilliseconds(142'400 * 25));
    layout::FitMemo fits;
    const auto handedOver = requirementsOf(sample::lantern(24), book, 24, fits);
    EXPECT_EQ(work.lines[0].bench.of(Step::Pack), handedOver->bench.of(Step::Pack));
    EXPECT_GT(work.lines[0].takes.bench.of(Step::Pack), handedOver->bench.of(Step::Pack));
    EXPECT_EQ(work.total, work.lines[0].bench.total());
}

// By hand, 24 and a spare: 212 × 25 ÷ 0.98 = 5,408.2 of Aqua; 13 pieces of tape, backing three sheets of ten; a bag for
// each that is handed over.
TEST(OrderWork, saysWhatItTakesOfEachMaterial) {
    const auto work = of({sample::lantern(24)}, bookSpoiling(3));
    const auto taken = [&](const char* name) {
        for (const auto& take : work.takes)
            if (take.material == sample::idOf(name)) return take.count;
        return std::int64_t{0};
    };
    EXPECT_EQ(taken("Aqua"), 5'409);
    EXPECT_EQ(taken("Backing"), 3);
    EXPECT_EQ(taken("Bag"), 24);
    EXPECT_EQ(taken("Hoodie"), 0);
}

// Art takes 15 minutes once for the set, whichever lines share it.
TEST(OrderWork, doesOnceWhatLinesShare) {
    const auto book = bookSpoiling(0);
    const auto work = of({known(10), known(20)}, book);
    EXPECT_EQ(work.lines[0].bench.of(Step::Art), Duration::fromMinutes(5));
    EXPECT_EQ(work.lines[1].bench.of(Step::Art), Duration::fromMinutes(10));
    EXPECT_EQ(work.total, work.lines[0].bench.total() + work.lines[1].bench.total());
    const auto spoiling = of({known(10), known(20)}, bookSpoiling(10)); // 10 ÷ 0.9 − 10 and so on: four in all
    EXPECT_EQ(spoiling.lines[0].bench.of(Step::Art) + spoiling.lines[1].bench.of(Step::Art), Duration::fromMinutes(15));
}

TEST(SharedSets, areNoneWhereNoPlaceSharesWithAnother) {
    const auto book = sample::priceBook();
    EXPECT_TRUE(sharedSets(std::vector{known(24), sample::square(30)}, book).empty());
    EXPECT_EQ(sharedSets(std::vector{known(24), known(30)}, book).size(), 2U);
}

TEST(OrderWork, doesNotMakeASetThatIsThere) {
    auto book = bookSpoiling(0);
    auto line = known(10);
    line.first().plannedPieces = Count::of(100);
    book.sets[line.first().design].sold = Count::of(1);
    EXPECT_EQ(of({line}, book).lines[0].bench.of(Step::Art), Duration::fromMinutes(15)) << "sold is not made";
    EXPECT_EQ(of({line}, book, {line.first().design}).lines[0].bench.oncePerJob(), Duration{});
    line.first().plannedPieces.reset();
    EXPECT_EQ(of({line}, book, {line.first().design}).lines[0].bench.of(Step::Art), Duration::fromMinutes(15));
}

TEST(OrderWork, isRefusedWhereItIsTooLarge) {
    auto book = sample::priceBook();
    for (auto& step : book.bench.steps) step.perPiece = Duration::fromMilliseconds(9'000'000'000'000'000);
    layout::FitMemo fits;
    const auto work = workOf(std::vector{known(2'000)}, book, fits);
    ASSERT_FALSE(work);
    EXPECT_EQ(work.error().code, base::Code::TooLarge);
}

TEST(OrderWork, ofAChargeIsNothing) {
    catalogue::OrderLine charge;
    charge.title = "Postage";
    charge.places.clear();
    charge.overrideEach = sample::cents(650);
    const auto work = of({charge}, sample::priceBook());
    EXPECT_EQ(work.total, Duration{});
    EXPECT_EQ(of({}, sample::priceBook()).total, Duration{});
}

TEST(OrderWork, isRefusedWhereALineIs) {
    auto line = sample::lantern(1);
    line.first().width = {};
    layout::FitMemo fits;
    EXPECT_FALSE(workOf(std::vector{line}, sample::priceBook(), fits));
}

} // namespace

} // namespace sp::needs
