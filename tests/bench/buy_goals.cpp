// SPDX-License-Identifier: MIT
// What purchases are to be answered like, and whether they are: buy_goals [shop-like problems] [adversarial ones] [with
// CBC: 0 or 1]. A line a goal, with the solver that the app calls and without it. Times are of the processor, of ours
// and of the solver's process together, so that other work on the machine does not change them much.
#include "app/async/solver.h"
#include "core/supply/purchase.h"
#include "core/supply/purchase_program.h"
#include "tests/bench/goals.h"
#include "tests/reference/purchase_check.h"
#include "tests/reference/purchase_random.h"

#include <algorithm>
#include <cstdlib>
#include <random>
#include <vector>

using namespace sp;

namespace {

constexpr int kSoon = 2;  ///< seconds for the solver
constexpr int kLate = 10; ///< the same when it may take its time

/// To 8 materials, 3 suppliers, 4 packs of a material each, 2 kits; breaks, minimums, free shipping.
supply::PurchaseProblem shopLike(std::uint64_t seed) {
    std::mt19937_64 draw(seed);
    reference::PurchaseShape shape;
    shape.materials = static_cast<int>(1 + draw() % 8);
    shape.suppliers = static_cast<int>(1 + draw() % 3);
    shape.packSizes = static_cast<int>(1 + draw() % 4);
    shape.kits = static_cast<int>(draw() % 3);
    shape.offered = 0.9;
    return reference::randomPurchase(shape, seed);
}

/// To 12 materials, many kits over the same ones, limits, prices that rise, minimums above what is needed.
supply::PurchaseProblem adversarial(std::uint64_t seed) {
    std::mt19937_64 draw(seed);
    reference::PurchaseShape shape;
    shape.materials = static_cast<int>(2 + draw() % 11);
    shape.suppliers = static_cast<int>(1 + draw() % 4);
    shape.packSizes = static_cast<int>(2 + draw() % 3);
    shape.kits = static_cast<int>(3 + draw() % 6);
    shape.wild = true;
    auto problem = reference::randomPurchase(shape, seed);
    for (auto& supplier : problem.suppliers)
        if (draw() % 2 == 0)
            supplier.minimum = units::Money::fromMicros(static_cast<std::int64_t>(60 + draw() % 120) * 1'000'000);
    return problem;
}

struct Tally {
    int asked = 0, proven = 0, provenFast = 0, near = 0, wrong = 0;
    std::vector<double> times;

    double quantile(double q) {
        if (times.empty()) return 0;
        std::sort(times.begin(), times.end());
        return times[static_cast<std::size_t>(q * static_cast<double>(times.size() - 1))];
    }
};

using Plan = std::optional<supply::PurchasePlan>;

bool hasProof(const Plan& plan) { return !plan || plan->proven; }

/// The plan as the solver leaves it after so many seconds.
Plan asked(const supply::PurchaseProblem& problem, Plan plan, int seconds) {
    if (hasProof(plan)) return plan;
    const auto programme = supply::purchaseProgram(problem);
    if (!programme) return plan;
    const auto solution = async::solved(*programme, seconds, [] { return false; });
    if (solution) supply::takeSolution(problem, *solution, *plan);
    return plan;
}

struct Timed {
    Plan plan;
    double milliseconds = 0;
};

template<class Ask>
Timed timed(Ask ask) {
    const double own = bench::processorMilliseconds();
    const double theirs = bench::childrensMilliseconds();
    Timed made;
    made.plan = ask();
    made.milliseconds = bench::processorMilliseconds() - own + bench::childrensMilliseconds() - theirs;
    return made;
}

/// `late` also asks the solver for as long as it may take, and holds the plan against that.
Tally answered(supply::PurchaseProblem (*make)(std::uint64_t), int problems, bool withSolver, bool late) {
    Tally tally;
    for (int seed = 1; seed <= problems; ++seed) {
        const auto problem = make(static_cast<std::uint64_t>(seed));
        const auto answer = supply::planPurchase(problem);
        if (!answer || !answer->plan) continue; // nothing covers it, which is an answer
        ++tally.asked;
        const auto soon = timed([&] {
            const auto again = supply::planPurchase(problem);
            return withSolver ? asked(problem, again->plan, kSoon) : again->plan;
        });
        tally.times.push_back(soon.milliseconds);
        const auto best = withSolver && late ? asked(problem, soon.plan, kLate) : soon.plan;
        if (!reference::faultOf(*best, problem).empty() || !reference::faultOf(*soon.plan, problem).empty()) {
            std::printf("seed %d: the plan does not add up\n", seed);
            ++tally.wrong;
        }
        const bool isProven = late ? best->proven : soon.plan->proven && soon.milliseconds <= 1e3 * kSoon;
        tally.proven += isProven ? 1 : 0;
        tally.provenFast += soon.plan->proven && soon.milliseconds <= 250 ? 1 : 0;
        const auto least = best->proven ? best->cost : best->bound;
        const bool isNear = soon.plan->cost.micros() <= least.micros() + least.micros() / 100;
        tally.near += isNear ? 1 : 0;
        if (!isNear)
            std::printf("seed %d: %.2f, at least %.2f\n", seed, static_cast<double>(soon.plan->cost.micros()) / 1e6,
                        static_cast<double>(least.micros()) / 1e6);
    }
    return tally;
}

int goals(int shops, int hard, bool withSolver) {
    std::printf("%s\n", withSolver ? "with the solver" : "without a solver");
    auto tally = answered(shopLike, shops, withSolver, false);
    bench::printGoal("shop-like, proven within 2 s", tally.proven, tally.asked, 99);
    bench::printGoal("shop-like, proven within 250 ms", tally.provenFast, tally.asked, 95);
    std::printf("  median %.1f ms, p95 %.0f ms, most %.0f ms\n", tally.quantile(0.5), tally.quantile(0.95),
                tally.quantile(1));
    int wrong = tally.wrong;
    tally = answered(adversarial, hard, withSolver, true);
    bench::printGoal("adversarial, at most 1 % dearer after 2 s", tally.near, tally.asked, 100);
    bench::printGoal("adversarial, proven within 10 s", tally.proven, tally.asked, 90);
    std::printf("  median %.1f ms, p95 %.0f ms, most %.0f ms\n", tally.quantile(0.5), tally.quantile(0.95),
                tally.quantile(1));
    return wrong + tally.wrong;
}

} // namespace

int main(int argc, char** argv) {
    std::setvbuf(stdout, nullptr, _IOLBF, 0);
    const auto argument = [&](int i, int otherwise) { return argc > i ? std::atoi(argv[i]) : otherwise; };
    const int shops = argument(1, 1'000);
    const int hard = argument(2, 500);
    int wrong = 0;
    if (argument(3, 1) != 0 && async::hasSolver()) wrong += goals(shops, hard, true);
    wrong += goals(shops, hard, false);
    return wrong == 0 ? 0 : 1;
}
