// SPDX-License-Identifier: MIT
// Every figure is worked by hand; names and prices are invented.
#include "core/supply/kit_choice.h"

#include "tests/support/amounts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace sp;
using namespace sp::supply;
using sp::support::inches;
using sp::support::money;
using testing::ElementsAre;
using units::Count;
using units::Money;
using units::Rate;

base::Id idInKits(std::uint8_t n) {
    base::Id::Bytes bytes{};
    bytes[15] = n;
    return base::Id::fromBytes(bytes);
}

enum KeyInKits : std::uint8_t { kJetStone = 1, kGold, kTapeSheet, kStar, kShip, kRow, kStarKit, kOtherKit };

/// A star of 100 jet stones of which none is lost. A kit of 500 at 20.00 with 5.00 shipping, free from 60.00; jet in
/// bulk at 11.00 for 400, without shipping, but only in orders of 33.00 or more.
class StarKit : public testing::Test {
  protected:
    StarKit() {
        catalogue::Material jet;
        jet.id = idInKits(kJetStone);
        jet.name = "Jet";
        catalogue::Material tape;
        tape.id = idInKits(kTapeSheet);
        tape.name = "Tape";
        tape.kind = catalogue::MaterialKind::Tape;
        tape.sheet.width = tape.sheet.height = inches(20);
        m_supplies.materials = {jet, tape};
        catalogue::Supplier ship;
        ship.id = idInKits(kShip);
        ship.name = "Anchor Lane";
        ship.shipping = money(5);
        ship.freeFrom = money(60);
        catalogue::Supplier row;
        row.id = idInKits(kRow);
        row.name = "Tar Row";
        row.minimum = money(33);
        m_supplies.suppliers = {ship, row};
        catalogue::Pack pack;
        pack.id = idInKits(20);
        pack.material = idInKits(kJetStone);
        pack.supplier = idInKits(kRow);
        pack.name = "400";
        pack.amount = Count::of(400);
        pack.prices = {{Count::of(1), money(11)}};
        m_supplies.packs = {pack};
        m_supplies.kits = {
            kitOf(kStarKit, "Star kit", {{idInKits(kJetStone), Count::of(500)}, {idInKits(kTapeSheet), Count::of(1)}})};
        m_supplies.shelf[idInKits(kJetStone)] = 10'000; // counts in neither
        m_star.id = idInKits(kStar);
        m_star.name = "Star";
        m_star.width = m_star.height = inches(2);
        m_star.stones = {{idInKits(kJetStone), Count::of(100)}};
        m_star.templatesOnWall = true;
        m_prices.materials[idInKits(kJetStone)].material = jet;
        m_prices.materials[idInKits(kTapeSheet)].material = tape;
    }

    static catalogue::Kit kitOf(KeyInKits id, const char* name, std::vector<catalogue::KitItem> items) {
        catalogue::Kit kit;
        kit.id = idInKits(id);
        kit.name = name;
        kit.supplier = idInKits(kShip);
        kit.design = idInKits(kStar);
        kit.price = money(20);
        kit.items = std::move(items);
        return kit;
    }
    std::vector<KitChoice> choices(std::int64_t asked = 8, std::int64_t last = 20) {
        layout::FitMemo fits;
        const auto made = kitChoices(m_star, m_supplies, m_prices, asked, last, fits, [] { return false; });
        EXPECT_TRUE(made.has_value()) << (made ? "" : describe(made.error()));
        return made.value_or(std::vector<KitChoice>{});
    }

    Supplies m_supplies;
    catalogue::Design m_star;
    catalogue::PriceBook m_prices;
};

// Up to 5 pieces one kit, 25.00; to 10 two, 45.00; to 15 three, 60.00 and no shipping; to 20 four, 80.00. In bulk up to
// 12 pieces three bags, 33.00, because less is not sold; to 16 four, 44.00; to 20 five, 55.00.
TEST_F(StarKit, costsThePieceFromTheKitAndFromBulk) {
    const auto star = choices();
    ASSERT_EQ(star.size(), 1U);
    EXPECT_EQ(star[0].name, "Star kit");
    ASSERT_TRUE(star[0].makes.has_value());
    EXPECT_EQ(star[0].makes->sure, Count::of(5));
    EXPECT_GE(star[0].prices.size(), 20U);
    for (const auto& [pieces, kit, bulk] :
         {std::tuple{1, 25, 33}, {5, 25, 33}, {6, 45, 33}, {10, 45, 33}, {11, 60, 33}, {13, 60, 44}, {20, 80, 55}}) {
        const auto* price = star[0].at(pieces);
        ASSERT_NE(price, nullptr);
        EXPECT_EQ(price->kit.cost, money(kit)) << pieces;
        EXPECT_EQ(price->bulk.cost, money(bulk)) << pieces;
    }
    ASSERT_EQ(star[0].runs.size(), 2U);
    EXPECT_EQ(star[0].runs[0], (KitRun{1, 5, true}));
    EXPECT_EQ(star[0].runs[1].from, 6);
}

// At 33.00 a bag with a minimum of 33.00 bulk costs 33.00 up to 4 pieces, 66.00 up to 8, 99.00 up to 12: the kit costs
// less for all of them, 25.00, 45.00 and 60.00. With kits of 41.00 it is 46.00 up to 5, 82.00 up to 10: dearer up to 4,
// cheaper for 5 alone, dearer again, cheaper for 9 and 10, for which bulk takes three bags.
TEST_F(StarKit, mayBeCheaperAgain) {
    m_supplies.packs[0].prices = {{Count::of(1), money(33)}};
    EXPECT_THAT(choices(8, 10)[0].runs, ElementsAre(KitRun{1, 10, true}));
    m_supplies.kits[0].price = money(41);
    EXPECT_THAT(choices(8, 10)[0].runs,
                ElementsAre(KitRun{1, 4, false}, KitRun{5, 5, true}, KitRun{6, 8, false}, KitRun{9, 10, true}));
}

// A kit a piece costs 20 ÷ 5 = 4.00 at the least, shipping free; bulk 2.75, and once up to a bag and the minimum more.
TEST_F(StarKit, losesForGoodWhereThatIsProven) {
    EXPECT_EQ(choices(8, 7)[0].bulkForGoodFrom, 6) << "more are looked at than seven, which do not show it";
    m_supplies.kits[0].price = money(14);
    EXPECT_FALSE(choices(8, 60)[0].bulkForGoodFrom) << "2.80 against 2.75 would take too many to show";
    m_supplies.kits[0].price = money(10);
    EXPECT_FALSE(choices(8, 60)[0].bulkForGoodFrom) << "2.00 a piece stays the cheaper";
}

TEST_F(StarKit, isReckonedForThePiecesAskedForToo) {
    const auto star = choices(1'000, 6);
    EXPECT_EQ(star[0].prices.back().pieces, 1'000);
    EXPECT_EQ(star[0].at(1'000)->kit.cost, money(4'000));
    EXPECT_EQ(star[0].at(1'000)->bulk.cost, money(2'750));
    EXPECT_LT(star[0].runs.back().to, 500) << "what lies between is not known";
    EXPECT_EQ(star[0].at(500), nullptr);
}

TEST_F(StarKit, servesTheDesignItIsForOrAllWhoseColoursItHolds) {
    auto kit = m_supplies.kits[0];
    EXPECT_TRUE(isServedBy(m_star, kit));
    kit.design = idInKits(kOtherKit);
    EXPECT_TRUE(isServedBy(m_star, kit)) << "it holds jet";
    m_star.stones.push_back({idInKits(kGold), Count::of(1)});
    EXPECT_FALSE(isServedBy(m_star, kit));
    kit.design = idInKits(kStar);
    EXPECT_TRUE(isServedBy(m_star, kit));
    kit.design = {};
    m_star.stones.clear();
    EXPECT_FALSE(isServedBy(m_star, kit)) << "a design without stones is served by none that is not for it";
}

// Each kit by itself, whatever others there are; one that lacks the stones makes none and costs nothing to compare.
TEST_F(StarKit, standsByItself) {
    m_supplies.kits.push_back(kitOf(kOtherKit, "Bare kit", {{idInKits(kJetStone), Count::of(10)}}));
    m_supplies.kits.back().price = money(1);
    const auto both = choices();
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(both[0].at(5)->kit.cost, money(25));
    EXPECT_EQ(both[1].makes->sure, Count::of(0));
    EXPECT_EQ(both[1].at(1)->kit.cost, money(15)) << "ten of them, and the shipping";
    m_supplies.packs.clear();
    const auto noBulk = choices();
    EXPECT_FALSE(noBulk[0].at(5)->bulk.cost.has_value());
    EXPECT_THAT(noBulk[0].runs, ElementsAre(KitRun{1, 20, true}));
}

TEST_F(StarKit, endsWhereItIsStopped) {
    layout::FitMemo fits;
    int left = 3;
    const auto made = kitChoices(m_star, m_supplies, m_prices, 8, 20, fits, [&] { return left-- == 0; });
    ASSERT_TRUE(made.has_value());
    EXPECT_EQ(made->at(0).prices.size(), 3U);
    m_star.stones.clear();
    EXPECT_FALSE(kitChoices(m_star, m_supplies, m_prices, 8, 20, fits, [] { return false; }).has_value());
}

} // namespace
