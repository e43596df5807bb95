// SPDX-License-Identifier: MIT
//
// The checker of purchase plans judges every plan of the other tests, so it is held to a plan with one fault at a time.
#include "tests/reference/purchase_check.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

#include <functional>

using namespace sp::supply;
using sp::reference::faultOf;
using sp::support::money;
using sp::units::Count;

namespace {

MaterialCount of(std::string material, std::int64_t count) { return {std::move(material), Count::of(count)}; }

/// 250 of M are wanted and 30 of N; 50 and 10 lie on the shelf, in two places each. Packs of 100 M at 3.00, from two on
/// at 2.50, at most four; a kit of 40 M and 20 N at 4.00, sold from two on; S ships for 1.50, free from 5.00, takes
/// orders from 5.00; T ships for 2.00, free from 100.00.
PurchaseProblem problem() {
    PurchaseProblem made{
        {of("M", 150), of("N", 30), of("M", 100)},
        {of("M", 20), of("N", 10), of("M", 30)},
        {{"P", "S", {of("M", 100)}, {{Count::of(2), money(2.5)}, {Count::of(1), money(3)}}, Count::of(4)},
         {"K", "T", {of("M", 40), of("N", 20)}, {{Count::of(2), money(4)}}, std::nullopt}},
        {{"S", money(1.5), money(5), money(5)}, {"T", money(2), money(100), {}}}};
    return made;
}

/// Two of P, 5.00 and free of shipping: two of K, 8.00 and 2.00: M comes to 50 + 200 + 80 =
/// 330, N to 10 + 40. Worked by hand: 15.00.
PurchasePlan plan() {
    PurchasePlan made;
    made.packs = {{"P", "S", Count::of(2), money(5)}, {"K", "T", Count::of(2), money(8)}};
    made.cost = money(15);
    return made;
}

TEST(PurchaseCheck, findsNothingWrongWithASoundPlan) { EXPECT_EQ(faultOf(plan(), problem()), ""); }

struct Row {
    const char* name;
    std::function<void(PurchasePlan&, PurchaseProblem&)> spoil;
    const char* fault;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class PurchaseCheckFault : public testing::TestWithParam<Row> {};

TEST_P(PurchaseCheckFault, isNamed) {
    auto bought = plan();
    auto asked = problem();
    GetParam().spoil(bought, asked);
    EXPECT_EQ(faultOf(bought, asked), GetParam().fault);
}

using Plan = PurchasePlan;
using Problem = PurchaseProblem;

INSTANTIATE_TEST_SUITE_P(
    Faults, PurchaseCheckFault,
    testing::Values(
        Row{"a pack nobody sells", [](Plan& p, Problem&) { p.packs[0].id = "Q"; }, "Q is not for sale"},
        Row{"none of a pack", [](Plan& p, Problem&) { p.packs[1].count = {}; }, "K: too many or none"},
        Row{"less than none", [](Plan& p, Problem&) { p.packs[1].count = Count::of(-2); }, "K: too many or none"},
        Row{"more than can be had", [](Plan& p, Problem&) { p.packs[0].count = Count::of(5); }, "P: too many or none"},
        // Four of P, 10.00: 15.00 + 5.00
        Row{"as many as can be had",
            [](Plan& p, Problem&) {
                p.packs[0].count = Count::of(4);
                p.cost = money(20);
            },
            ""},
        Row{"fewer than are sold", [](Plan& p, Problem&) { p.packs[1].count = Count::of(1); },
            "K: fewer than are sold"},
        Row{"a stone too few", [](Plan&, Problem& a) { a.needs[0].count = Count::of(231); }, "too little M"},
        Row{"all of a material", [](Plan&, Problem& a) { a.needs[0].count = Count::of(230); }, ""},
        Row{"a stone too few on the shelf", [](Plan&, Problem& a) { a.shelf[2].count = Count::of(-51); },
            "too little M"},
        // N comes to 10 + 2 × 20 = 50
        Row{"just enough of the second", [](Plan&, Problem& a) { a.needs[1].count = Count::of(50); }, ""},
        Row{"too few of the second", [](Plan&, Problem& a) { a.needs[1].count = Count::of(51); }, "too little N"},
        Row{"nothing of a third", [](Plan&, Problem& a) { a.needs.push_back(of("O", 1)); }, "too little O"},
        Row{"a cent too much", [](Plan& p, Problem&) { p.cost = money(15.01); }, "its cost adds up to another sum"},
        Row{"a cent too little", [](Plan& p, Problem&) { p.cost = money(14.99); }, "its cost adds up to another sum"},
        Row{"just below the minimum", [](Plan&, Problem& a) { a.suppliers[0].minimum = money(5.000001); },
            "below the minimum of S"},
        // From 5.01 on it would ship free: 1.50 more
        Row{"shipping that is not free",
            [](Plan& p, Problem& a) {
                a.suppliers[0].freeFrom = money(5.01);
                p.cost = money(16.5);
            },
            ""},
        Row{"shipping that is never free",
            [](Plan& p, Problem& a) {
                a.suppliers[0].freeFrom.reset();
                p.cost = money(16.5);
            },
            ""},
        Row{"shipping forgotten", [](Plan&, Problem& a) { a.suppliers[0].freeFrom = money(5.01); },
            "its cost adds up to another sum"},
        // One at a time at 3.00 each, in two entries: 6.00
        Row{"one price for each entry",
            [](Plan& p, Problem&) {
                p.packs[0].count = Count::of(1);
                p.packs.push_back(p.packs[0]);
                p.cost = money(16);
            },
            ""},
        // Nothing is bought of T, then N lacks 20; with the need gone neither its minimum nor its shipping counts
        Row{"a supplier left out",
            [](Plan& p, Problem& a) {
                p.packs.pop_back();
                a.needs.erase(a.needs.begin() + 1);
                a.suppliers[1].minimum = money(1);
                p.cost = money(5);
            },
            ""}));

} // namespace
