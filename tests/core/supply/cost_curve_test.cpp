// SPDX-License-Identifier: MIT
#include "core/supply/cost_curve.h"
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

TEST(CostCurve, needsAreRoundedUpOnceAtTheTotal) {
    // 100 / 0.97 = 103.09 -> 104 by hand; padding by the share lost is common practice, no source.
    Job job;
    job.lines = {{"Wren", 1, {stones("M", 100, Rate::fromPercent(3))}}};
    EXPECT_EQ(needsOf(job)[0].count, Count::of(104));
    job.lines[0].pieces = 97;
    EXPECT_EQ(needsOf(job)[0].count, Count::of(10'000));
}

TEST(CostCurve, showsEveryChangeOfTheWinner) {
    // By hand. Kit 11: six pieces. Bulk: 1-6 pieces one C10 and one R2, 12.00. 7-12 pieces: two kits 22.00;
    // bulk 7-12: C10 x2 = 18 and red 336-576 = R2 x2 = 6, 24.00; a kit with C10 alone covers red up to 9
    // pieces: 20.00.
    const auto curve = curveOf(twoColours(11), 12);
    ASSERT_EQ(curve.points.size(), 12U);
    EXPECT_EQ(curve.points[0].kits.cost, money(11));
    EXPECT_EQ(curve.points[0].bulk.cost, money(12));
    EXPECT_EQ(curve.points[0].winner, Strategy::Kits);
    EXPECT_EQ(curve.points[6].kits.cost, money(22));
    EXPECT_EQ(curve.points[6].bulk.cost, money(24));
    EXPECT_EQ(curve.points[6].mix.cost, money(20));
    EXPECT_EQ(curve.points[6].winner, Strategy::Mix);
    EXPECT_EQ(curve.points[11].mix.cost, money(22)); // a second kit is cheaper than C10 and R2
    ASSERT_EQ(curve.runs.size(), 3U);
    EXPECT_EQ(curve.runs[0].to, 6);
    EXPECT_EQ(curve.runs[1].winner, Strategy::Mix);
    EXPECT_EQ(curve.runs[1].to, 9);
    EXPECT_EQ(curve.runs[2].winner, Strategy::Kits);
    EXPECT_FALSE(curve.bulkStaysCheaperFrom.has_value()); // kits are the cheaper slope
}

TEST(CostCurve, takesNoChangeOnTheWordOfASearchThatWasCutShort) {
    const auto point = [](std::int64_t pieces, double bulk, double bulkBound, double mix, double mixBound) {
        CostCurvePoint made;
        made.pieces = pieces;
        made.bulk = {money(bulk), money(bulkBound)};
        made.mix = {money(mix), money(mixBound)};
        made.proven = bulk == bulkBound && mix == mixBound;
        made.winner = mix < bulk ? Strategy::Mix : Strategy::Bulk;
        return made;
    };
    // At 2 the mix looks cheaper, but bulk may cost as little; at 3 it is for certain, whatever else is not.
    const auto curve = assembled(strategiesOf(twoColours(11)), {point(1, 10, 10, 10, 10), point(2, 20, 18, 19, 18),
                                                                point(3, 30, 29, 28, 27), point(4, 40, 40, 40, 40)});
    ASSERT_EQ(curve.runs.size(), 3U);
    EXPECT_EQ(curve.runs[0].to, 2);
    EXPECT_EQ(curve.runs[1].winner, Strategy::Mix);
    EXPECT_EQ(curve.runs[1].from, 3);
    EXPECT_EQ(curve.runs[2].winner, Strategy::Bulk);
}

TEST(CostCurve, saysFromWhereBulkStaysCheaperOnlyWhenProven) {
    const auto dear = twoColours(16);
    const auto curve = curveOf(dear, 120);
    ASSERT_TRUE(curve.bulkStaysCheaperFrom.has_value());
    EXPECT_EQ(*curve.bulkStaysCheaperFrom, 1); // 12 < 16 from the first piece on
    // A law: beyond the answer bulk is cheaper at every quantity looked at.
    for (const auto& point : curve.points)
        if (point.pieces >= *curve.bulkStaysCheaperFrom) {
            EXPECT_LT(*point.bulk.cost, *point.kits.cost) << point.pieces;
        }
    // The same prices seen only a little way prove nothing.
    EXPECT_FALSE(curveOf(dear, 2).bulkStaysCheaperFrom.has_value());
}

TEST(CostCurve, findsTheLaterCrossing) {
    auto problem = twoColours(16);
    problem.suppliers.push_back({"T", money(9), std::nullopt, Money()});
    for (auto& bulk : problem.bulk) bulk.supplier = "T"; // shipping makes bulk dear for the first pieces: 21 against 16
    const auto curve = curveOf(problem, 120);
    ASSERT_TRUE(curve.bulkStaysCheaperFrom.has_value());
    const auto from = *curve.bulkStaysCheaperFrom;
    EXPECT_GT(from, 6);
    const auto& before = curve.points[static_cast<std::size_t>(from) - 2];
    EXPECT_GE(*before.bulk.cost, *before.kits.cost);
    for (const auto& point : curve.points)
        if (point.pieces >= from) { EXPECT_LT(*point.bulk.cost, *point.kits.cost) << point.pieces; }
}

TEST(CostCurve, leavesOutTheKitThatLacksAColour) {
    auto problem = twoColours(11);
    problem.kits[0].gives.pop_back();
    const auto curve = curveOf(problem, 3);
    EXPECT_FALSE(curve.points[0].kits.cost.has_value());
    EXPECT_EQ(curve.bulkStaysCheaperFrom, 1);
}

TEST(CostCurve, neverHasAMixDearerThanEitherAlone) {
    for (const double kit : {8.0, 10.5, 12.0, 14.0}) {
        const auto curve = curveOf(twoColours(kit), 30);
        for (const auto& point : curve.points) {
            EXPECT_LE(*point.mix.cost, *point.kits.cost);
            EXPECT_LE(*point.mix.cost, *point.bulk.cost);
            EXPECT_TRUE(point.proven);
        }
    }
}

} // namespace
