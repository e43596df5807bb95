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

/// A job that is not in the queue yet.
struct AskedJob {
    units::Duration work;
    std::optional<units::Date> due = {}; ///< the day for which it is wanted
    /// The first day on which it can be worked on, by its place: before which of the jobs it stands, or after them all.
    /// Empty: today, wherever it stands.
    std::vector<std::optional<units::Date>> earliest = {};
    /// The first day on which each of the jobs can be worked on when the new one goes before it. Empty: as without it.
    std::vector<std::optional<units::Date>> others = {};
};

/// What can be promised of a new job.
struct Promise {
    /// Where it is held, when it is done. Else the first day for which it can be put into the queue, done by then and
    /// with nobody the worse for it; it can be before the day it is wanted, where it goes earlier in the queue.
    units::Date first;
    bool isHeld = false; ///< it is wanted for a day, is done by then, and nobody is the worse for it
    /// Where it is not held although it would be done by the day it is wanted: which jobs would pay for it.
    std::vector<Delayed> delayed = {};

    friend bool operator==(const Promise&, const Promise&) = default;
};

/// What can be promised of a job that goes where the day it is wanted for puts it, after those of the same day. Nobody
/// is the worse for it when no job is late, or later still, that would not be without it. The jobs stand by the day
/// they are due, those without one last; they are never late, and the new one is put before them. What is left of the
/// days before `countedFrom` is not counted on: it is done without it, and nobody is the worse for it with it either.
/// Errors: NoBenchTime as planOf; NotWithinYears when no day within the horizon does. Costs jobs², and little of it.
base::Result<Promise> promiseOf(std::span<const BenchJob> jobs, const AskedJob& asked, const BenchHours& hours,
                                units::Date today, std::optional<units::Date> countedFrom = {});

} // namespace sp::scheduling
