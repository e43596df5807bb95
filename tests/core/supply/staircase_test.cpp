// SPDX-License-Identifier: MIT
#include "core/supply/staircase.h"
#include "tests/core/supply/curve_of.h"
#include "tests/support/amounts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace sp::supply;
using sp::units::Count;
using sp::units::Money;
using sp::units::Rate;

namespace {

using sp::support::money;

Pack pack(std::string id, std::vector<MaterialCount> gives, double each) {
    return {std::move(id), "S", std::move(gives), {{Count::of(1), money(each)}}, std::nullopt};
}

JobTake stones(std::string material, std::int64_t perPiece, Rate loss = {}) {
    JobTake take;
    take.kind = sp::needs::NeedKind::Stones;
    take.material = std::move(material);
    take.perPiece = Count::of(perPiece);
    take.loss = loss;
    return take;
}

/// A two-colour design; a kit for six or seven pieces against packs of ten gross.
Job twoColours(double kit) {
    Job job;
    job.lines = {{"Wren", 1, {stones("crystal", 212), stones("red", 48)}}};
    job.kits = {pack("K", {{"crystal", Count::of(1440)}, {"red", Count::of(432)}}, kit)};
    job.bulk = {pack("C10", {{"crystal", Count::of(1440)}}, 9), pack("R2", {{"red", Count::of(288)}}, 3)};
    job.suppliers = {{"S", Money(), std::nullopt, Money()}};
    job.offers = {{"C10", "crystal", "ten gross", false, std::nullopt},
                  {"K", {}, "Wren kit", false, std::nullopt},
                  {"R2", "red", "two gross", false, std::nullopt}};
    job.hasKits = true;
    return job;
}

TEST(Staircase, needsAreRoundedUpOnceAtTheTotal) {
    // 100 / 0.97 = 103.09 -> 104 by hand; padding by the share lost is common practice, no source.
    Job job;
    job.lines = {{"Wren", 1, {stones("M", 100, Rate::fromPercent(3))}}};
    EXPECT_EQ(needsOf(job)[0].count, Count::of(104));
    job.lines[0].pieces = 97;
    EXPECT_EQ(needsOf(job)[0].count, Count::of(10'000));
}

TEST(Staircase, showsEveryChangeOfTheWinner) {
    // By hand. Kit 11: six pieces. Bulk: 1-6 pieces one C10 and one R2, 12.00. 7-12 pieces: two kits 22.00;
    // bulk 7-12: C10 x2 = 18 and red 336-576 = R2 x2 = 6, 24.00; a kit with C10 alone covers red up to 9
    // pieces: 20.00.
    const auto stairs = curveOf(twoColours(11), 12);
    ASSERT_EQ(stairs.points.size(), 12U);
    EXPECT_EQ(stairs.points[0].kits.cost, money(11));
    EXPECT_EQ(stairs.points[0].bulk.cost, money(12));
    EXPECT_EQ(stairs.points[0].winner, Way::Kits);
    EXPECT_EQ(stairs.points[6].kits.cost, money(22));
    EXPECT_EQ(stairs.points[6].bulk.cost, money(24));
    EXPECT_EQ(stairs.points[6].mix.cost, money(20));
    EXPECT_EQ(stairs.points[6].winner, Way::Mix);
    EXPECT_EQ(stairs.points[11].mix.cost, money(22)); // a second kit is cheaper than C10 and R2
    ASSERT_EQ(stairs.runs.size(), 3U);
    EXPECT_EQ(stairs.runs[0].to, 6);
    EXPECT_EQ(stairs.runs[1].winner, Way::Mix);
    EXPECT_EQ(stairs.runs[1].to, 9);
    EXPECT_EQ(stairs.runs[2].winner, Way::Kits);
    EXPECT_FALSE(stairs.bulkStaysCheaperFrom.has_value()); // kits are the cheaper slope
}

TEST(Staircase, takesNoChangeOnTheWordOfASearchThatWasCutShort) {
    const auto point = [](std::int64_t pieces, double bulk, double bulkBound, double mix, double mixBound) {
        StaircasePoint made;
        made.pieces = pieces;
        made.bulk = {money(bulk), money(bulkBound)};
        made.mix = {money(mix), money(mixBound)};
        made.proven = bulk == bulkBound && mix == mixBound;
        made.winner = mix < bulk ? Way::Mix : Way::Bulk;
        return made;
    };
    // At 2 the mix looks cheaper, but bulk may cost as little; at 3 it is for certain, whatever else is not.
    const auto stairs = assembled(waysOf(twoColours(11)), {point(1, 10, 10, 10, 10), point(2, 20, 18, 19, 18),
                                                           point(3, 30, 29, 28, 27), point(4, 40, 40, 40, 40)});
    ASSERT_EQ(stairs.runs.size(), 3U);
    EXPECT_EQ(stairs.runs[0].to, 2);
    EXPECT_EQ(stairs.runs[1].winner, Way::Mix);
    EXPECT_EQ(stairs.runs[1].from, 3);
    EXPECT_EQ(stairs.runs[2].winner, Way::Bulk);
}

TEST(Staircase, saysFromWhereBulkStaysCheaperOnlyWhenProven) {
    const auto dear = twoColours(16);
    const auto stairs = curveOf(dear, 120);
    ASSERT_TRUE(stairs.bulkStaysCheaperFrom.has_value());
    EXPECT_EQ(*stairs.bulkStaysCheaperFrom, 1); // 12 < 16 from the first piece on
    // A law: beyond the answer bulk is cheaper at every quantity looked at.
    for (const auto& point : stairs.points)
        if (point.pieces >= *stairs.bulkStaysCheaperFrom) {
            EXPECT_LT(*point.bulk.cost, *point.kits.cost) << point.pieces;
        }
    // The same prices seen only a little way prove nothing.
    EXPECT_FALSE(curveOf(dear, 2).bulkStaysCheaperFrom.has_value());
}

TEST(Staircase, findsTheLaterCrossing) {
    auto problem = twoColours(16);
    problem.suppliers.push_back({"T", money(9), std::nullopt, Money()});
    for (auto& bulk : problem.bulk) bulk.supplier = "T"; // shipping makes bulk dear for the first pieces: 21 against 16
    const auto stairs = curveOf(problem, 120);
    ASSERT_TRUE(stairs.bulkStaysCheaperFrom.has_value());
    const auto from = *stairs.bulkStaysCheaperFrom;
    EXPECT_GT(from, 6);
    const auto& before = stairs.points[static_cast<std::size_t>(from) - 2];
    EXPECT_GE(*before.bulk.cost, *before.kits.cost);
    for (const auto& point : stairs.points)
        if (point.pieces >= from) { EXPECT_LT(*point.bulk.cost, *point.kits.cost) << point.pieces; }
}

TEST(Staircase, leavesOutTheKitThatLacksAColour) {
    auto problem = twoColours(11);
    problem.kits[0].gives.pop_back();
    const auto stairs = curveOf(problem, 3);
    EXPECT_FALSE(stairs.points[0].kits.cost.has_value());
    EXPECT_EQ(stairs.bulkStaysCheaperFrom, 1);
}

TEST(Staircase, neverHasAMixDearerThanEitherAlone) {
    for (const double kit : {8.0, 10.5, 12.0, 14.0}) {
        const auto stairs = curveOf(twoColours(kit), 30);
        for (const auto& point : stairs.points) {
            EXPECT_LE(*point.mix.cost, *point.kits.cost);
            EXPECT_LE(*point.mix.cost, *point.bulk.cost);
            EXPECT_TRUE(point.proven);
        }
    }
}

} // namespace
