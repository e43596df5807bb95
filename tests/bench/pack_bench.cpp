// SPDX-License-Identifier: MIT
// How far above the least known mixed rectangles are laid: the published strips and bins of tests/data/rectangles.
// pack_bench [ms a strip] [ms a bin]. A step is taken as ten nanoseconds; the processor's time ends it too, and what
// was used is printed beside it.
#include "core/layout/mixed.h"
#include "tests/reference/rectangles_published.h"

#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>

using namespace sp;

namespace {

double processorMilliseconds() { return 1e3 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

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

} // namespace

int main(int argc, char** argv) {
    strips(argc > 1 ? std::atof(argv[1]) : 50);
    bins(argc > 2 ? std::atof(argv[2]) : 200);
}
