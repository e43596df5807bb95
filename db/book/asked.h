// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/customer.h"
#include "core/catalogue/reminder.h"
#include "db/records/quote_summary.h"

#include <vector>

namespace sp::db {

/// A job that asks for somebody's attention, and why.
struct Asked {
    catalogue::Reminder reminder = catalogue::Reminder::Wanted;
    QuoteSummary job;
    units::Money amount; ///< what is asked for: of the deposit, or what is left to pay of what is ready or collected
};

/// A certificate of exemption that ends.
struct EndingCertificate {
    base::Id customer;
    std::string name; ///< the customer's
    std::string place;
    units::Date endsOn;
};

/// What a day asks for.
struct AskedToday {
    std::vector<Asked> jobs;                       ///< in the order of Reminder, of each the longest open first
    std::vector<EndingCertificate> certificates{}; ///< those that end soon or have ended, the first first

    std::size_t count() const { return jobs.size() + certificates.size(); }
};

} // namespace sp::db
