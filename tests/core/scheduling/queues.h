// SPDX-License-Identifier: MIT
#pragma once

#include "core/scheduling/bench_plan.h"

#include <algorithm>
#include <numeric>
#include <random>
#include <vector>

// Small queues, and what is true of every order of them. Day 0 is Monday, 7 December 2026.
namespace sp::scheduling::queues {

using units::Date;
using units::Duration;

inline Date monday() { return *Date::parse("2026-12-07"); }
inline Date day(std::int64_t number) { return monday().plusDays(number); }
inline Duration minutes(std::int64_t number) { return Duration::fromMinutes(number); }

inline BenchHours hoursOf(std::int64_t everyWeekday) {
    BenchHours hours;
    hours.week.monday = hours.week.tuesday = hours.week.wednesday = hours.week.thursday = hours.week.friday =
        minutes(everyWeekday);
    return hours;
}

inline BenchJob job(std::int64_t work, std::int64_t due, std::int64_t earliest = 0) {
    return {minutes(work), day(due), day(earliest)};
}

/// The days on which jobs in that order are done, worked out minute by minute in the plainest way.
inline std::vector<std::int64_t> doneByMinutes(const std::vector<BenchJob>& jobs, const BenchHours& hours) {
    std::vector<std::int64_t> left;
    std::vector<std::int64_t> done(jobs.size(), -1);
    for (const auto& one : jobs) left.push_back(one.work.milliseconds() / 60'000);
    for (std::int64_t today = 0; today < 400; ++today)
        for (auto minute = hours.on(day(today)).milliseconds() / 60'000; minute > 0; --minute)
            for (std::size_t i = 0; i < jobs.size(); ++i) {
                if (left[i] == 0 || (jobs[i].earliest && *jobs[i].earliest > day(today))) continue;
                if (--left[i] == 0) done[i] = today;
                break;
            }
    return done;
}

inline std::vector<BenchJob> inOrder(const std::vector<BenchJob>& jobs, const std::vector<std::size_t>& order) {
    std::vector<BenchJob> sorted;
    for (const auto place : order) sorted.push_back(jobs[place]);
    return sorted;
}

/// The places of the jobs by the day they are due, those without one last, of equals the first first.
inline std::vector<std::size_t> byDueDay(const std::vector<BenchJob>& jobs) {
    std::vector<std::size_t> order(jobs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        return jobs[a].due && (!jobs[b].due || *jobs[a].due < *jobs[b].due);
    });
    return order;
}

/// The largest lateness in days; below zero where all are early.
inline std::int64_t largestLateness(const std::vector<BenchJob>& jobs, const std::vector<std::int64_t>& done) {
    auto worst = std::numeric_limits<std::int64_t>::min();
    for (std::size_t i = 0; i < jobs.size(); ++i) worst = std::max(worst, jobs[i].due->daysUntil(day(done[i])));
    return worst;
}

/// Calls `visit` with every order of so many jobs.
template<class Visit>
void forEveryOrder(std::size_t count, const Visit& visit) {
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    do visit(order);
    while (std::ranges::next_permutation(order).found);
}

/// One to `most` jobs; some wait where `waits`.
inline std::vector<BenchJob> someJobs(std::mt19937_64& random, int most, bool waits) {
    const auto upTo = [&](int last) { return std::uniform_int_distribution<std::int64_t>(0, last)(random); };
    std::vector<BenchJob> jobs;
    for (auto left = 1 + upTo(most - 1); left > 0; --left) {
        jobs.push_back(job(1 + upTo(25), upTo(12) - 1));
        if (waits && upTo(1) == 1) jobs.back().earliest = day(upTo(6));
    }
    return jobs;
}

/// A week of few minutes, with a day or two off now and then.
inline BenchHours someHours(std::mt19937_64& random) {
    const auto upTo = [&](int last) { return std::uniform_int_distribution<std::int64_t>(0, last)(random); };
    auto hours = hoursOf(4 + upTo(12));
    hours.week.wednesday = minutes(upTo(10));
    hours.week.saturday = minutes(upTo(6));
    if (upTo(2) == 0) hours.closed.push_back({day(upTo(5)), day(5 + upTo(2)), {}});
    return hours;
}

} // namespace sp::scheduling::queues
