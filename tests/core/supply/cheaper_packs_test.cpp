// SPDX-License-Identifier: MIT
// Figures by hand, prices invented. The planner of Buying is what they are held against.
#include "core/supply/cheaper_packs.h"

#include "core/supply/purchase.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

using namespace sp;
using namespace sp::supply;
using support::money;
using units::Count;

namespace {

base::Id idOfHoodie(std::uint8_t n) {
    base::Id::Bytes bytes{};
    bytes[15] = n;
    return base::Id::fromBytes(bytes);
}

/// A hoodie at 13.90, from 24 at 12.79.
catalogue::PricedMaterial hoodie() {
    catalogue::PricedMaterial priced;
    priced.material.id = idOfHoodie(1);
    priced.material.name = "Hoodie";
    priced.material.kind = catalogue::MaterialKind::Blank;
    priced.price = units::UnitPrice{money(13.90), Count::of(1)};
    priced.origin = {catalogue::PriceOrigin::Kind::Pack, false, "Millrace Blanks", "single", std::nullopt};
    priced.breaks = {{Count::of(24), money(12.79)}};
    return priced;
}

needs::PackedNeed needOf(std::int64_t pieces) { return {pieces, pieces, needs::priceAt(hoodie(), pieces)}; }

} // namespace

// 23 × 13.90 = 319.70 and 24 × 12.79 = 306.96; 22 × 13.90 = 305.80 is less.
TEST(CheaperPacks, areMoreOfTheSameUpToAFurtherPrice) {
    EXPECT_EQ(cheaperPacks(hoodie(), needOf(23), nullptr),
              (PacksOfOneSort{"Millrace Blanks", "single", 24, money(306.96)}));
    EXPECT_EQ(cheaperPacks(hoodie(), needOf(22), nullptr), std::nullopt);
    EXPECT_EQ(cheaperPacks(hoodie(), needOf(24), nullptr), std::nullopt);
}

// A dozen at 150.00: two for 24 are 300.00 against 306.96; for 25 three are 450.00.
TEST(CheaperPacks, areThoseOfAnotherPackOfTheBook) {
    std::vector<catalogue::Supplier> suppliers(1);
    suppliers[0].id = idOfHoodie(2);
    suppliers[0].name = "Tollgate Garments";
    std::vector<catalogue::Pack> packs(2);
    packs[0] = {idOfHoodie(3), idOfHoodie(1), idOfHoodie(2), "dozen", Count::of(12), {{Count::of(1), money(150)}},
                false,         std::nullopt};
    packs[1] = {idOfHoodie(4), idOfHoodie(1),        idOfHoodie(2), "unpriced",
                Count::of(1),  {{Count::of(1), {}}}, false,         std::nullopt};
    const PackOffers offers{packs, suppliers};
    EXPECT_EQ(cheaperPacks(hoodie(), needOf(24), &offers),
              (PacksOfOneSort{"Tollgate Garments", "dozen", 2, money(300)}));
    EXPECT_EQ(cheaperPacks(hoodie(), needOf(25), &offers), std::nullopt);
    packs[0].material = idOfHoodie(9);
    EXPECT_EQ(cheaperPacks(hoodie(), needOf(24), &offers), std::nullopt);
}

TEST(CheaperPacks, areNotLookedForWhereThePriceIsNotThatOfAPack) {
    auto material = hoodie();
    material.origin = {.kind = catalogue::PriceOrigin::Kind::Fixed};
    EXPECT_EQ(cheaperPacks(material, needOf(23), nullptr), std::nullopt);
}

/// A pack of one sort costs as many as are bought the same on the cost sheet and in Buying; and where Buying buys more
/// of it than are needed, or of the other, that is said.
TEST(CheaperPacks, sayWhereAPlanOfBuyingCostsLess) {
    std::mt19937_64 random(test::printedSeed());
    const auto from = [&](std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least + 1));
    };
    for (int i = 0; i < 300; ++i) {
        auto material = hoodie();
        const auto amount = from(1, 40);
        auto each = from(100, 4'000);
        material.price = units::UnitPrice{units::Money::fromMicros(each * 10'000), Count::of(amount)};
        material.breaks.clear();
        Pack pack{
            "usual", "Millrace Blanks", {{"Hoodie", Count::of(amount)}}, {{Count::of(1), material.price->price}}, {}};
        for (auto at = from(2, 9); at < 60; at += from(1, 20)) {
            each = each * from(80, 99) / 100;
            material.breaks.push_back({Count::of(at), units::Money::fromMicros(each * 10'000)});
            pack.prices.push_back({Count::of(at), material.breaks.back().each});
        }
        const auto need = from(1, 900);
        const auto packs = needs::ceilDivide(need, amount);
        const needs::PackedNeed needed{need, packs, needs::priceAt(material, packs)};
        const PurchaseProblem problem{{{"Hoodie", Count::of(need)}}, {}, {pack}, {{"Millrace Blanks", {}, {}, {}}}};
        const auto answer = planPurchase(problem);
        ASSERT_TRUE(answer && answer->plan && answer->plan->proven);
        const auto& bought = answer->plan->packs.at(0);
        const auto reckoned = units::Money::fromExact(needed.price.price.exact() * units::Fraction::of(packs));
        const auto cheaper = cheaperPacks(material, needed, nullptr);
        if (bought.count.value() == packs) { EXPECT_EQ(bought.goods, reckoned); }
        if (cheaper) {
            EXPECT_EQ(cheaper->cost, answer->plan->cost);
        } else {
            EXPECT_EQ(reckoned, answer->plan->cost);
        }
    }
}
