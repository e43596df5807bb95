// SPDX-License-Identifier: MIT
//
// Spares, with the figures worked by hand: of n pieces n × s ÷ (1 − s) are expected to be spoiled. The rule is common
// practice, no source; names are invented.
#include "core/needs/spares.h"

#include "core/units/count.h"
#include "tests/support/described.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::needs {

namespace {

using catalogue::OrderLine;
using catalogue::Spares;
using sample::idOf;
using units::Count;
using units::Fraction;
using units::Rate;

constexpr SpareRule rule(std::int64_t percent, Spares when = Spares::WhereExpected) {
    return {Rate::fromPercent(percent), when};
}

OrderLine hoodies(std::int64_t pieces, std::vector<catalogue::SizeCount> sizes = {}) {
    auto line = sample::square(pieces);
    line.baseMaterial = idOf("Hoodie");
    line.sizes = std::move(sizes);
    return line;
}

OrderLine ownGarments(std::int64_t pieces) {
    auto line = sample::square(pieces);
    line.baseMaterial = {};
    line.customersGarment = true;
    return line;
}

std::vector<std::int64_t> countsOf(const std::vector<LineSpares>& spares) {
    std::vector<std::int64_t> counts;
    for (const auto& line : spares) counts.push_back(line.pieces);
    return counts;
}

// At 3 %: 100 ÷ 0.97 − 100 = 3.0928, 24 → 0.7423, 12 → 0.3711; 16 → 0.4948, 17 → 0.5258; 32 → 0.9897, 33 → 1.0206. At
// 50 % one is spoiled beside each good one, at a third half of one: as many as that are planned.
TEST(SparesFor, areThoseExpectedRoundedUp) {
    for (const auto& [pieces, spares] : {std::pair{100, 4}, {24, 1}, {12, 0}, {16, 0}, {17, 1}, {32, 1}, {33, 2}})
        EXPECT_EQ(sparesFor(pieces, rule(3)), spares) << pieces;
    EXPECT_EQ(sparesFor(7, rule(50)), 7);
    EXPECT_EQ(sparesFor(1, {Rate::fromPpm(333'333), Spares::WhereExpected}), 0);
    EXPECT_EQ(sparesFor(1, {Rate::fromPpm(333'334), Spares::WhereExpected}), 1);
    EXPECT_EQ(expectedSpoiled(100, Rate::fromPercent(3)), Fraction::ratio(300, 97));
}

TEST(SparesFor, areAsTheShopChooses) {
    EXPECT_EQ(sparesFor(12, rule(3, Spares::Always)), 1);
    EXPECT_EQ(sparesFor(100, rule(3, Spares::Always)), 4);
    EXPECT_EQ(sparesFor(100, rule(3, Spares::Never)), 0);
    EXPECT_EQ(sparesFor(100, rule(0, Spares::Always)), 0);
    EXPECT_EQ(sparesFor(100, rule(100, Spares::Always)), 0);
    EXPECT_EQ(sparesFor(0, rule(3, Spares::Always)), 0);
    EXPECT_EQ(sparesFor(10, {Rate::fromPpm(1), Spares::Always}), 1);
}

// Two lines of 12 on one hoodie are 24 pieces: one spare, on the first. Nine and a line of 15 have it on the second.
TEST(SparesOf, countLinesOnOneBlankTogether) {
    const std::vector<OrderLine> same{hoodies(12), hoodies(12)};
    const auto spares = sparesOf(same, rule(3));
    EXPECT_EQ(countsOf(spares), (std::vector<std::int64_t>{1, 0}));
    EXPECT_EQ(spares[1], (LineSpares{0, {}, 1, 24}));
    const std::vector<OrderLine> more{hoodies(9), sample::square(12), hoodies(15)};
    EXPECT_EQ(countsOf(sparesOf(more, rule(3))), (std::vector<std::int64_t>{0, 0, 1}));
    EXPECT_EQ(sparesOf(more, rule(3))[1].of, 12); // on backing, alone
}

// 12 M, 8 plain ones and 12 2XL, of which 7 are on the second line: M and 2XL have most, M comes first. With one 2XL
// more it is 2XL, on the line with eight.
TEST(SparesOf, areOfTheSizeWithMostPieces) {
    std::vector<OrderLine> lines{hoodies(25, {{"M", Count::of(12)}, {"2XL", Count::of(5)}}),
                                 hoodies(7, {{"2XL", Count::of(7)}})};
    EXPECT_EQ(sparesOf(lines, rule(3))[0], (LineSpares{1, "M", 1, 32}));
    lines[1] = hoodies(8, {{"2XL", Count::of(8)}});
    const auto spares = sparesOf(lines, rule(3)); // 33 × 3 ÷ 97 = 1.02
    EXPECT_EQ(countsOf(spares), (std::vector<std::int64_t>{0, 2}));
    EXPECT_EQ(spares[1].size, "2XL");
    EXPECT_EQ(sparesOf(std::vector{hoodies(30, {{"M", Count::of(10)}})}, rule(3))[0].size, "");
}

// Of nothing none is spoiled; of one at a half one is. A line of no pieces beside it makes it no more.
TEST(SparesOf, ofNoPiecesAreNone) {
    EXPECT_EQ(countsOf(sparesOf(std::vector{hoodies(0)}, rule(50))), std::vector<std::int64_t>{0});
    EXPECT_EQ(sparesOf(std::vector{hoodies(0), hoodies(1)}, rule(50))[0].of, 1);
}

// The customer's own garments of two lines have nothing in common: 12 and 12 are not 24.
TEST(SparesOf, countACustomersGarmentsAlone) {
    const std::vector<OrderLine> lines{ownGarments(12), ownGarments(12), ownGarments(24)};
    EXPECT_EQ(countsOf(sparesOf(lines, rule(3))), (std::vector<std::int64_t>{0, 0, 1}));
    EXPECT_TRUE(sparesOf({}, rule(3)).empty());
}

TEST(SpareNote, saysHowManyAndWhy) {
    const auto said = [](const LineSpares& spares, const SpareRule& by) {
        const auto note = spareNote(spares, by);
        return note ? describe(*note) : std::string("nothing");
    };
    EXPECT_EQ(said({4, {}, 4, 100}, rule(3)), "SparesPlanned(4, 3.093, 100)");
    EXPECT_EQ(said({4, "M", 4, 100}, rule(3)), "SparesOfSize(4, 3.093, 100, M)");
    EXPECT_EQ(said({0, {}, 1, 24}, rule(3)), "SparesElsewhere(1, 0.7423, 24)");
    EXPECT_EQ(said({0, {}, 0, 12}, rule(3)), "NoSpares(0.3711, 12)");
    EXPECT_EQ(said({0, {}, 0, 12}, rule(3, Spares::Never)), "nothing");
    EXPECT_EQ(said({0, {}, 0, 12}, rule(0)), "nothing");
}

} // namespace

} // namespace sp::needs
