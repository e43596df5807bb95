// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/date.h"
#include "core/units/duration.h"

#include <string>
#include <vector>

namespace sp::catalogue {

/// How long the bench is worked at on each day of a week: of all hands together, without what goes by at the counter
/// or with the books. All of them nothing: it is not known yet, and no day is promised.
struct BenchWeek {
    units::Duration monday;
    units::Duration tuesday;
    units::Duration wednesday;
    units::Duration thursday;
    units::Duration friday;
    units::Duration saturday;
    units::Duration sunday;

    /// `weekday` as ISO 8601 counts: Monday is 1, Sunday 7.
    units::Duration of(unsigned weekday) const {
        switch (weekday) {
        case 1: return monday;
        case 2: return tuesday;
        case 3: return wednesday;
        case 4: return thursday;
        case 5: return friday;
        case 6: return saturday;
        default: return sunday;
        }
    }
    bool isKnown() const { return *this != BenchWeek{}; }

    friend bool operator==(const BenchWeek&, const BenchWeek&) = default;
};

/// Days on which nobody works at the bench, both ends among them. Public holidays are the shop's to enter.
struct ClosedDays {
    units::Date from;
    units::Date to; ///< not before `from`
    std::string why = {};

    friend bool operator==(const ClosedDays&, const ClosedDays&) = default;
};

} // namespace sp::catalogue
