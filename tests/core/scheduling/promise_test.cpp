// SPDX-License-Identifier: MIT
//
// What can be promised of a new job: by hand, and against every place and every order of small queues.
#include "core/scheduling/bench_plan.h"
#include "core/scheduling/messages.h"
#include "tests/core/scheduling/queues.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

namespace sp::scheduling {

namespace {

using namespace queues;

// By hand, 100 minutes a day: 150 due on Tuesday and 100 due on Friday. 50 more for Tuesday go first, and end on
// Monday: the first still ends on Tuesday. 60 would push it into Wednesday, so they go after it; they end on Wednesday,
// and so does the second.
TEST(Promise, isTheFirstDayThatHarmsNobody) {
    const std::vector jobs{job(150, 1), job(100, 4)};
    const auto held = promiseOf(jobs, job(50, 1), hoursOf(100), monday());
    ASSERT_TRUE(held);
    EXPECT_EQ(*held, (Promise{day(0), 0, true, {}, {}}));
    const auto later = promiseOf(jobs, job(60, 1), hoursOf(100), monday());
    ASSERT_TRUE(later);
    EXPECT_EQ(*later, (Promise{day(2), 1, false, day(0), {{0, day(2)}}}));
}

// By hand: everything is taken until Thursday, and nothing of it has time to spare.
TEST(Promise, namesWhoWouldPayForAnEarlierDay) {
    const std::vector jobs{job(100, 0), job(100, 1), job(100, 2), job(100, 6)};
    const auto promise = promiseOf(jobs, job(100, 2), hoursOf(100), monday());
    ASSERT_TRUE(promise);
    EXPECT_EQ(*promise, (Promise{day(3), 3, false, day(0), {{2, day(3)}}}));
}

TEST(Promise, saysHowSoonWhereItCannotBeDoneAtAll) {
    const auto promise = promiseOf({}, job(250, 1), hoursOf(100), monday());
    ASSERT_TRUE(promise);
    EXPECT_EQ(*promise, (Promise{day(2), 0, false, day(2), {}}));
    const auto past = promiseOf({}, job(10, -3), hoursOf(100), monday());
    EXPECT_EQ(*past, (Promise{day(0), 0, false, day(0), {}})) << "a day before today is kept by none";
}

TEST(Promise, waitsForWhatTheJobWaitsFor) {
    const auto promise = promiseOf({}, job(10, 9, 5), hoursOf(100), monday()); // a Saturday
    ASSERT_TRUE(promise);
    EXPECT_EQ(promise->first, day(7));
    EXPECT_TRUE(promise->isHeld);
}

// What is late anyhow may not get later still; what has no day gives way.
TEST(Promise, leavesALateJobWhereItIs) {
    const std::vector late{job(150, 0)};
    EXPECT_EQ(*promiseOf(late, job(50, 5), hoursOf(100), monday()), (Promise{day(0), 0, true, {}, {}}));
    EXPECT_EQ(*promiseOf(late, job(60, 5), hoursOf(100), monday()), (Promise{day(2), 1, true, {}, {}}));
    const std::vector undated{BenchJob{minutes(500)}};
    EXPECT_EQ(promiseOf(undated, {minutes(20)}, hoursOf(100), monday())->first, day(0));
}

TEST(Promise, saysWhyThereIsNone) {
    EXPECT_EQ(test::described(promiseOf({}, job(1, 3), {}, monday()).error()), "NoBenchTime");
    auto closed = hoursOf(60);
    closed.closed = {{day(0), day(5'000), {}}};
    EXPECT_EQ(test::described(promiseOf({}, job(1, 3), closed, monday()).error()), "NotWithinYears(3)");
    EXPECT_EQ(test::described(promiseOf({}, job(60'000, 3), hoursOf(60), monday()).error()), "NotWithinYears(3)");
    const std::vector<BenchJob> endless(20'000, job(60, 9'000));
    EXPECT_EQ(test::described(promiseOf(endless, job(60, 3), hoursOf(60), monday()).error()), "NotWithinYears(3)");
}

/// Days on which all of them are done, the new one at that place.
std::vector<std::int64_t> withAt(std::vector<BenchJob> jobs, const BenchJob& asked, std::size_t place,
                                 const BenchHours& hours) {
    jobs.insert(jobs.begin() + static_cast<std::ptrdiff_t>(place), asked);
    return doneByMinutes(jobs, hours);
}

TEST(Promise, isTheBestOfAllPlaces) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 200; ++round) {
        const auto jobs = someJobs(random, 6, true); // in an order of the owner's own
        const auto asked = someJobs(random, 1, true).front();
        const auto hours = someHours(random);
        const auto alone = doneByMinutes(jobs, hours);
        std::int64_t best = 1'000;
        std::int64_t soonest = 1'000;
        std::optional<std::vector<Delayed>> pay;
        for (auto place = jobs.size() + 1; place-- > 0;) {
            const auto done = withAt(jobs, asked, place, hours);
            std::vector<Delayed> harmed;
            for (std::size_t i = 0; i < jobs.size(); ++i) {
                const auto with = done[i < place ? i : i + 1];
                if (with > alone[i] && day(with) > *jobs[i].due) harmed.push_back({i, day(with)});
            }
            if (harmed.empty()) best = std::min(best, done[place]);
            soonest = std::min(soonest, done[place]);
            if (!pay && day(done[place]) <= *asked.due) pay = harmed;
        }
        const auto promise = promiseOf(jobs, asked, hours, monday());
        ASSERT_TRUE(promise);
        EXPECT_EQ(promise->first, day(best));
        EXPECT_EQ(promise->isHeld, day(best) <= *asked.due);
        if (promise->isHeld) continue;
        EXPECT_EQ(promise->soonest, day(soonest));
        EXPECT_EQ(promise->delayed, pay.value_or(std::vector<Delayed>{}));
    }
}

// By the day they are due, none waiting and none late: then no order of all of them is better.
TEST(Promise, isTheBestOfAllOrdersWhereNoneWaitsOrIsLate) {
    std::mt19937_64 random(test::printedSeed());
    int compared = 0;
    for (int round = 0; round < 200; ++round) {
        const auto some = someJobs(random, 4, false);
        const auto jobs = inOrder(some, byDueDay(some));
        const auto hours = someHours(random);
        const auto alone = doneByMinutes(jobs, hours);
        if (largestLateness(jobs, alone) > 0) continue;
        ++compared;
        auto all = jobs;
        all.push_back(someJobs(random, 1, true).front());
        std::int64_t best = 1'000;
        forEveryOrder(all.size(), [&](const std::vector<std::size_t>& order) {
            const auto done = doneByMinutes(inOrder(all, order), hours);
            std::int64_t asked = 0;
            for (std::size_t i = 0; i < order.size(); ++i) {
                if (order[i] == jobs.size())
                    asked = done[i];
                else if (day(done[i]) > *jobs[order[i]].due)
                    return;
            }
            best = std::min(best, asked);
        });
        EXPECT_EQ(promiseOf(jobs, all.back(), hours, monday())->first, day(best));
    }
    EXPECT_GT(compared, 20);
}

} // namespace

} // namespace sp::scheduling
