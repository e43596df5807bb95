// SPDX-License-Identifier: MIT
//
// Plans of the bench: some by hand, many against a minute-by-minute account and against every order there is.
#include "core/scheduling/bench_plan.h"

#include "core/scheduling/messages.h"
#include "tests/core/scheduling/queues.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

namespace sp::scheduling {

namespace {

using namespace queues;

std::vector<std::int64_t> daysOf(const BenchPlan& plan) {
    std::vector<std::int64_t> days;
    for (const auto& ready : plan.ready) days.push_back(ready ? monday().daysUntil(*ready) : -1);
    return days;
}

// By hand: 150 minutes a weekday. 140 of the first leave 10 of Monday to the second, which has 20 on Tuesday; 130 of
// the third on Tuesday, 75 on Wednesday.
TEST(BenchPlan, fillsOneDayAfterTheOther) {
    const std::vector jobs{job(140, 1), job(30, 1), job(205, 4)};
    const auto plan = planOf(jobs, hoursOf(150), monday());
    ASSERT_TRUE(plan);
    EXPECT_EQ(daysOf(*plan), (std::vector<std::int64_t>{0, 1, 2}));
    const std::vector<PlannedDay> days{{day(0), minutes(150), false, {{0, minutes(140)}, {1, minutes(10)}}},
                                       {day(1), minutes(150), false, {{1, minutes(20)}, {2, minutes(130)}}},
                                       {day(2), minutes(150), false, {{2, minutes(75)}}}};
    EXPECT_EQ(plan->days, days);
    EXPECT_EQ(plan->days[2].taken(), minutes(75));
}

// By hand: what waits until Wednesday lets the next one go first, which is put aside for it and ends on Thursday.
TEST(BenchPlan, putsAWaitingJobInItsPlaceOnTheMorningItCanBegin) {
    const std::vector jobs{job(60, 3, 2), job(290, 9)};
    const auto plan = planOf(jobs, hoursOf(100), monday());
    ASSERT_TRUE(plan);
    EXPECT_EQ(daysOf(*plan), (std::vector<std::int64_t>{2, 3}));
    EXPECT_EQ(plan->days[2].work, (std::vector<DayWork>{{0, minutes(60)}, {1, minutes(40)}}));
}

// Friday has 40 minutes left of 100, the weekend and a closed Monday none; spans may overlap, and end before today.
TEST(BenchPlan, passesOverClosedDays) {
    auto hours = hoursOf(100);
    hours.closed = {{day(7), day(7), "stock taking"}, {day(6), day(7), {}}, {day(-30), day(-1), {}}};
    const std::vector jobs{job(560, 8)};
    const auto plan = planOf(jobs, hours, monday());
    ASSERT_TRUE(plan);
    EXPECT_EQ(daysOf(*plan), (std::vector<std::int64_t>{8}));
    EXPECT_TRUE(plan->days[7].isClosed);
    EXPECT_FALSE(plan->days[5].isClosed) << "a day without hours is not closed";
    EXPECT_EQ(hours.on(day(7)), Duration{});
}

TEST(BenchPlan, hasNothingToDoForAJobWithoutWork) {
    const std::vector jobs{job(0, 0, 5), BenchJob{}, BenchJob{minutes(-5)}};
    const auto plan = planOf(jobs, {}, monday());
    ASSERT_TRUE(plan) << "no bench time is asked of them";
    EXPECT_EQ(daysOf(*plan), (std::vector<std::int64_t>{5, 0, 0}));
    EXPECT_TRUE(plan->days.empty());
    EXPECT_TRUE(planOf({}, {}, monday()));
}

TEST(BenchPlan, saysWhereThereIsNoTimeAtAll) {
    const std::vector jobs{job(1, 0)};
    EXPECT_EQ(test::described(planOf(jobs, {}, monday()).error()), "NoBenchTime");
    auto closed = hoursOf(100);
    closed.closed = {{day(0), day(364), "a year off"}};
    EXPECT_EQ(daysOf(*planOf(jobs, closed, monday())), (std::vector<std::int64_t>{365})); // a Tuesday
    closed.closed = {{day(-10), day(10'000), "for good"}};
    EXPECT_EQ(daysOf(*planOf(jobs, closed, monday())), (std::vector<std::int64_t>{-1}));
    EXPECT_TRUE(isLate(jobs[0], std::nullopt));
    const std::vector waits{job(1, 0, kHorizonDays)};
    EXPECT_EQ(daysOf(*planOf(waits, hoursOf(100), monday())), (std::vector<std::int64_t>{-1}));
}

TEST(BenchPlan, endsWhereAQueueIsLongerThanTheHorizon) {
    const std::vector<BenchJob> jobs(20'000, job(60, 3));
    const auto plan = planOf(jobs, hoursOf(60), monday());
    ASSERT_TRUE(plan);
    EXPECT_EQ(std::ranges::count_if(plan->ready, [](const auto& ready) { return ready.has_value(); }),
              784); // Mondays to Fridays of 156 weeks and four days
    EXPECT_LE(plan->days.size(), static_cast<std::size_t>(kHorizonDays));
}

TEST(BenchPlan, isWhatTheMinutesComeTo) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 300; ++round) {
        const auto jobs = someJobs(random, 6, true);
        const auto hours = someHours(random);
        const auto plan = planOf(jobs, hours, monday());
        ASSERT_TRUE(plan);
        EXPECT_EQ(daysOf(*plan), doneByMinutes(jobs, hours));
        std::vector<Duration> done(jobs.size());
        for (const auto& one : plan->days) {
            EXPECT_LE(one.taken(), one.time);
            EXPECT_EQ(one.time, hours.on(one.day));
            for (const auto& work : one.work) done[work.job] += work.time;
        }
        for (std::size_t i = 0; i < jobs.size(); ++i) EXPECT_EQ(done[i], jobs[i].work);
    }
}

// Jackson 1955 without jobs that wait, Horn 1974 with them, over every order there is of up to five jobs.
TEST(ByDueDay, hasTheSmallestLargestLateness) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 60; ++round) {
        const auto jobs = someJobs(random, 5, round % 2 == 1);
        const auto hours = someHours(random);
        const auto sorted = inOrder(jobs, byDueDay(jobs));
        const auto least = largestLateness(sorted, daysOf(*planOf(sorted, hours, monday())));
        forEveryOrder(jobs.size(), [&](const auto& order) {
            const auto other = inOrder(jobs, order);
            EXPECT_LE(least, largestLateness(other, doneByMinutes(other, hours)));
        });
    }
}

// What is not claimed: 30 minutes due on Monday and 100 due on Tuesday, both late by due day with 10 more before them;
// with the large one last, one of three is late.
TEST(ByDueDay, doesNotMakeTheFewestLate) {
    const std::vector sorted{job(150, 0), job(50, 1), job(50, 1)};
    const auto hours = hoursOf(100);
    const auto late = [&](const std::vector<BenchJob>& jobs) {
        const auto plan = planOf(jobs, hours, monday());
        int count = 0;
        for (std::size_t i = 0; i < jobs.size(); ++i) count += isLate(jobs[i], plan->ready[i]) ? 1 : 0;
        return count;
    };
    EXPECT_EQ(late(sorted), 2);
    EXPECT_EQ(late({sorted[1], sorted[2], sorted[0]}), 1);
}

} // namespace

} // namespace sp::scheduling
