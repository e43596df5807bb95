// SPDX-License-Identifier: MIT
// How far above the bound mixed rectangles are laid: strips whose best length is known by construction (a sheet cut at
// random into parts), and bins by the published distributions. pack_bench [problems of each] [ms a strip] [ms a bin]. A
// step is taken as ten nanoseconds; the processor's time ends it too, and what was used is printed beside it.
#include "core/layout/mixed.h"
#include "tests/reference/rectangles_random.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>

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

void strips(int problems, double milliseconds) {
    double sum = 0;
    struct Class { ///< width, best height and number of parts as E. Hopper and B. Turton (2001) chose them
        std::int64_t width, height;
        std::size_t parts;
    };
    for (const auto& [width, height, parts] :
         {Class{20, 20, 17}, Class{40, 15, 25}, Class{60, 30, 29}, Class{60, 60, 49}, Class{60, 90, 73},
          Class{80, 120, 97}, Class{160, 240, 197}}) {
        double gap = 0;
        int exact = 0;
        const double start = processorMilliseconds();
        for (int seed = 1; seed <= problems; ++seed) {
            const auto cut = reference::cutSheet(width, height, parts, static_cast<std::uint64_t>(seed));
            const auto roll = layout::packRoll(cut.width, cut.pieces, {}, effortOf(milliseconds));
            if (!roll) continue;
            gap += roll->length.millimetres() / cut.height.millimetres() - 1;
            exact += roll->length == cut.height ? 1 : 0;
        }
        std::printf("strip, %3zu parts: mean gap %.2f %%, %d of %d exact, %.0f ms each\n", parts, 100 * gap / problems,
                    exact, problems, (processorMilliseconds() - start) / problems);
        sum += gap / problems;
    }
    std::printf("strips, all %d: mean gap %.2f %%\n", 7 * problems, 100 * sum / 7);
}

void bins(int problems, double milliseconds) {
    long used = 0;
    long bound = 0;
    int all = 0;
    const double start = processorMilliseconds();
    for (int kind = 1; kind <= 10; ++kind) {
        long usedHere = 0;
        long boundHere = 0;
        int proven = 0;
        int count = 0;
        for (const std::size_t pieces : {20U, 40U, 60U, 80U, 100U})
            for (int seed = 1; seed <= problems; ++seed) {
                const auto bin = reference::publishedBin(kind, pieces, static_cast<std::uint64_t>(seed));
                const auto plan = layout::packSheets({{"A", bin.sheet, units::Money::fromMicros(1'000'000), {}}},
                                                     bin.pieces, {}, effortOf(milliseconds));
                if (!plan) continue;
                usedHere += static_cast<long>(plan->sheets.size());
                boundHere += static_cast<long>(plan->sheetBound);
                proven += plan->proven ? 1 : 0;
                ++count;
            }
        std::printf("bins, class %2d: %ld used, bound %ld (%.2f %%), %d of %d proven\n", kind, usedHere, boundHere,
                    100.0 * static_cast<double>(usedHere - boundHere) / static_cast<double>(boundHere), proven, count);
        used += usedHere;
        bound += boundHere;
        all += count;
    }
    std::printf("bins, all %d: %ld used, bound %ld (%.2f %%), %.0f ms each\n", all, used, bound,
                100.0 * static_cast<double>(used - bound) / static_cast<double>(bound),
                (processorMilliseconds() - start) / all);
}

} // namespace

int main(int argc, char** argv) {
    const int problems = argc > 1 ? std::atoi(argv[1]) : 3;
    strips(problems, argc > 2 ? std::atof(argv[2]) : 50);
    bins(problems, argc > 3 ? std::atof(argv[3]) : 200);
}
