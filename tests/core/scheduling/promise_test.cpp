// SPDX-License-Identifier: MIT
//
// What can be promised of a new job: by hand, and against every day of small queues.
#include "core/scheduling/bench_plan.h"
#include "core/scheduling/messages.h"
#include "tests/core/scheduling/queues.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace sp::scheduling {

namespace {

using namespace queues;

AskedJob asked(std::int64_t work, std::optional<std::int64_t> due, std::int64_t earliest = 0, std::size_t jobs = 0) {
    AskedJob wanted{minutes(work), due ? std::optional(day(*due)) : std::nullopt, {}, {}};
    if (earliest > 0) wanted.earliest.assign(jobs + 1, day(earliest));
    return wanted;
}

// By hand, 100 minutes a day: 150 due on Tuesday and 100 due on Friday. 50 for Thursday go between them and end on
// Tuesday; the second still ends on Wednesday. 50 for Tuesday stand behind the first and end on Tuesday as well. 60
// would end on Wednesday: that is the first day.
TEST(Promise, goesWhereItsDayPutsIt) {
    const std::vector jobs{job(150, 1), job(100, 4)};
    EXPECT_EQ(*promiseOf(jobs, asked(50, 3), hoursOf(100), monday()), (Promise{day(1), true, {}}));
    EXPECT_EQ(*promiseOf(jobs, asked(50, 1), hoursOf(100), monday()), (Promise{day(1), true, {}}));
    EXPECT_EQ(*promiseOf(jobs, asked(60, 1), hoursOf(100), monday()), (Promise{day(2), false, {}}));
    EXPECT_EQ(*promiseOf(jobs, asked(60, {}), hoursOf(100), monday()), (Promise{day(2), false, {}})) << "to put in";
}

// By hand: the job of Tuesday has no time to spare, so what is wanted before it makes it late, and what is wanted for
// its day stands behind it.
TEST(Promise, namesWhoWouldPayForAnEarlierDay) {
    const std::vector jobs{job(200, 1), job(100, 2), job(100, 6)};
    EXPECT_EQ(*promiseOf(jobs, asked(100, 0), hoursOf(100), monday()),
              (Promise{day(3), false, {{0, day(2)}, {1, day(3)}}}));
    EXPECT_EQ(*promiseOf(jobs, asked(100, 2), hoursOf(100), monday()), (Promise{day(3), false, {}}));
}

// By hand: 900 minutes take nine days, so that 50 before them leave the tenth free; 850 and 150 take ten together, but
// no Saturday. Where the shelf is bare behind another job, it holds only before it.
TEST(Promise, mayHoldForADayBefore) {
    const std::vector jobs{job(900, 11)};
    EXPECT_EQ(*promiseOf(jobs, asked(100, 11), hoursOf(100), monday()), (Promise{day(11), true, {}}));
    EXPECT_EQ(*promiseOf(jobs, asked(50, 10), hoursOf(100), monday()), (Promise{day(0), true, {}}));
    const std::vector tight{job(850, 10)};
    EXPECT_EQ(*promiseOf(tight, asked(150, 10), hoursOf(100), monday()), (Promise{day(11), false, {}}));
    EXPECT_EQ(*promiseOf(tight, asked(50, 10), hoursOf(100), monday()), (Promise{day(10), true, {}}));
    const std::vector waiting{BenchJob{minutes(300), day(4), day(2)}};
    auto late = asked(100, 4);
    late.earliest = {std::nullopt, day(7)}; // behind it the shelf is bare
    EXPECT_EQ(*promiseOf(waiting, late, hoursOf(100), monday()), (Promise{day(0), false, {}}));
}

TEST(Promise, isKeptByNoDayThatIsPast) {
    EXPECT_EQ(*promiseOf({}, asked(250, 1), hoursOf(100), monday()), (Promise{day(2), false, {}}));
    EXPECT_EQ(*promiseOf({}, asked(10, -3), hoursOf(100), monday()), (Promise{day(0), false, {}}));
}

TEST(Promise, waitsForWhatTheJobWaitsFor) {
    EXPECT_EQ(*promiseOf({}, asked(10, 9, 5), hoursOf(100), monday()), (Promise{day(7), true, {}})); // a Saturday
}

// What is late anyhow may not get later still; what has no day gives way to what has one.
TEST(Promise, leavesALateJobWhereItIs) {
    const std::vector late{job(150, 0)};
    EXPECT_EQ(*promiseOf(late, asked(50, 5), hoursOf(100), monday()), (Promise{day(1), true, {}}));
    EXPECT_EQ(*promiseOf(late, asked(50, 0), hoursOf(100), monday()), (Promise{day(1), false, {}}));
    const std::vector undated{BenchJob{minutes(500)}};
    EXPECT_EQ(promiseOf(undated, asked(20, {}), hoursOf(100), monday())->first, day(0));
}

TEST(Promise, saysWhyThereIsNone) {
    EXPECT_EQ(test::described(promiseOf({}, asked(1, 3), {}, monday()).error()), "NoBenchTime");
    auto closed = hoursOf(60);
    closed.closed = {{day(0), day(5'000), {}}};
    EXPECT_EQ(test::described(promiseOf({}, asked(1, 3), closed, monday()).error()), "NotWithinYears(3)");
    EXPECT_EQ(test::described(promiseOf({}, asked(60'000, 3), hoursOf(60), monday()).error()), "NotWithinYears(3)");
    const std::vector<BenchJob> endless(2'000, job(60, 3));
    EXPECT_EQ(test::described(promiseOf(endless, asked(60, 3), hoursOf(60), monday()).error()), "NotWithinYears(3)");
}

/// The queue with a new job that is wanted for that day, and its place.
std::pair<std::vector<BenchJob>, std::size_t> putIn(std::vector<BenchJob> jobs, const AskedJob& asked, Date due) {
    std::size_t place = 0;
    while (place < jobs.size() && jobs[place].due && *jobs[place].due <= due) ++place;
    for (auto i = place; i < jobs.size() && !asked.others.empty(); ++i) jobs[i].earliest = asked.others[i];
    const auto earliest = asked.earliest.empty() ? std::nullopt : asked.earliest[place];
    jobs.insert(jobs.begin() + static_cast<std::ptrdiff_t>(place), {asked.work, due, earliest});
    return {std::move(jobs), place};
}

/// Whether it is done by that day with nobody the worse for it, in the plainest way.
bool holdsFor(const std::vector<BenchJob>& jobs, const AskedJob& asked, Date due, const BenchHours& hours) {
    const auto alone = doneByMinutes(jobs, hours);
    const auto with = putIn(jobs, asked, due);
    const auto done = doneByMinutes(with.first, hours);
    if (day(done[with.second]) > due) return false;
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        const auto then = done[i < with.second ? i : i + 1];
        if (jobs[i].due && day(then) > *jobs[i].due && then > alone[i]) return false;
    }
    return true;
}

// Against a minute-by-minute account of every day there is: what is told as held is held once it is agreed to and
// stands in the queue, and no day before the first one holds.
TEST(Promise, isWhatThePlanSaysOnceItIsAgreed) {
    std::mt19937_64 random(test::printedSeed());
    int held = 0;
    for (int round = 0; round < 200; ++round) {
        auto jobs = someJobs(random, 5, true);
        std::ranges::stable_sort(jobs, {}, [](const BenchJob& one) { return *one.due; });
        const auto some = someJobs(random, 1, false).front();
        AskedJob wanted{some.work, some.due, {}, {}};
        if (round % 3 != 0) {
            for (std::size_t i = 0; i <= jobs.size(); ++i)
                wanted.earliest.push_back(day(static_cast<int>(random() % 5)));
            for (const auto& one : jobs)
                wanted.others.push_back(one.earliest.value_or(day(0)).plusDays(static_cast<int>(random() % 3)));
        }
        const auto hours = someHours(random);
        const auto promise = promiseOf(jobs, wanted, hours, monday());
        ASSERT_TRUE(promise);
        EXPECT_EQ(promise->isHeld, holdsFor(jobs, wanted, *wanted.due, hours)) << "round " << round;
        if (promise->isHeld) {
            ++held;
            const auto with = putIn(jobs, wanted, *wanted.due);
            EXPECT_EQ(promise->first, day(doneByMinutes(with.first, hours)[with.second]));
            continue;
        }
        EXPECT_TRUE(holdsFor(jobs, wanted, promise->first, hours)) << "round " << round;
        for (std::int64_t i = 0; day(i) < promise->first; ++i) EXPECT_FALSE(holdsFor(jobs, wanted, day(i), hours));
    }
    EXPECT_GT(held, 20);
}

} // namespace

} // namespace sp::scheduling
