// SPDX-License-Identifier: MIT
#include "core/supply/purchase_program.h"

#include "tests/support/amounts.h"

#include <gtest/gtest.h>

#include <random>

using namespace sp::supply;
using sp::support::money;
using sp::units::Count;
using sp::units::Money;

namespace {

/// Ten of M, in fours at 3.00 or in tens at 8.00 from a supplier that ships for 1.00: fours cost 10.00, a ten 9.00.
PurchaseProblem foursOrTens() {
    return {{{"M", Count::of(10)}},
            {},
            {{"four", "S", {{"M", Count::of(4)}}, {{Count::of(1), money(3)}}, std::nullopt},
             {"ten", "S", {{"M", Count::of(10)}}, {{Count::of(1), money(8)}}, std::nullopt}},
            {{"S", money(1), std::nullopt, Money()}}};
}

/// The dear plan, nothing proven.
PurchasePlan dearPlan() {
    PurchasePlan plan;
    plan.cost = money(10);
    plan.bound = money(2);
    plan.packs = {{"four", "S", Count::of(3), money(9)}};
    return plan;
}

PurchasePlan taken(const std::string& solution, PurchasePlan plan = dearPlan()) {
    takeSolution(foursOrTens(), solution, plan);
    return plan;
}

TEST(PurchaseProgram, saysEverythingInWholeNumbers) {
    const auto text = purchaseProgram(foursOrTens());
    ASSERT_TRUE(text);
    EXPECT_EQ(*text, "Minimize\n obj: + 3 x0_0 + 8 x1_0 + 1 y0 - 1 z0 + 0 none\n"
                     "Subject To\n"
                     " + 1 x0_0 - 3 b0_0 <= 0\n + 1 x0_0 - 1 b0_0 >= 0\n + 1 b0_0 - 1 y0 <= 0\n"
                     " + 1 x1_0 - 1 b1_0 <= 0\n + 1 x1_0 - 1 b1_0 >= 0\n + 1 b1_0 - 1 y0 <= 0\n"
                     " + 2 x0_0 + 5 x1_0 >= 5\n"
                     " + 1 z0 - 1 y0 <= 0\n - 1 z0 >= 0\n"
                     "Bounds\n none <= 1\nGenerals\n x0_0\n x1_0\nBinaries\n b0_0\n b1_0\n y0\n z0\nEnd\n");
}

TEST(PurchaseProgram, takesACheaperPlanWithItsProof) {
    const auto plan = taken("Optimal - objective value 9.00000000\n"
                            "      1 x1_0                  1                       8\n"
                            "      3 b1_0                  1                       0\n"
                            "      4 y0                    1                       1\n");
    EXPECT_EQ(plan.cost, money(9));
    EXPECT_EQ(plan.bound, money(9));
    EXPECT_TRUE(plan.proven);
    ASSERT_EQ(plan.packs.size(), 1U);
    EXPECT_EQ(plan.packs[0].id, "ten");
}

TEST(PurchaseProgram, takesAPlanWithoutProofWhereTimeRanOut) {
    const auto plan = taken("Stopped on time - objective value 9\n 1 x1_0 0.9999999 8\n");
    EXPECT_EQ(plan.cost, money(9));
    EXPECT_EQ(plan.bound, money(2));
    EXPECT_FALSE(plan.proven);
}

TEST(PurchaseProgram, believesNothingThatDoesNotAddUp) {
    auto known = dearPlan();
    known.cost = money(9);
    known.packs = {{"ten", "S", Count::of(1), money(8)}};
    for (const char* solution :
         {"", "Optimal", "Infeasible - objective value 0\n", "Optimal - objective value 9\n",
          "Optimal - objective value 10\n 0 x0_0 3 3\n",  // contradicts a cheaper plan
          "Optimal - objective value 4\n 1 x1_0 1 8\n",   // costs more than it claims
          "Optimal - objective value 9\n 1 x1_0 0.5 8\n", // half a pack
          "Optimal - objective value 9\n 1 x1_0 -1 8\n",
          "Optimal - objective value 9\n 1 x7_0 1 8\n 2 x1_0 1 8\n", // a pack that there is not
          "Optimal - objective value 9\n 1 x1_0 1e300 8\n", "Optimal - objective value nan\n 1 x1_0 1 8\n",
          "Optimal - objective value 9\n 1 x1_0 inf 8\n", "Optimal - objective value 9\n 1 x 1 8\n",
          "Optimal - objective value 9\n 1 x1_0 900000000000 8\n", "Optimal - objective value 9\n 1\n"}) {
        const auto plan = taken(solution, known);
        EXPECT_EQ(plan.cost, money(9)) << solution;
        EXPECT_EQ(plan.bound, money(2)) << solution;
        EXPECT_FALSE(plan.proven) << solution;
    }
    EXPECT_TRUE(taken("Optimal - objective value 9\n 1 x1_0 1 8\n", known).proven);
}

TEST(PurchaseProgram, readsAnyBytesWithoutHarm) {
    std::mt19937_64 random(7);
    const std::string good = "Optimal - objective value 9.00000000\n      1 x1_0                  1      8\n";
    for (int n = 0; n < 20'000; ++n) {
        std::string text = good;
        for (std::uint64_t changes = random() % 4 + 1; changes > 0; --changes)
            text[random() % text.size()] = static_cast<char>(random() % 256);
        if (random() % 4 == 0) text.resize(random() % text.size());
        const auto plan = taken(text);
        EXPECT_GE(plan.cost, money(9));
        EXPECT_LE(plan.bound, plan.cost);
    }
}

} // namespace
