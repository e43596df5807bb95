// SPDX-License-Identifier: MIT
// The planner and the solver CBC side by side on made-up problems: buy_bench [problems] [first seed] [materials]
// [suppliers] [pack sizes] [kits] [with CBC: 0 or 1]. Prints medians, the share proven within 250 ms and every
// disagreement; ends with 1 when there is one. Our budget is counted in steps, so that other work on the machine does
// not shorten it; of both sides the processor time is taken, of CBC that of its process beside the wall time.
#include "app/words/words.h"
#include "tests/reference/cbc_purchase.h"
#include "tests/reference/purchase_check.h"
#include "tests/reference/purchase_random.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>

using Clock = std::chrono::steady_clock;

namespace {

double quantile(std::vector<double> values, double q) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(q * static_cast<double>(values.size() - 1))];
}

double seconds(Clock::time_point since) { return std::chrono::duration<double>(Clock::now() - since).count(); }

double processorSeconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

} // namespace

int main(int argc, char** argv) {
    const auto argument = [&](int i, int otherwise) { return argc > i ? std::atoi(argv[i]) : otherwise; };
    const int problems = argument(1, 50);
    const int first = argument(2, 1);
    sp::reference::PurchaseShape shape;
    shape.materials = argument(3, 10);
    shape.suppliers = argument(4, 3);
    shape.packSizes = argument(5, 6);
    shape.kits = argument(6, 3);
    const bool withCbc = argument(7, 1) != 0 && sp::reference::hasCbc();
    const std::string folder = std::filesystem::temp_directory_path() / "buy_bench";
    std::filesystem::create_directories(folder);

    std::vector<double> own;
    std::vector<double> ownWall;
    std::vector<double> theirs;
    std::vector<double> theirsWall;
    int proven = 0;
    int wrong = 0;
    int unanswered = 0;
    int lost = 0;
    int packs = 0;
    for (int seed = first; seed < first + problems; ++seed) {
        const auto problem = sp::reference::randomPurchase(shape, static_cast<std::uint64_t>(seed));
        packs += static_cast<int>(problem.packs.size());
        const auto start = Clock::now();
        const double spent = processorSeconds();
        const auto answer = sp::supply::planPurchase(problem);
        own.push_back(processorSeconds() - spent);
        ownWall.push_back(seconds(start));
        if (!answer) {
            std::printf("seed %d: %s\n", seed, sp::words::text(answer.error()).c_str());
            ++wrong;
            continue;
        }
        const double cost = answer->plan ? static_cast<double>(answer->plan->cost.micros()) / 1e6 : -1;
        const double bound = answer->plan ? static_cast<double>(answer->plan->bound.micros()) / 1e6 : -1;
        if (!answer->plan || answer->plan->proven)
            ++proven;
        else
            std::printf("seed %d: unproven, cost %.2f bound %.2f\n", seed, cost, bound);
        if (!withCbc) continue;
        const auto reference = sp::reference::solveWithCbc(problem, folder);
        if (!reference.isAnswered) {
            ++unanswered;
            continue;
        }
        theirs.push_back(reference.processorSeconds);
        theirsWall.push_back(reference.seconds);
        double best = reference.cost.value_or(-1);
        if (answer->plan && cost < best - 0.005) {
            // A plan that adds up and costs less than CBC's best: CBC asked once more, without its preprocessing.
            const auto fault = sp::reference::faultOf(*answer->plan, problem);
            if (!fault.empty()) std::printf("seed %d: the plan is wrong: %s\n", seed, fault.c_str());
            const auto plainly = sp::reference::solveWithCbc(problem, folder, true);
            std::printf("seed %d: own %.2f, CBC %.2f, without its preprocessing %.2f\n", seed, cost, best,
                        plainly.cost.value_or(-1));
            if (fault.empty() && plainly.cost) {
                best = *plainly.cost;
                ++lost;
            }
        }
        const bool agrees = !answer->plan ? !reference.cost
                                          : reference.cost && bound < best + 0.005 && cost > best - 0.005 &&
                                                (!answer->plan->proven || std::abs(cost - best) < 0.005);
        if (!agrees) {
            ++wrong;
            std::printf("seed %d: own %.2f (bound %.2f), CBC %.2f\n", seed, cost, bound, best);
        } else if (!answer->plan->proven) {
            std::printf("   CBC %.2f\n", best);
        }
    }
    std::printf("%d problems, %.0f packs each: proven %.1f %%, wrong %d\n", problems,
                static_cast<double>(packs) / problems, 100.0 * proven / problems, wrong);
    const auto report = [](const char* who, const std::vector<double>& processor, const std::vector<double>& wall) {
        std::printf("%s: processor median %.2f ms, p95 %.1f ms, max %.1f ms; wall median %.2f ms, p95 %.1f ms\n", who,
                    1e3 * quantile(processor, 0.5), 1e3 * quantile(processor, 0.95), 1e3 * quantile(processor, 1),
                    1e3 * quantile(wall, 0.5), 1e3 * quantile(wall, 0.95));
    };
    report("own", own, ownWall);
    if (withCbc) {
        report("CBC", theirs, theirsWall);
        std::printf(
            "CBC gave no answer to %d of them (a fault of its own, or a minute passed); in %d its preprocessing "
            "lost the cheapest plan\n",
            unanswered, lost);
        std::printf("ratio of medians: processor %.1f, wall %.1f\n", quantile(theirs, 0.5) / quantile(own, 0.5),
                    quantile(theirsWall, 0.5) / quantile(ownWall, 0.5));
    }
    return wrong == 0 ? 0 : 1;
}
