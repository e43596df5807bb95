// SPDX-License-Identifier: MIT
#include "core/supply/kit_of_design.h"

#include "tests/support/amounts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace sp;
using catalogue::MaterialKind;
using support::idOf;
using testing::ElementsAre;
using units::Count;
using units::Length;
using units::Money;
using units::Rate;

namespace {

Length sixteenths(std::int64_t n) { return Length::fromInch64ths(n * 4); }

/// The starter kit of common practice, no source: ten gross of each of two SS10 colours, two 9 1/2 x 12 in tape
/// sheets, one 9 x 12 in template sheet and one 9 x 12 in backing sheet, for a design of hand size.
class StarterKit : public testing::Test {
  protected:
    StarterKit() {
        add(1, "Aquamarine SS10", MaterialKind::Stone);
        add(2, "Jet SS10", MaterialKind::Stone);
        auto& tape = add(3, "Tape", MaterialKind::Tape);
        tape.sheet.width = sixteenths(152);
        tape.sheet.lifts = 2;
        add(4, "Template sheet", MaterialKind::Template).sheet.border = sixteenths(8);
        add(5, "Backing", MaterialKind::Backing);
        add(6, "Tee", MaterialKind::Blank);
        design.name = "Lantern";
        design.width = sixteenths(56);
        design.height = sixteenths(44);
        design.stones = {{idOf(1), Count::of(212)}, {idOf(2), Count::of(96)}};
        design.usualBase = idOf(5);
        kit.name = "Starter kit";
        kit.price = Money::fromMicros(24'900'000);
        kit.priceWithTemplates = Money::fromMicros(29'900'000);
        kit.items = {{idOf(1), Count::of(1440)},
                     {idOf(2), Count::of(1440)},
                     {idOf(3), Count::of(2)},
                     {idOf(4), Count::of(1)},
                     {idOf(5), Count::of(1)}};
    }
    catalogue::Material& add(std::uint64_t n, const char* name, MaterialKind kind) {
        auto& priced = prices.materials[idOf(n)];
        priced.material.id = idOf(n);
        priced.material.name = name;
        priced.material.kind = kind;
        priced.material.sheet.width = sixteenths(144);
        priced.material.sheet.height = sixteenths(192);
        priced.price = units::UnitPrice{Money::fromMicros(9'990'000), Count::of(1440)};
        return priced.material;
    }
    supply::YieldAnswer made(std::int64_t kits = 1, bool templatesCut = false) {
        const auto problem = supply::yieldProblemOf(kit, Count::of(kits), templatesCut, design, prices, fits);
        EXPECT_TRUE(problem) << (problem ? "" : describe(problem.error()));
        const auto answer = supply::kitYield(problem.value());
        EXPECT_TRUE(answer) << (answer ? "" : describe(answer.error()));
        return answer.value();
    }

    catalogue::PriceBook prices;
    catalogue::Design design;
    catalogue::Kit kit;
    layout::FitMemo fits;
};

TEST_F(StarterKit, makesSixOrSevenPieces) {
    for (std::int64_t perPiece = 205; perPiece <= 240; ++perPiece) {
        design.stones[0].count = Count::of(perPiece);
        EXPECT_THAT(made().pieces.value(), testing::AnyOf(6, 7)) << perPiece;
    }
}

TEST_F(StarterKit, runsOutOfTheColourWithMostStones) {
    const auto answer = made();
    EXPECT_EQ(answer.pieces, Count::of(6)); // 1440 = 6 x 212 + 168
    EXPECT_THAT(answer.limiting, ElementsAre("Aquamarine SS10"));
    EXPECT_EQ(answer.left[0].count, Count::of(168));
    EXPECT_EQ(answer.left[1].count, Count::of(1440 - 6 * 96));
    EXPECT_EQ(answer.costEach, Money::fromMicros(4'150'000));
    ASSERT_EQ(answer.gains.size(), 1U);
    EXPECT_EQ(answer.gains[0].pieces, Count::of(1)); // 1584 = 7 x 212 + 100
}

TEST_F(StarterKit, countsLossAndShortBags) {
    prices.materials[idOf(1)].material.stone.loss = Rate::fromPercent(5);
    EXPECT_EQ(made().pieces, Count::of(6)); // 1368 = 6 x 212 + 96
    kit.shortCount = Rate::fromPercent(8);
    EXPECT_EQ(made().pieces, Count::of(5)); // 1440 x 0.92 x 0.95 = 1258.56, 5 x 212 = 1060
}

TEST_F(StarterKit, poolsSeveralKits) {
    const auto answer = made(2);
    EXPECT_EQ(answer.pieces, Count::of(13)); // 2880 = 13 x 212 + 124, not 2 x 6
    EXPECT_EQ(answer.costEach, Money::fromMicros(3'830'769));
}

TEST_F(StarterKit, costsMoreWithTemplatesCutAndNeedsNoTemplateSheetThen) {
    kit.items.erase(kit.items.begin() + 3);
    const auto without = made();
    EXPECT_EQ(without.pieces, Count::of(0));
    EXPECT_THAT(without.limiting, ElementsAre("template"));
    const auto with = made(1, true);
    EXPECT_EQ(with.pieces, Count::of(6));
    EXPECT_EQ(with.costEach, Money::fromMicros(4'983'333));
    design.templatesOnWall = true;
    EXPECT_EQ(made().pieces, Count::of(6));
    EXPECT_EQ(made(1, true).costEach, Money::fromMicros(4'150'000)) << "templates on the wall are not bought again";
}

TEST_F(StarterKit, needsATemplateForEachColour) {
    // 7 x 9 in with half an inch all round is 8 x 10 in: a sheet of 9 x 12 in holds one, two colours take two.
    design.width = sixteenths(112);
    design.height = sixteenths(144);
    EXPECT_THAT(made().limiting, testing::Contains("Template sheet"));
    kit.items[3].count = Count::of(2);
    EXPECT_EQ(made().limiting, std::vector<std::string>{"Backing"});
}

TEST_F(StarterKit, makesNothingWithoutAColourOrTape) {
    kit.items.erase(kit.items.begin() + 2);
    EXPECT_THAT(made().limiting, ElementsAre("tape"));
    kit.items.erase(kit.items.begin());
    const auto answer = made();
    EXPECT_EQ(answer.pieces, Count::of(0));
    EXPECT_THAT(answer.limiting, ElementsAre("Aquamarine SS10", "tape"));
}

TEST_F(StarterKit, isLimitedByABlankOnlyWhenItHoldsThatBlank) {
    design.usualBase = idOf(6);
    EXPECT_EQ(made().pieces, Count::of(6));
    kit.items.push_back({idOf(6), Count::of(4)});
    EXPECT_EQ(made().pieces, Count::of(4));
    EXPECT_THAT(made().limiting, ElementsAre("Tee"));
}

// Ten bags at two a piece are five pieces; what goes once with the order limits none.
TEST_F(StarterKit, isLimitedByThePackingThatItHolds) {
    using catalogue::PackingPer;
    add(7, "Bag", MaterialKind::Packing);
    prices.shop.packing = {{idOf(7), Count::of(2)}};
    EXPECT_EQ(made().pieces, Count::of(6)) << "without bags in it";
    kit.items.push_back({idOf(7), Count::of(10)});
    EXPECT_EQ(made().pieces, Count::of(5));
    EXPECT_THAT(made().limiting, ElementsAre("Bag"));
    design.packing = {{idOf(7), Count::of(2), PackingPer::Order}};
    EXPECT_EQ(made().pieces, Count::of(6));
}

TEST_F(StarterKit, listsWhatTheDesignDoesNotUse) {
    design.stones.pop_back();
    const auto answer = made();
    EXPECT_EQ(answer.pieces, Count::of(6));
    const auto jet = std::find_if(answer.left.begin(), answer.left.end(),
                                  [](const auto& left) { return left.material == "Jet SS10"; });
    ASSERT_NE(jet, answer.left.end());
    EXPECT_EQ(jet->count, Count::of(1440));
    EXPECT_EQ(jet->value, Money::fromMicros(9'990'000));
}

TEST_F(StarterKit, saysWhatIsMissing) {
    design.stones.clear();
    EXPECT_EQ(describe(supply::yieldProblemOf(kit, Count::of(1), false, design, prices, fits).error()),
              "DesignWithoutStones(Lantern) of Lantern");
    design.stones = {{idOf(99), Count::of(1)}};
    EXPECT_EQ(supply::yieldProblemOf(kit, Count::of(1), false, design, prices, fits).error().code,
              base::Code::NotFound);
    EXPECT_EQ(supply::yieldProblemOf(kit, Count::of(0), false, design, prices, fits).error().code,
              base::Code::OutOfRange);
}

} // namespace
