// SPDX-License-Identifier: MIT
// How far above the least known mixed rectangles are laid: the published strips and bins of tests/data/rectangles; then
// what a shop lays and sheets without waste, a line a goal. pack_bench [ms a strip] [ms a bin] [problems of a goal]; 0
// ms leave strips or bins out. A step is taken as ten nanoseconds; the processor's time ends it too, and what was used
// is printed beside it.
#include "core/layout/mixed.h"
#include "tests/bench/goals.h"
#include "tests/reference/rectangles_published.h"
#include "tests/reference/rectangles_random.h"
#include "tests/reference/whole_millimetres.h"

#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>

using namespace sp;

namespace {

using bench::processorMilliseconds;

layout::MixedEffort effortOf(double milliseconds) {
    layout::MixedEffort effort;
    effort.steps = static_cast<std::int64_t>(milliseconds * 1e5);
    const double start = processorMilliseconds();
    effort.outOfTime = [start, milliseconds] { return processorMilliseconds() - start > milliseconds; };
    return effort;
}

void strips(double milliseconds) {
    double gap = 0;
    int exact = 0;
    const auto all = reference::publishedStrips();
    const double start = processorMilliseconds();
    for (const auto& strip : all) {
        const double before = processorMilliseconds();
        const auto roll = layout::packRoll(strip.width, strip.pieces, {}, effortOf(milliseconds));
        if (!roll) continue;
        const double here = roll->length.millimetres() / strip.leastLength.millimetres() - 1;
        std::printf("strip %s, %3zu pieces: %.0f of %.0f mm, gap %.2f %%, %.0f ms\n", strip.name.c_str(),
                    strip.pieces.size(), roll->length.millimetres(), strip.leastLength.millimetres(), 100 * here,
                    processorMilliseconds() - before);
        gap += here;
        exact += roll->length == strip.leastLength ? 1 : 0;
    }
    std::printf("strips, all %zu: mean gap %.2f %%, %d exact, %.0f ms each\n", all.size(),
                100 * gap / static_cast<double>(all.size()), exact,
                (processorMilliseconds() - start) / static_cast<double>(all.size()));
}

struct Tally {
    long used = 0, bound = 0, fewest = 0;
    int proven = 0, problems = 0;

    void print(const char* name) const {
        std::printf("bins, %s: %ld used, bound %ld, fewest known %ld (%+.2f %%), %d of %d proven\n", name, used, bound,
                    fewest, 100.0 * static_cast<double>(used - fewest) / static_cast<double>(fewest), proven, problems);
    }
};

void bins(double milliseconds) {
    Tally all;
    const double start = processorMilliseconds();
    Tally kind;
    for (const auto& ten : reference::publishedBins()) {
        Tally here;
        for (const auto& bin : ten.problems) {
            const auto plan = layout::packSheets({{"A", bin.sheet, units::Money::fromMicros(1'000'000), {}}}, bin.laid,
                                                 {}, effortOf(milliseconds));
            if (!plan) continue;
            here.used += static_cast<long>(plan->sheets.size());
            here.bound += static_cast<long>(plan->sheetBound);
            here.proven += plan->proven ? 1 : 0;
            ++here.problems;
        }
        here.fewest = ten.fewest;
        for (Tally* sum : {&kind, &all}) {
            sum->used += here.used;
            sum->bound += here.bound;
            sum->fewest += here.fewest;
            sum->proven += here.proven;
            sum->problems += here.problems;
        }
        if (ten.problems.front().pieces < 100) continue;
        kind.print(("class " + std::to_string(ten.problems.front().kind)).c_str());
        kind = {};
    }
    all.print("all");
    std::printf("%.0f ms each\n", (processorMilliseconds() - start) / all.problems);
}

/// One size of decal, and tags of one or two sizes, as many as a decal each or a few; to 5,000 pieces.
std::vector<layout::MixedPiece> shopLike(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto between = [&random](std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least + 1));
    };
    constexpr std::int64_t kMost[] = {12, 60, 400, 2'000};
    const auto decals = between(2, kMost[seed % 4]);
    std::vector<layout::MixedPiece> pieces{
        {"decal", {reference::millimetres(between(40, 120)), reference::millimetres(between(40, 120))}, decals}};
    for (auto kinds = between(1, 2); kinds > 0; --kinds)
        pieces.push_back({"tag",
                          {reference::millimetres(between(12, 45)), reference::millimetres(between(12, 45))},
                          between(1, 2) == 1 ? decals * 3 / 4 : between(1, 8)});
    for (auto& piece : pieces) piece.id += std::to_string(&piece - pieces.data());
    return pieces;
}

constexpr std::int64_t kPlanSteps = 20'000'000; ///< as the app's sheet plan

void goals(int problems) {
    const layout::Sheet sheet{reference::millimetres(229), reference::millimetres(305)};
    const std::vector<layout::MixedSheet> sheets{{"A", sheet, units::Money::fromMicros(1'000'000), {}}};
    int asked = 0, proven = 0, near = 0;
    for (int i = 0; i < problems; ++i) {
        const layout::FitRules rules{reference::millimetres(i % 3), reference::millimetres(i % 2)};
        const auto plan = layout::packSheets(sheets, shopLike(static_cast<std::uint64_t>(i)), rules, {kPlanSteps, {}});
        if (!plan) continue;
        const auto used = static_cast<std::int64_t>(plan->sheets.size());
        ++asked;
        proven += plan->proven ? 1 : 0;
        near += used <= plan->sheetBound + 1 ? 1 : 0;
        if (!plan->proven)
            std::printf("shop-like %d: %ld sheets, bound %ld\n", i, static_cast<long>(used),
                        static_cast<long>(plan->sheetBound));
    }
    bench::printGoal("shop-like, at most one sheet above the bound", near, asked, 100);
    bench::printGoal("shop-like, proven", proven, asked, 95);
    int solved = 0;
    for (int i = 0; i < problems; ++i) {
        const auto cut =
            reference::cutSheet(229, 305, 12 + static_cast<std::size_t>(i) % 9, static_cast<std::uint64_t>(i) + 1);
        const auto plan = layout::packSheets(sheets, cut.pieces, {}, effortOf(250));
        solved += plan && plan->sheets.size() == 1 ? 1 : 0;
    }
    bench::printGoal("sheets without waste, 12 to 20 pieces, solved in 250 ms", solved, problems, 95);
}

} // namespace

int main(int argc, char** argv) {
    const auto argument = [&](int i, double otherwise) { return argc > i ? std::atof(argv[i]) : otherwise; };
    if (const double strip = argument(1, 50); strip > 0) strips(strip);
    if (const double bin = argument(2, 200); bin > 0) bins(bin);
    goals(static_cast<int>(argument(3, 200)));
}
