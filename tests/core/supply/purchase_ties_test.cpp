// SPDX-License-Identifier: MIT
// Which of several plans that cost the same is taken: the one with more left, then with fewer suppliers, then with
// fewer packs, then with more of what is listed first. Prices are invented; single cases are worked by hand, small ones
// drawn at random are held against trying every plan.
#include "core/supply/purchase.h"
#include "core/supply/purchase_program.h"

#include "tests/reference/purchase_check.h"
#include "tests/support/amounts.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>
#include <random>
#include <set>
#include <tuple>

using namespace sp::supply;
using sp::support::money;
using sp::units::Count;
using sp::units::Money;

namespace {

Pack pack(std::string id, std::string supplier, std::string material, std::int64_t holds, double each) {
    return {std::move(id),
            std::move(supplier),
            {{std::move(material), Count::of(holds)}},
            {{Count::of(1), money(each)}},
            std::nullopt};
}

std::string bought(const std::vector<PlannedPack>& packs) {
    std::string text;
    for (const auto& item : packs) text += item.id + "x" + std::to_string(item.count.value()) + " ";
    return text;
}

std::string boughtFor(const PurchaseProblem& problem) {
    const auto answer = planPurchase(problem);
    if (!answer || !answer->plan) return "none";
    EXPECT_TRUE(answer->plan->proven);
    return bought(answer->plan->packs);
}

const std::vector<Supplier> kTwoSuppliers{{"S", {}, std::nullopt, {}}, {"T", {}, std::nullopt, {}}};

// Six of M and one of N come to 7.00 either way, nothing is left: two bags of S and one of T are three packs of two
// suppliers, three bags and one of T four packs of one.
TEST(PurchaseTies, takesFewerSuppliersBeforeFewerPacks) {
    EXPECT_EQ(boughtFor({{{"M", Count::of(6)}, {"N", Count::of(1)}},
                         {},
                         {pack("P", "S", "M", 3, 3), pack("Q", "T", "M", 2, 2), pack("X", "T", "N", 1, 1)},
                         kTwoSuppliers}),
              "Qx3 Xx1 ");
}

// One of either, or two of one: all the same but for the list.
TEST(PurchaseTies, takesWhatIsListedFirst) {
    for (const std::int64_t need : {2, 4, 6})
        EXPECT_EQ(
            boughtFor(
                {{{"M", Count::of(need)}}, {}, {pack("P", "S", "M", 2, 2), pack("Q", "S", "M", 2, 2)}, kTwoSuppliers}),
            "Px" + std::to_string(need / 2) + " ");
}

// A plan that another solver found is given its order too: 4.00 for two bags of one supplier or of two.
TEST(PurchaseTies, areBrokenInWhatASolverFoundToo) {
    const PurchaseProblem problem{{{"M", Count::of(2)}, {"N", Count::of(2)}},
                                  {},
                                  {pack("A", "S", "M", 2, 2), pack("B", "T", "N", 2, 2), pack("C", "T", "M", 2, 2)},
                                  kTwoSuppliers};
    PurchasePlan plan; // a dear one, not proven
    plan.cost = money(100);
    // Sums are whole pairs of units of money in the programme: two of them.
    takeSolution(problem, "Optimal - objective value 2.00000000\n 0 x0_0 1 1\n 1 x1_0 1 1\n", plan);
    EXPECT_EQ(plan.cost, money(4));
    EXPECT_EQ(bought(plan.packs), "Bx1 Cx1 ");
}

struct CoarseDraw {
    std::mt19937_64 from;

    std::int64_t number(std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(from() % static_cast<std::uint64_t>(most - least + 1));
    }
    bool once(std::int64_t in) { return number(1, in) == 1; }
    Money whole(std::int64_t least, std::int64_t most) { return Money::fromMicros(number(least, most) * 1'000'000); }
};

/// So coarse that many plans cost the same.
PurchaseProblem drawn(CoarseDraw& draw) {
    PurchaseProblem problem;
    const auto materials = draw.number(1, 3);
    const auto suppliers = draw.number(1, 3);
    const auto name = [](char first, std::int64_t i) { return std::string(1, static_cast<char>(first + i)); };
    for (std::int64_t m = 0; m < materials; ++m) problem.needs.push_back({name('A', m), Count::of(draw.number(1, 5))});
    for (std::int64_t s = 0; s < suppliers; ++s) {
        Supplier supplier{name('S', s), draw.whole(0, 2), std::nullopt, {}};
        if (draw.once(3)) supplier.freeFrom = draw.whole(3, 9);
        if (draw.once(3)) supplier.minimum = draw.whole(2, 5);
        problem.suppliers.push_back(std::move(supplier));
    }
    const auto packs = draw.number(2, 5);
    for (std::int64_t p = 0; p < packs; ++p) {
        const auto material = draw.number(0, materials - 1);
        const std::int64_t holds = std::int64_t{1} << draw.number(0, 2); // so that a stone's worth is exact
        Pack made{name('p', p),
                  name('S', draw.number(0, suppliers - 1)),
                  {{name('A', material), Count::of(holds)}},
                  {},
                  std::nullopt};
        if (materials > 1 && draw.once(4))
            made.gives.push_back({name('A', (material + 1) % materials), Count::of(draw.number(1, 3))});
        made.prices.push_back({Count::of(1), draw.whole(1, 4)});
        if (draw.once(4)) made.prices.push_back({Count::of(draw.number(2, 4)), draw.whole(1, 3)});
        if (draw.once(4)) made.atMost = Count::of(draw.number(1, 4));
        problem.packs.push_back(std::move(made));
    }
    return problem;
}

/// Less is better: worth of all stones, negative; suppliers; packs; counts as listed, negative.
using Order = std::tuple<std::int64_t, std::int64_t, std::int64_t, std::vector<std::int64_t>>;

Order orderOf(const PurchaseProblem& problem, const std::vector<std::int64_t>& counts) {
    std::map<std::string, std::int64_t> worth;
    for (const auto& pack : problem.packs) {
        if (pack.gives.size() > 1) continue;
        for (const auto& price : pack.prices) {
            const auto each = price.each.micros() / pack.gives[0].count.value();
            const auto known = worth.emplace(pack.gives[0].material, each).first;
            known->second = std::min(known->second, each);
        }
    }
    Order order;
    std::set<std::string> suppliers;
    for (std::size_t p = 0; p < counts.size(); ++p) {
        std::get<3>(order).push_back(-counts[p]);
        if (counts[p] == 0) continue;
        suppliers.insert(problem.packs[p].supplier);
        std::get<2>(order) += counts[p];
        for (const auto& give : problem.packs[p].gives) {
            const auto each = worth.find(give.material);
            if (each != worth.end()) std::get<0>(order) -= each->second * give.count.value() * counts[p];
        }
    }
    std::get<1>(order) = static_cast<std::int64_t>(suppliers.size());
    return order;
}

class EveryPlan {
  public:
    EveryPlan(const PurchaseProblem& problem, Money cost)
        : m_problem(problem)
        , m_counts(problem.packs.size(), 0) {
        m_plan.cost = cost;
        from(0, cost.micros());
    }
    const std::optional<Order>& best() const { return m_best; }

  private:
    /// All that the money is enough for; nothing is sold below one unit of it.
    void from(std::size_t p, std::int64_t money) {
        if (p == m_counts.size()) {
            if (sp::reference::faultOf(m_plan, m_problem).empty()) {
                auto order = orderOf(m_problem, m_counts);
                if (!m_best || order < *m_best) m_best = std::move(order);
            }
            return;
        }
        const auto& pack = m_problem.packs[p];
        for (std::int64_t count = 0; count <= (pack.atMost ? pack.atMost->value() : money / 1'000'000); ++count) {
            Money each;
            for (const auto& price : pack.prices)
                if (price.from.value() <= count) each = price.each;
            if (each.micros() * count > money) continue;
            m_counts[p] = count;
            if (count > 0) m_plan.packs.push_back({pack.id, pack.supplier, Count::of(count), {}});
            from(p + 1, money - each.micros() * count);
            if (count > 0) m_plan.packs.pop_back();
        }
        m_counts[p] = 0;
    }

    const PurchaseProblem& m_problem;
    std::vector<std::int64_t> m_counts;
    PurchasePlan m_plan;
    std::optional<Order> m_best;
};

TEST(PurchaseTies, areBrokenAsTryingEveryPlanSays) {
    CoarseDraw draw{std::mt19937_64(sp::test::printedSeed())};
    int planned = 0;
    for (int round = 0; round < 500; ++round) {
        const auto problem = drawn(draw);
        const auto answer = planPurchase(problem);
        if (!answer || !answer->plan || answer->plan->cost > money(14)) continue; // dearer ones take long to try out
        ++planned;
        ASSERT_TRUE(answer->plan->proven) << "round " << round;
        std::vector<std::int64_t> counts(problem.packs.size(), 0);
        for (const auto& item : answer->plan->packs)
            counts[static_cast<std::size_t>(std::ranges::find(problem.packs, item.id, &Pack::id) -
                                            problem.packs.begin())] = item.count.value();
        const EveryPlan all(problem, answer->plan->cost);
        ASSERT_TRUE(all.best()) << "round " << round;
        EXPECT_EQ(orderOf(problem, counts), *all.best()) << "round " << round << ": " << bought(answer->plan->packs);
    }
    EXPECT_GE(planned, 150);
}

} // namespace
