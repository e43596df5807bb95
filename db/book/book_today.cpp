// SPDX-License-Identifier: MIT
#include "db/book/action.h"
#include "db/book/book.h"
#include "db/book/inside.h"

#include <algorithm>
#include <tuple>

namespace sp::db {

using catalogue::Reminder;

namespace {

/// The day from which it is open, by which the longest comes first.
units::Date openSince(const Asked& asked) {
    switch (asked.reminder) {
    case Reminder::Wanted: return *asked.job.wantedBy;
    case Reminder::Lapsing: return *asked.job.lastDay;
    case Reminder::DepositMissing:
    case Reminder::NotCollected:
    case Reminder::Owed: break;
    }
    return asked.job.stageSince;
}

bool isBefore(const Asked& a, const Asked& b) {
    return std::make_tuple(a.reminder, openSince(a), a.job.number) <
           std::make_tuple(b.reminder, openSince(b), b.job.number);
}

units::Money leftOf(const QuoteSummary& job) {
    return job.total && *job.total > job.paid ? *job.total - job.paid : units::Money{};
}

} // namespace

base::Result<AskedToday> Book::askedToday() {
    const auto today = environment().today();
    auto jobs = m_in->read([&] {
        const auto byIndex = m_in->askIndex([&](stores::FindIndex& index) { return index.findAsking(today); });
        return byIndex ? m_in->stores.jobs.listOnly(*byIndex) : m_in->stores.jobs.listAsking(today);
    });
    if (!jobs) return base::fail(jobs.error());
    AskedToday found;
    for (const auto& job : *jobs) {
        const auto left = leftOf(job);
        catalogue::JobState state{.stage = job.stage,
                                  .wantedBy = job.wantedBy,
                                  .lastDay = job.lastDay,
                                  .stageSince = job.stageSince,
                                  .isOwed = !left.isZero()};
        units::Money deposit;
        if ((job.stage == Stage::Agreed || job.stage == Stage::InProduction) && !left.isZero()) {
            const auto reckoned = account(job.id);
            if (!reckoned) return base::fail(reckoned.error());
            deposit = reckoned->depositLeft();
            state.isDepositMissing = !deposit.isZero();
        }
        for (const auto reminder : catalogue::remindersOf(state, today))
            found.jobs.push_back({reminder, job,
                                  reminder == Reminder::DepositMissing                               ? deposit
                                  : reminder == Reminder::NotCollected || reminder == Reminder::Owed ? left
                                                                                                     : units::Money{}});
    }
    std::ranges::sort(found.jobs, isBefore);
    auto all = customers();
    if (!all) return base::fail(all.error());
    for (const auto& customer : *all)
        for (const auto& one : catalogue::endingCertificates(customer, today))
            found.certificates.push_back({customer.id, customer.name, one.place, *one.expiresOn});
    std::ranges::stable_sort(found.certificates, {}, &EndingCertificate::endsOn);
    return found;
}

} // namespace sp::db
