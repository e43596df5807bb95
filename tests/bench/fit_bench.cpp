// SPDX-License-Identifier: MIT
#include "core/layout/roll.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <ctime>
#include <random>
#include <vector>

// Figures to hold against: 9 x 12 in median <= 0.05 ms, none over 20 ms; long rolls < 130 ms (CPU time).

using namespace sp::layout;
using sp::units::Length;

namespace {

Length tenths(std::int64_t n) { return Length::fromMicrometres(n * 100); }

double cpuMilliseconds() { return static_cast<double>(std::clock()) * 1000.0 / CLOCKS_PER_SEC; }

struct Asked {
    Piece piece;
    FitRules rules;
};

/// Pieces of 15 to 150 mm by the tenth, margin and gap 0 to 6 mm; the seed is fixed.
std::vector<Asked> shopPieces(std::size_t count) {
    std::mt19937_64 random(20261125);
    const auto between = [&random](std::int64_t least, std::int64_t most) {
        return tenths(least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least + 1)));
    };
    std::vector<Asked> asked;
    for (std::size_t k = 0; k < count; ++k) {
        asked.push_back({{between(150, 1500), between(150, 1500)}, {between(0, 60), between(0, 60)}});
    }
    return asked;
}

/// Median and worst CPU time of one question, and how many answers are proven.
void shopSheet(benchmark::State& state) {
    const Sheet sheet{tenths(state.range(0)), tenths(state.range(1))};
    const auto asked = shopPieces(static_cast<std::size_t>(state.range(2)));
    std::vector<double> times;
    int proven = 0;
    for (auto _ : state) {
        times.clear();
        proven = 0;
        for (const auto& [piece, rules] : asked) {
            const double begin = cpuMilliseconds();
            const auto fit = fitSheet(sheet, piece, rules);
            times.push_back(cpuMilliseconds() - begin);
            proven += fit && fit->proven ? 1 : 0;
        }
    }
    std::sort(times.begin(), times.end());
    state.counters["median_ms"] = times[times.size() / 2];
    state.counters["worst_ms"] = times.back();
    state.counters["over_20_ms"] =
        static_cast<double>(times.end() - std::upper_bound(times.begin(), times.end(), 20.0));
    state.counters["proven"] = proven;
    state.counters["asked"] = static_cast<double>(times.size());
}
BENCHMARK(shopSheet)
    ->ArgNames({"w", "h", "n"})
    ->Args({2286, 3048, 10'000})
    ->Args({3048, 3048, 300})
    ->Args({3048, 30480, 40})
    ->Args({3810, 91440, 40})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

/// The quadruples that the five-block recursion alone does not settle.
void hardSheet(benchmark::State& state) {
    const Sheet sheet{tenths(state.range(0)), tenths(state.range(1))};
    const Piece piece{tenths(state.range(2)), tenths(state.range(3))};
    for (auto _ : state) {
        const auto fit = fitSheet(sheet, piece, {});
        if (!fit) return state.SkipWithError("refused");
        state.counters["count"] = static_cast<double>(fit->count);
        state.counters["bound"] = static_cast<double>(fit->bound);
    }
}
BENCHMARK(hardSheet)
    ->Args({43, 26, 7, 3})
    ->Args({49, 28, 8, 3})
    ->Args({74, 49, 11, 4})
    ->Args({93, 46, 13, 4})
    ->Args({106, 59, 13, 5})
    ->Args({141, 71, 13, 8})
    ->Args({74, 46, 7, 5})
    ->Args({86, 52, 9, 5})
    ->Args({108, 65, 10, 7})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

void rollNeed(benchmark::State& state) {
    for (auto _ : state) {
        const auto need =
            lengthForPieces(tenths(3048), {tenths(173), tenths(119)}, {tenths(30), tenths(20)}, state.range(0));
        if (!need) return state.SkipWithError("refused");
        state.counters["over_bound"] =
            static_cast<double>(need->length.nanometres()) / static_cast<double>(need->bound.nanometres());
    }
}
BENCHMARK(rollNeed)->Arg(10)->Arg(100)->Arg(1000)->Arg(6800)->Arg(1'000'000)->Unit(benchmark::kMillisecond);

} // namespace
