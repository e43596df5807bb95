// SPDX-License-Identifier: MIT
#include "app/async/latest_task.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

#include <atomic>
#include <optional>
#include <semaphore>
#include <thread>
#include <vector>

namespace sp::async::test {

using sp::test::handleQueued;
using sp::test::waitFor;

TEST(LatestTask, answersInTheThreadThatAsked) {
    LatestTask task;
    std::optional<std::thread::id> worked;
    std::optional<std::thread::id> taken;
    EXPECT_FALSE(task.isBusy());
    task.ask([] { return std::this_thread::get_id(); },
             [&](std::thread::id there) {
                 worked = there;
                 taken = std::this_thread::get_id();
                 EXPECT_FALSE(task.isBusy());
             });
    EXPECT_TRUE(task.isBusy());
    ASSERT_TRUE(waitFor([&] { return taken.has_value(); }));
    EXPECT_EQ(*taken, std::this_thread::get_id());
    EXPECT_NE(*worked, *taken);
}

TEST(LatestTask, onlyTheNewestIsAnswered) {
    LatestTask task;
    std::vector<int> answers;
    for (int i = 0; i < 100; ++i) task.ask([i] { return i; }, [&](int answer) { answers.push_back(answer); });
    ASSERT_TRUE(waitFor([&] { return !task.isBusy(); }));
    handleQueued();
    EXPECT_EQ(answers, std::vector{99});
}

TEST(LatestTask, anAnswerOnItsWayIsNotHeardOnceSomethingElseIsAsked) {
    LatestTask task;
    std::vector<int> answers;
    const auto take = [&](int answer) { answers.push_back(answer); };
    std::atomic<bool> worked = false;
    task.ask(
        [&] {
            worked = true;
            return 1;
        },
        take);
    while (!worked) std::this_thread::yield(); // no event is handled meanwhile
    task.ask([] { return 2; }, take);
    ASSERT_TRUE(waitFor([&] { return !task.isBusy(); }));
    EXPECT_EQ(answers, std::vector{2});
}

TEST(LatestTask, aNewerQuestionStopsTheWorkUnderWay) {
    LatestTask task;
    std::binary_semaphore begun(0);
    std::atomic<bool> stopped = false;
    bool isFirstTaken = false;
    task.ask(
        [&](const std::stop_token& stop) {
            begun.release();
            while (!stop.stop_requested()) std::this_thread::yield();
            stopped = true;
            return 1;
        },
        [&](int) { isFirstTaken = true; });
    begun.acquire();
    std::optional<int> second;
    task.ask([] { return 2; }, [&](int answer) { second = answer; });
    ASSERT_TRUE(waitFor([&] { return second.has_value(); }));
    EXPECT_TRUE(stopped);
    EXPECT_FALSE(isFirstTaken);
}

TEST(LatestTask, tellsInOrderUntilItIsDropped) {
    LatestTask task;
    std::vector<int> told;
    std::binary_semaphore goOn(0);
    task.start([&](const LatestTask::Run& run) {
        for (int i = 0; i < 3; ++i) run.tell([&told, i] { told.push_back(i); });
        goOn.acquire();
        run.tell([&told] { told.push_back(99); });
    });
    ASSERT_TRUE(waitFor([&] { return told.size() == 3; }));
    EXPECT_EQ(told, (std::vector{0, 1, 2}));
    EXPECT_TRUE(task.isBusy());
    task.drop();
    EXPECT_FALSE(task.isBusy());
    goOn.release();
    std::optional<int> later;
    task.ask([] { return 7; }, [&](int answer) { later = answer; });
    ASSERT_TRUE(waitFor([&] { return later.has_value(); }));
    EXPECT_EQ(told, (std::vector{0, 1, 2}));
}

TEST(LatestTask, isNoLongerBusyWhenItsWorkHasReturned) {
    LatestTask task;
    bool told = false;
    task.start([&](const LatestTask::Run& run) { run.tell([&] { told = true; }); });
    ASSERT_TRUE(waitFor([&] { return !task.isBusy(); }));
    EXPECT_TRUE(told);
}

TEST(LatestTask, stopsItsWorkAndSaysNothingWhenItIsDestroyed) {
    std::binary_semaphore begun(0);
    std::atomic<bool> returned = false;
    bool isTaken = false;
    {
        LatestTask task;
        task.ask(
            [&](const std::stop_token& stop) {
                begun.release();
                while (!stop.stop_requested()) std::this_thread::yield();
                returned = true;
                return 1;
            },
            [&](int) { isTaken = true; });
        begun.acquire();
    }
    EXPECT_TRUE(returned) << "the destructor waits for it";
    handleQueued();
    EXPECT_FALSE(isTaken);
}

TEST(LatestTask, whatWaitsBehindDroppedWorkIsNeverBegun) {
    std::binary_semaphore begun(0);
    std::binary_semaphore goOn(0);
    std::atomic<int> works = 0;
    {
        LatestTask task;
        task.start([&](const LatestTask::Run&) {
            begun.release();
            goOn.acquire();
        });
        begun.acquire();
        for (int i = 0; i < 10; ++i) task.start([&](const LatestTask::Run&) { ++works; });
        task.drop();
        goOn.release();
    }
    EXPECT_EQ(works, 0);
}

TEST(LatestTaskDeathTest, workThatThrowsEndsTheProgram) {
    GTEST_FLAG_SET(death_test_style, "threadsafe");
    EXPECT_DEATH(
        {
            LatestTask task;
            task.ask([]() -> int { throw 1; }, [](int) {});
            waitFor([] { return false; });
        },
        "");
}

} // namespace sp::async::test
