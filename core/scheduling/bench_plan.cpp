// SPDX-License-Identifier: MIT
#include "core/scheduling/bench_plan.h"

#include "core/scheduling/messages.h"

#include <algorithm>
#include <chrono>
#include <numeric>

namespace sp::scheduling {

using units::Date;
using units::Duration;

namespace {

constexpr std::size_t kDays = static_cast<std::size_t>(kHorizonDays);

/// The bench's time from today on, and what of it is still free. Jobs are put in one after another, so that each takes
/// the earliest time that those before it have left.
class Calendar {
  public:
    Calendar(const BenchHours& hours, Date today)
        : m_today(today)
        , m_time(kDays)
        , m_next(kDays + 1) {
        std::vector<bool> isClosed(kDays);
        for (const auto& span : hours.closed) {
            const auto from = std::max<std::int64_t>(0, today.daysUntil(span.from));
            const auto to = std::min<std::int64_t>(kHorizonDays - 1, today.daysUntil(span.to));
            for (auto day = from; day <= to; ++day) isClosed[static_cast<std::size_t>(day)] = true;
        }
        unsigned weekday = std::chrono::weekday(today.days()).iso_encoding();
        for (std::size_t day = 0; day < kDays; ++day, weekday = weekday % 7 + 1)
            if (!isClosed[day]) m_time[day] = std::max<std::int64_t>(0, hours.week.of(weekday).milliseconds());
        clear();
    }

    /// Takes all jobs out again.
    void clear() {
        m_free = m_time;
        for (std::size_t day = 0; day <= kDays; ++day) m_next[day] = day < kDays && m_free[day] == 0 ? day + 1 : day;
    }

    /// The day on which it is done, from today; none: not within the horizon. `took(day, time)` for each day.
    template<class Took>
    std::optional<std::size_t> put(const BenchJob& job, const Took& took) {
        const auto begin = job.earliest ? std::max<std::int64_t>(0, m_today.daysUntil(*job.earliest)) : 0;
        if (begin >= kHorizonDays) return std::nullopt;
        auto left = job.work.milliseconds();
        if (left <= 0) return static_cast<std::size_t>(begin);
        for (auto day = open(static_cast<std::size_t>(begin)); day < kDays; day = open(day + 1)) {
            const auto taken = std::min(left, m_free[day]);
            took(day, taken);
            left -= taken;
            m_free[day] -= taken;
            if (m_free[day] == 0) m_next[day] = day + 1;
            if (left == 0) return day;
        }
        return std::nullopt;
    }
    std::optional<std::size_t> put(const BenchJob& job) {
        return put(job, [](std::size_t, std::int64_t) {});
    }

    Date dayOf(std::size_t day) const { return m_today.plusDays(static_cast<std::int64_t>(day)); }
    std::optional<Date> dayOf(const std::optional<std::size_t>& day) const {
        return day ? std::optional(dayOf(*day)) : std::nullopt;
    }
    Duration timeOn(std::size_t day) const { return Duration::fromMilliseconds(m_time[day]); }

  private:
    /// The first day from there with time left; kDays where there is none.
    std::size_t open(std::size_t day) {
        auto found = day;
        while (m_next[found] != found) found = m_next[found];
        while (m_next[day] != found) {
            const auto after = m_next[day];
            m_next[day] = found;
            day = after;
        }
        return found;
    }

    Date m_today;
    std::vector<std::int64_t> m_time; ///< ms, by day from today
    std::vector<std::int64_t> m_free;
    std::vector<std::size_t> m_next; ///< by day: itself, or a later one before which no time is left
};

bool isNeverOpen(const BenchHours& hours) {
    for (unsigned weekday = 1; weekday <= 7; ++weekday)
        if (hours.week.of(weekday).milliseconds() > 0) return false;
    return true;
}

bool isLater(const std::optional<Date>& ready, const std::optional<Date>& than) {
    return than && (!ready || *ready > *than);
}

/// Tries a new job at places of the order.
class Trial {
  public:
    Trial(std::span<const BenchJob> jobs, const BenchJob& asked, const BenchHours& hours, Date today)
        : m_jobs(jobs)
        , m_asked(asked)
        , m_calendar(hours, today) {
        for (const auto& job : jobs) m_without.push_back(m_calendar.dayOf(m_calendar.put(job)));
        // How a job fares depends on which ones go before it, not on their order: it is the same with the new job first
        // as with the new job anywhere else before it.
        m_calendar.clear();
        m_soonest = m_calendar.dayOf(m_calendar.put(asked));
        for (const auto& job : jobs) m_with.push_back(m_calendar.dayOf(m_calendar.put(job)));
    }

    bool isWorse(std::size_t job) const {
        return isLate(m_jobs[job], m_with[job]) && isLater(m_with[job], m_without[job]);
    }
    /// The first place at which nobody is the worse for it.
    std::size_t harmless() const {
        auto place = m_jobs.size();
        while (place > 0 && !isWorse(place - 1)) --place;
        return place;
    }
    std::optional<Date> readyAt(std::size_t place) {
        m_calendar.clear();
        for (const auto& job : m_jobs.first(place)) m_calendar.put(job);
        return m_calendar.dayOf(m_calendar.put(m_asked));
    }
    /// The last place at which it is done on `day` or before; it is when it goes first. The later the place, the later
    /// it is done.
    std::size_t lastInTime(Date day) {
        std::size_t in = 0;
        std::size_t out = m_jobs.size() + 1;
        while (out - in > 1) {
            const auto middle = in + (out - in) / 2;
            const auto ready = readyAt(middle);
            (ready && *ready <= day ? in : out) = middle;
        }
        return in;
    }
    std::vector<Delayed> delayedFrom(std::size_t place) const {
        std::vector<Delayed> all;
        for (auto job = place; job < m_jobs.size(); ++job)
            if (isWorse(job)) all.push_back({job, m_with[job]});
        return all;
    }
    const std::optional<Date>& soonest() const { return m_soonest; }

  private:
    std::span<const BenchJob> m_jobs;
    const BenchJob& m_asked;
    Calendar m_calendar;
    std::vector<std::optional<Date>> m_without;
    std::vector<std::optional<Date>> m_with;
    std::optional<Date> m_soonest;
};

} // namespace

bool BenchHours::isClosedOn(Date day) const {
    return std::ranges::any_of(closed, [day](const auto& span) { return span.from <= day && day <= span.to; });
}

Duration BenchHours::on(Date day) const {
    return isClosedOn(day) ? Duration{} : week.of(std::chrono::weekday(day.days()).iso_encoding());
}

Duration PlannedDay::taken() const {
    Duration sum;
    for (const auto& one : work) sum += one.time;
    return sum;
}

std::vector<std::size_t> byDueDay(std::span<const BenchJob> jobs) {
    std::vector<std::size_t> order(jobs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        return jobs[a].due && (!jobs[b].due || *jobs[a].due < *jobs[b].due);
    });
    return order;
}

bool isLate(const BenchJob& job, const std::optional<Date>& ready) { return isLater(ready, job.due); }

base::Result<BenchPlan> planOf(std::span<const BenchJob> jobs, const BenchHours& hours, Date today) {
    const bool isWork = std::ranges::any_of(jobs, [](const auto& job) { return job.work.milliseconds() > 0; });
    if (isWork && isNeverOpen(hours)) return base::fail(Fault::NoBenchTime, "week");
    Calendar calendar(hours, today);
    BenchPlan plan;
    plan.ready.reserve(jobs.size());
    std::vector<std::vector<DayWork>> work;
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        const auto took = [&](std::size_t day, std::int64_t time) {
            if (work.size() <= day) work.resize(day + 1);
            work[day].push_back({i, Duration::fromMilliseconds(time)});
        };
        plan.ready.push_back(calendar.dayOf(calendar.put(jobs[i], took)));
    }
    plan.days.reserve(work.size());
    for (std::size_t day = 0; day < work.size(); ++day) {
        const auto date = calendar.dayOf(day);
        plan.days.push_back({date, calendar.timeOn(day), hours.isClosedOn(date), std::move(work[day])});
    }
    return plan;
}

base::Result<Promise> promiseOf(std::span<const BenchJob> jobs, const BenchJob& asked, const BenchHours& hours,
                                Date today) {
    if (isNeverOpen(hours)) return base::fail(Fault::NoBenchTime, "week");
    Trial trial(jobs, asked, hours, today);
    Promise promise;
    promise.place = trial.harmless();
    const auto first = trial.readyAt(promise.place);
    if (!first) return base::fail(Fault::NotWithinYears, "wantedBy", kHorizonYears);
    promise.first = *first;
    promise.isHeld = !asked.due || *first <= *asked.due;
    if (promise.isHeld) return promise;
    promise.soonest = trial.soonest();
    if (promise.soonest && *promise.soonest <= *asked.due)
        promise.delayed = trial.delayedFrom(trial.lastInTime(*asked.due));
    return promise;
}

} // namespace sp::scheduling
