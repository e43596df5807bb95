// SPDX-License-Identifier: MIT
// Each reminder on the first day it holds, the last day it does not, and in the stages that are none of its business.
#include "core/catalogue/reminder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sp::catalogue {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const auto kToday = units::Date::parse("2026-11-25").value();

TEST(Reminders, tellWhatIsWantedUntilItIsReady) {
    for (const auto stage : {Stage::Agreed, Stage::InProduction}) {
        JobState job{.stage = stage, .wantedBy = kToday};
        EXPECT_THAT(remindersOf(job, kToday), ElementsAre(Reminder::Wanted));
        EXPECT_THAT(remindersOf(job, kToday.plusDays(9)), ElementsAre(Reminder::Wanted)) << "late is not forgotten";
        EXPECT_THAT(remindersOf(job, kToday.plusDays(-1)), IsEmpty());
        job.wantedBy.reset();
        EXPECT_THAT(remindersOf(job, kToday), IsEmpty());
    }
    for (const auto stage : {Stage::Enquiry, Stage::Quoted, Stage::Ready, Stage::Collected, Stage::Declined})
        EXPECT_THAT(remindersOf({.stage = stage, .wantedBy = kToday, .stageSince = kToday}, kToday), IsEmpty());
}

TEST(Reminders, tellWhichDepositIsMissingWhileTheJobIsUnderWay) {
    using enum Stage;
    for (const auto stage : {Enquiry, Quoted, Agreed, InProduction, Ready, Collected, Declined}) {
        const JobState job{.stage = stage, .stageSince = kToday, .isDepositMissing = true};
        const bool asks = stage == Agreed || stage == InProduction;
        EXPECT_EQ(remindersOf(job, kToday).size(), asks ? 1U : 0U);
    }
}

TEST(Reminders, tellOfAQuoteThatEndsSoon) {
    const JobState job{.stage = Stage::Quoted, .lastDay = kToday.plusDays(3)};
    EXPECT_THAT(remindersOf(job, kToday), ElementsAre(Reminder::Lapsing));
    EXPECT_THAT(remindersOf(job, kToday.plusDays(-1)), IsEmpty());
    EXPECT_THAT(remindersOf(job, kToday.plusDays(3)), ElementsAre(Reminder::Lapsing)) << "its last day";
    EXPECT_THAT(remindersOf(job, kToday.plusDays(4)), IsEmpty()) << "lapsed";
}

TEST(Reminders, tellOfWhatLiesReadyFromTheNextDayOn) {
    const JobState job{.stage = Stage::Ready, .stageSince = kToday};
    EXPECT_THAT(remindersOf(job, kToday), IsEmpty());
    EXPECT_THAT(remindersOf(job, kToday.plusDays(1)), ElementsAre(Reminder::NotCollected));
}

TEST(Reminders, tellWhatIsOwedOnceItIsCollected) {
    EXPECT_THAT(remindersOf({.stage = Stage::Collected, .isOwed = true}, kToday), ElementsAre(Reminder::Owed));
    EXPECT_THAT(remindersOf({.stage = Stage::Collected}, kToday), IsEmpty());
    EXPECT_THAT(remindersOf({.stage = Stage::Declined, .isOwed = true}, kToday), IsEmpty());
}

TEST(Reminders, tellTheMostPressingFirst) {
    const JobState job{.stage = Stage::InProduction, .wantedBy = kToday, .isDepositMissing = true, .isOwed = true};
    EXPECT_THAT(remindersOf(job, kToday), ElementsAre(Reminder::Wanted, Reminder::DepositMissing));
}

} // namespace

} // namespace sp::catalogue
