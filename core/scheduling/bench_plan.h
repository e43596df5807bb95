// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/bench_week.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace sp::scheduling {

// When jobs are done at a bench that makes them in a given order. The bench is one: its time on a day is that of all
// who work there, and a job takes its minutes whoever does them. Days are whole: of today all of its time is reckoned
// with, what was done of a job so far is not known, and a job is done on the day on which its last minute is.
//
// The order is one of precedence. Each day's time goes to the first job that can be worked on, what is left to the
// next, so that the bench is idle only where no job can be begun. A job that waits lets others go before it and takes
// its place on the morning on which it can begin; one that is under way is put aside for it overnight.
//
// What that comes to: with the jobs by the day they are due, no order has a smaller largest lateness (in days: day done
// − day due), nor is any job late where some order has none late. Without jobs that wait: J. R. Jackson, "Scheduling a
// Production Line to Minimize Maximum Tardiness", 1955. With them: W. A. Horn, "Some simple scheduling algorithms",
// Naval Research Logistics Quarterly 21, 1974, because jobs are put aside overnight. It does not hold of a bench that
// finishes what it has begun, nor does it make the fewest jobs late. Both sources are cited from memory.

/// How far ahead is looked: three years. What is not done by then is said to be not done, and no day is invented.
inline constexpr std::int64_t kHorizonDays = 3 * 365 + 1;
inline constexpr std::int64_t kHorizonYears = 3;

/// When the bench is worked at.
struct BenchHours {
    catalogue::BenchWeek week;
    std::vector<catalogue::ClosedDays> closed; ///< in any order; may overlap

    bool isClosedOn(units::Date day) const;
    /// The bench's time on that day, nothing where it is closed.
    units::Duration on(units::Date day) const;
};

/// A job as the bench sees it.
struct BenchJob {
    units::Duration work;                     ///< 0 or more; what is below counts as nothing
    std::optional<units::Date> due = {};      ///< none: never late, and after those that have one
    std::optional<units::Date> earliest = {}; ///< the first day on which it can be worked on; none: today

    friend bool operator==(const BenchJob&, const BenchJob&) = default;
};

/// What of a day goes to which job.
struct DayWork {
    std::size_t job = 0; ///< its place in the order
    units::Duration time;

    friend bool operator==(const DayWork&, const DayWork&) = default;
};

struct PlannedDay {
    units::Date day;
    units::Duration time; ///< of the bench on it
    bool isClosed = false;
    std::vector<DayWork> work = {}; ///< in the order of the jobs

    units::Duration taken() const;

    friend bool operator==(const PlannedDay&, const PlannedDay&) = default;
};

struct BenchPlan {
    std::vector<PlannedDay> days;                  ///< from today to the last one with work; none without any
    std::vector<std::optional<units::Date>> ready; ///< by job; none: not within the horizon

    friend bool operator==(const BenchPlan&, const BenchPlan&) = default;
};

/// The places of the jobs by the day they are due, those without one last, of equals the first first.
std::vector<std::size_t> byDueDay(std::span<const BenchJob> jobs);

/// The jobs, made in the order in which they stand. A job without work is done on the first day on which it can be.
/// Errors: NoBenchTime when there is work but no weekday has time. Costs jobs + days of the horizon.
base::Result<BenchPlan> planOf(std::span<const BenchJob> jobs, const BenchHours& hours, units::Date today);

/// Whether it is done after the day it is due, or not within the horizon.
bool isLate(const BenchJob& job, const std::optional<units::Date>& ready);

/// A job that is late through another one, or later still.
struct Delayed {
    std::size_t job = 0;
    std::optional<units::Date> ready; ///< what it would come to

    friend bool operator==(const Delayed&, const Delayed&) = default;
};

/// What can be promised of a new job.
struct Promise {
    units::Date first;                       ///< the first day on which it is done with nobody the worse for it
    std::size_t place = 0;                   ///< in the order, before the job that stands there, for that
    bool isHeld = true;                      ///< it is wanted for no day, or `first` is not after that
    std::optional<units::Date> soonest = {}; ///< where it is not held: when it is done if it goes before all others
    /// Where it is not held and could be done for the day it is wanted: which jobs would pay for it, at the latest
    /// place that does it.
    std::vector<Delayed> delayed = {};

    friend bool operator==(const Promise&, const Promise&) = default;
};

/// The first day on which a new job is done without making another one late, or a late one later: over all places in
/// the order in which the jobs stand, which stays as it is. Where they stand by the day they are due, none of them
/// waits and none is late, no other order of all of them does it earlier. `asked.due` is the day for which it is
/// wanted. Errors: NoBenchTime as planOf; NotWithinYears when it is not done within the horizon.
base::Result<Promise> promiseOf(std::span<const BenchJob> jobs, const BenchJob& asked, const BenchHours& hours,
                                units::Date today);

} // namespace sp::scheduling
