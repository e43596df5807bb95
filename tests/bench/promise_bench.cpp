// SPDX-License-Identifier: MIT
// Figures to hold against: a promise, and the plan of all days, at 500 open jobs within a frame, 16 ms.
#include "core/scheduling/bench_plan.h"

#include <benchmark/benchmark.h>

using namespace sp;

namespace {

const auto kToday = units::Date::parse("2026-12-07").value();

scheduling::BenchHours busyHours() {
    scheduling::BenchHours hours;
    hours.week.monday = hours.week.thursday = units::Duration::fromMinutes(180);
    hours.week.saturday = units::Duration::fromMinutes(90);
    for (std::int64_t week = 0; week < 150; week += 9)
        hours.closed.push_back({kToday.plusDays(7 * week), kToday.plusDays(7 * week + 5), {}});
    return hours;
}

/// By the day they are due; one in three waits.
std::vector<scheduling::BenchJob> jobsOf(std::int64_t count) {
    std::vector<scheduling::BenchJob> jobs;
    for (std::int64_t i = 0; i < count; ++i) {
        jobs.push_back({units::Duration::fromMinutes(20 + i * 37 % 200), kToday.plusDays(i * 2), {}});
        if (i % 3 == 0) jobs.back().earliest = kToday.plusDays(i * 2 % 40);
    }
    return jobs;
}

void promise(benchmark::State& state) {
    const auto jobs = jobsOf(state.range(0));
    const auto bench = busyHours();
    // Wanted on a day that does not hold: the longest answer.
    const scheduling::AskedJob asked{units::Duration::fromMinutes(240), kToday.plusDays(2), {}, {}};
    for (auto _ : state) benchmark::DoNotOptimize(scheduling::promiseOf(jobs, asked, bench, kToday));
}
BENCHMARK(promise)->Arg(10)->Arg(500)->Arg(5000)->Unit(benchmark::kMicrosecond);

void plan(benchmark::State& state) {
    const auto jobs = jobsOf(state.range(0));
    const auto bench = busyHours();
    for (auto _ : state) benchmark::DoNotOptimize(scheduling::planOf(jobs, bench, kToday));
}
BENCHMARK(plan)->Arg(10)->Arg(500)->Arg(5000)->Unit(benchmark::kMicrosecond);

} // namespace
