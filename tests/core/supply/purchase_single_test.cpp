// SPDX-License-Identifier: MIT
// What only one pack gives is bought in closed form, whatever the number. Prices are invented; each figure is worked by
// hand, and the laws are held against trying every count and against CBC.
#include "core/supply/messages.h"
#include "core/supply/purchase.h"

#include "tests/reference/cbc_purchase.h"
#include "tests/reference/purchase_check.h"
#include "tests/support/amounts.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace sp::supply;
using sp::support::money;
using sp::units::Count;
using sp::units::Money;

namespace {

struct Price {
    std::int64_t from;
    double each;
};

Pack pack(std::string id, std::string supplier, std::string material, std::int64_t holds,
          const std::vector<Price>& prices) {
    Pack made{std::move(id), std::move(supplier), {{std::move(material), Count::of(holds)}}, {}, std::nullopt};
    for (const auto& price : prices) made.prices.push_back({Count::of(price.from), money(price.each)});
    return made;
}

struct Case {
    const char* name;
    std::int64_t need;
    std::int64_t holds;
    std::vector<Price> prices;
    std::int64_t packs;
    double cost;

    friend void PrintTo(const Case& row, std::ostream* out) { *out << row.name; }
};

class OneBigPack : public testing::TestWithParam<Case> {};

TEST_P(OneBigPack, isBoughtAtItsLeastAndProven) {
    const auto& row = GetParam();
    // It takes no effort: there is nothing to search.
    const auto answer = planPurchase(
        {{{"M", Count::of(row.need)}}, {}, {pack("P", "S", "M", row.holds, row.prices)}, {{"S", {}, std::nullopt, {}}}},
        {0});
    ASSERT_TRUE(answer && answer->plan);
    const auto& plan = *answer->plan;
    EXPECT_EQ(plan.cost, money(row.cost));
    EXPECT_EQ(plan.bound, money(row.cost));
    EXPECT_TRUE(plan.proven);
    ASSERT_EQ(plan.packs.size(), 1U);
    EXPECT_EQ(plan.packs[0].count, Count::of(row.packs));
    EXPECT_EQ(plan.left[0].count, Count::of(row.packs * row.holds - row.need));
}

const std::vector<Price> kBreakAtTenThousand{{1, 2.00}, {10'000, 1.98}};

INSTANTIATE_TEST_SUITE_P(
    PurchaseSingle, OneBigPack,
    testing::Values(
        // 9,900 × 2.00 = 19,800.00 = 10,000 × 1.98: as cheap, and 100 are left
        Case{"asMuchAtTheBreak", 9'900, 1, kBreakAtTenThousand, 10'000, 19'800},
        // 9,899 × 2.00 = 19,798.00
        Case{"oneFewerIsCheaperBelowIt", 9'899, 1, kBreakAtTenThousand, 9'899, 19'798},
        // 20,000 × 1.95, the break itself
        Case{"theBreakItself", 20'000, 1, {{1, 2.00}, {20'000, 1.95}}, 20'000, 39'000},
        // 12,000 × 1.90
        Case{"aboveTheBreak", 12'000, 1, {{1, 2.00}, {11'000, 1.90}}, 12'000, 22'800},
        // 1,500,000 ÷ 144 = 10,416.7: 10,417 × 1.10 = 11,458.70; 20,000 × 0.50 = 10,000.00
        Case{"grossBagsUpToTheBreak", 1'500'000, 144, {{1, 1.10}, {20'000, 0.50}}, 20'000, 10'000},
        // … 20,000 × 0.60 = 12,000.00
        Case{"grossBagsBelowTheBreak", 1'500'000, 144, {{1, 1.10}, {20'000, 0.60}}, 10'417, 11'458.70},
        // 19,900 × 2.00
        Case{"oneSinglePrice", 19'900, 1, {{1, 2.00}}, 19'900, 39'800},
        // 50,000 × 1.98
        Case{"fiftyThousand", 50'000, 1, kBreakAtTenThousand, 50'000, 99'000},
        // A price that rises: 9,999 × 1.98 are not enough, 12,000 × 2.00
        Case{"aPriceThatRises", 12'000, 1, {{1, 1.98}, {10'000, 2.00}}, 12'000, 24'000},
        // Sold from 30,000 on: 30,000 × 1.00
        Case{"soldInLargeNumbersOnly", 9'900, 1, {{30'000, 1.00}}, 30'000, 30'000},
        // 1,000,000,000,000 ÷ 1,440 = 694,444,444.4: 694,444,445 × 0.01
        Case{"theLargestNeed", 1'000'000'000'000, 1'440, {{1, 0.01}}, 694'444'445, 6'944'444.45}),
    [](const auto& row) { return std::string(row.param.name); });

// 9,000 × 2.00 = 18,000.00 ship for 40.00; 9,010 for 18,020.00 ship free.
TEST(PurchaseSingle, reachesFreeShippingWhereThatIsCheaper) {
    PurchaseProblem problem{
        {{"M", Count::of(9'000)}}, {}, {pack("P", "S", "M", 1, {{1, 2.00}})}, {{"S", money(40), money(18'020), {}}}};
    auto answer = planPurchase(problem, {});
    ASSERT_TRUE(answer && answer->plan);
    EXPECT_EQ(answer->plan->cost, money(18'020));
    EXPECT_EQ(answer->plan->packs[0].count, Count::of(9'010));
    EXPECT_TRUE(answer->plan->proven);
    problem.suppliers[0].shipping = money(19.99);
    answer = planPurchase(problem, {});
    EXPECT_EQ(answer->plan->cost, money(18'019.99));
    EXPECT_TRUE(answer->plan->proven);
}

// Two materials of one supplier, each of one pack: 9,900 × 2.00 and 30,000 × 0.50 with one shipping of 12.00.
TEST(PurchaseSingle, takesSeveralMaterialsOfASupplierTogether) {
    const auto answer = planPurchase({{{"M", Count::of(9'900)}, {"N", Count::of(30'000)}},
                                      {},
                                      {pack("P", "S", "M", 1, {{1, 2.00}}), pack("Q", "S", "N", 1, {{1, 0.50}}),
                                       pack("X", "S", "glue", 1, {{1, 7}})},
                                      {{"S", money(12), money(40'000), money(100)}}},
                                     {});
    ASSERT_TRUE(answer && answer->plan);
    EXPECT_EQ(answer->plan->cost, money(34'812));
    EXPECT_TRUE(answer->plan->proven);
}

// 10 at 10.00 come to 100.00 and 11 at 5.00 to 55.00: at most 14 of them, a minimum of 80.00 is out of reach for 12.
TEST(PurchaseSingle, saysThatAMinimumCannotBeReached) {
    auto few = pack("P", "S", "M", 1, {{1, 10}, {11, 5}});
    few.atMost = Count::of(14);
    const PurchaseProblem problem{{{"M", Count::of(12)}}, {}, {few}, {{"S", {}, std::nullopt, money(80)}}};
    const auto answer = planPurchase(problem, {});
    ASSERT_TRUE(answer) << describe(answer.error());
    EXPECT_FALSE(answer->plan);
    EXPECT_EQ(answer->impossible, sp::base::say(Note::MinimumNotReached, "S", "M"));
}

// Two packs of the material at suppliers whose minimum neither reaches: the search looks everywhere.
TEST(PurchaseSingle, saysWhereNoMinimumIsReached) {
    auto few = pack("P", "S", "M", 1, {{1, 10}, {11, 5}});
    few.atMost = Count::of(14);
    auto other = few;
    other.id = "Q";
    other.supplier = "T";
    const PurchaseProblem problem{{{"M", Count::of(27)}},
                                  {},
                                  {few, other},
                                  {{"S", {}, std::nullopt, money(80)}, {"T", {}, std::nullopt, money(80)}}};
    const auto searched = planPurchase(problem, {});
    ASSERT_FALSE(searched);
    EXPECT_EQ(sp::test::described(searched.error()), "NoPlanFound");
}

// With a second pack there is a choice and a search, which may look at a part of the need only: the plan still is
// there, no dearer than all of one pack, 9,900 × 2.00.
TEST(PurchaseSingle, hasAPlanBesideASmallPackToo) {
    const auto answer = planPurchase(
        {{{"M", Count::of(9'900)}},
         {},
         {pack("P", "S", "M", 1, {{1, 2.00}, {10'000, 1.98}}), pack("Q", "S", "M", 3, {{1, 7.00}, {10'000, 6.90}})},
         {{"S", {}, std::nullopt, {}}}},
        {});
    ASSERT_TRUE(answer && answer->plan);
    EXPECT_LE(answer->plan->cost, money(19'800));
    EXPECT_GE(answer->plan->bound, money(19'602)); // 9,900 × 1.98
    EXPECT_LE(answer->plan->bound, answer->plan->cost);
}

struct Draw {
    std::mt19937_64 from;

    std::int64_t number(std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(from() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool once(std::int64_t in) { return number(1, in) == 1; }
    Money coins(std::int64_t most) { return Money::fromMicros(number(0, most) * 250'000); }
};

/// A supplier with one pack of one material: breaks that pay or not, limits, a minimum, free shipping.
PurchaseProblem drawn(Draw& draw, std::int64_t mostNeeded) {
    const auto need = draw.number(1, mostNeeded);
    Pack made{"P", "S", {{"M", Count::of(draw.number(1, 7))}}, {}, std::nullopt};
    auto from = draw.once(4) ? draw.number(2, mostNeeded) : 1;
    auto each = draw.coins(40);
    for (auto breaks = draw.number(1, 4); breaks > 0; --breaks) {
        made.prices.push_back({Count::of(from), each});
        from += draw.number(1, mostNeeded);
        each = draw.once(4) ? draw.coins(40) : Money::fromMicros(each.micros() / 250'000 * 9 / 10 * 250'000);
    }
    if (draw.once(3)) made.atMost = Count::of(draw.number(1, 2 * mostNeeded));
    Supplier supplier{"S", draw.coins(60), std::nullopt, {}};
    if (draw.once(2)) supplier.freeFrom = draw.coins(30 * mostNeeded);
    if (draw.once(3)) supplier.minimum = draw.coins(30 * mostNeeded);
    PurchaseProblem problem{{{"M", Count::of(need)}}, {}, {made}, {supplier}};
    if (draw.once(3)) problem.shelf = {{"M", Count::of(draw.number(0, need))}};
    return problem;
}

/// Tries every count: those beyond all that is needed or asked for cost more.
std::optional<std::int64_t> triedOut(const PurchaseProblem& problem) {
    const Pack& pack = problem.packs[0];
    const Supplier& terms = problem.suppliers[0];
    const auto lying = problem.shelf.empty() ? 0 : problem.shelf[0].count.value();
    const auto missing = problem.needs[0].count.value() - lying;
    if (missing <= 0) return 0;
    std::optional<std::int64_t> least;
    for (std::int64_t count = 1; count <= 60'000; ++count) {
        if (count * pack.gives[0].count.value() < missing) continue;
        if (pack.atMost && count > pack.atMost->value()) break;
        const PackPrice* price = nullptr;
        for (const auto& step : pack.prices)
            if (step.from.value() <= count) price = &step;
        if (price == nullptr) continue;
        const auto goods = price->each.micros() * count;
        if (goods < terms.minimum.micros()) continue;
        const bool isFree = terms.freeFrom && goods >= terms.freeFrom->micros();
        const auto cost = goods + (isFree ? 0 : terms.shipping.micros());
        if (!least || cost < *least) least = cost;
    }
    return least;
}

TEST(PurchaseSingle, costsWhatTryingEveryCountFinds) {
    Draw draw{std::mt19937_64(sp::test::printedSeed())};
    int planned = 0;
    for (int round = 0; round < 400; ++round) {
        const auto problem = drawn(draw, draw.once(2) ? 12 : 60);
        const auto least = triedOut(problem);
        const auto answer = planPurchase(problem, {});
        ASSERT_TRUE(answer) << "round " << round << ": " << describe(answer.error());
        ASSERT_EQ(answer->plan.has_value(), least.has_value()) << "round " << round;
        if (!least) continue;
        ++planned;
        EXPECT_EQ(answer->plan->cost.micros(), *least) << "round " << round;
        EXPECT_TRUE(answer->plan->proven) << "round " << round;
        EXPECT_EQ(sp::reference::faultOf(*answer->plan, problem), "") << "round " << round;
    }
    EXPECT_GE(planned, 200);
}

/// The same shapes with needs beyond what the search holds.
TEST(PurchaseSingle, agreesWithCbcOnLargeNeeds) {
    ASSERT_TRUE(sp::reference::hasCbc()) << "install coinor-cbc";
    const sp::test::TempFolder folder;
    Draw draw{std::mt19937_64(sp::test::printedSeed())};
    int compared = 0;
    for (int round = 0; round < 25; ++round) {
        const auto problem = drawn(draw, 20'000);
        const auto answer = planPurchase(problem, {});
        ASSERT_TRUE(answer) << "round " << round << ": " << describe(answer.error());
        const auto reference = sp::reference::solveWithCbc(problem, folder.path(), true);
        if (!reference.isAnswered) continue;
        ASSERT_EQ(answer->plan.has_value(), reference.cost.has_value()) << "round " << round;
        if (!answer->plan) continue;
        ++compared;
        EXPECT_NEAR(static_cast<double>(answer->plan->cost.micros()) / 1e6, *reference.cost, 0.01) << "round " << round;
        EXPECT_TRUE(answer->plan->proven) << "round " << round;
    }
    EXPECT_GE(compared, 8);
}

} // namespace
