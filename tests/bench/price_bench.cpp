// SPDX-License-Identifier: MIT
// Figures to hold against: a 1,000-line quote priced anew in 1 ms.
#include "core/base/freed_memory.h"
#include "core/pricing/price_order.h"
#include "tests/support/sample_shop.h"

#include <benchmark/benchmark.h>

using namespace sp;

namespace {

/// Lines that differ in pieces, stones and size, as a long order does.
catalogue::Order orderOfLines(std::int64_t count) {
    std::vector<catalogue::OrderLine> lines;
    for (std::int64_t i = 0; i < count; ++i) {
        auto line = sample::lantern(1 + i % 60);
        line.first().stones[0].count = units::Count::of(80 + i % 200);
        line.first().width = units::Length::fromInch64ths(128 + 4 * (i % 20));
        lines.push_back(std::move(line));
    }
    return sample::orderOf(std::move(lines));
}

void reprice(benchmark::State& state) {
    base::keepFreedMemory(); // as the app does
    const auto order = orderOfLines(state.range(0));
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    if (!pricing::priceOrder(order, book, fits)) state.SkipWithError("the order has no price");
    for (auto _ : state) benchmark::DoNotOptimize(pricing::priceOrder(order, book, fits));
    state.counters["us_per_line"] =
        benchmark::Counter(static_cast<double>(state.range(0)) / 1e6,
                           benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK(reprice)->Arg(1)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

} // namespace
