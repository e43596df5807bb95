// SPDX-License-Identifier: MIT
#include "core/catalogue/reminder.h"

namespace sp::catalogue {

std::vector<Reminder> remindersOf(const JobState& job, units::Date today) {
    std::vector<Reminder> reminders;
    const bool isUnderWay = job.stage == Stage::Agreed || job.stage == Stage::InProduction;
    if (isUnderWay && job.wantedBy && *job.wantedBy <= today) reminders.push_back(Reminder::Wanted);
    if (isUnderWay && job.isDepositMissing) reminders.push_back(Reminder::DepositMissing);
    if (job.stage == Stage::Quoted && job.lastDay && *job.lastDay >= today &&
        today.daysUntil(*job.lastDay) <= kLapsesSoon)
        reminders.push_back(Reminder::Lapsing);
    if (job.stage == Stage::Ready && job.stageSince < today) reminders.push_back(Reminder::NotCollected);
    if (job.stage == Stage::Collected && job.isOwed) reminders.push_back(Reminder::Owed);
    return reminders;
}

} // namespace sp::catalogue
