// SPDX-License-Identifier: MIT
#include "core/scheduling/bench_plan.h"

#include "core/scheduling/messages.h"

#include <algorithm>
#include <chrono>
#include <utility>

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

/// The jobs without the new one, by a calendar that begins on some day.
struct Side {
    Side(std::span<const BenchJob> jobs, const BenchHours& hours, Date today)
        : before(hours, today) {
        auto calendar = before;
        for (const auto& job : jobs) without.push_back(calendar.dayOf(calendar.put(job)));
    }

    Calendar before; ///< with the jobs before the place
    std::vector<std::optional<Date>> without;
};

/// Tries a new job at places of the order.
class Trial {
  public:
    Trial(std::span<const BenchJob> jobs, const AskedJob& asked, const BenchHours& hours, Date today, Date countedFrom)
        : m_jobs(jobs)
        , m_asked(asked)
        , m_first(countedFrom) {
        m_sides.emplace_back(jobs, hours, countedFrom);
        // Who is late anyhow by the one may be in time by the other.
        if (countedFrom != today) m_sides.emplace_back(jobs, hours, today);
    }

    std::size_t place() const { return m_place; }
    bool isAtEnd() const { return m_place == m_jobs.size() || !m_jobs[m_place].due; }
    /// To the place after the next job.
    void advance() {
        for (auto& side : m_sides) side.before.put(m_jobs[m_place]);
        ++m_place;
    }

    /// When it is done at this place.
    std::optional<Date> ready() const {
        auto calendar = m_sides.front().before;
        return calendar.dayOf(calendar.put(here()));
    }
    /// The days it can be wanted for that put it here: from the first to the second; none where the next job is due on
    /// the day of the one before.
    std::optional<std::pair<Date, std::optional<Date>>> days() const {
        const auto first = m_place == 0 ? m_first : std::max(m_first, *m_jobs[m_place - 1].due);
        if (isAtEnd()) return std::pair(first, std::optional<Date>());
        const auto last = m_jobs[m_place].due->plusDays(-1);
        return last < first ? std::nullopt : std::optional(std::pair(first, std::optional(last)));
    }
    /// Who is the worse for it here.
    std::vector<Delayed> delayed() const {
        for (const auto& side : m_sides)
            if (auto all = delayedBy(side); !all.empty()) return all;
        return {};
    }

  private:
    std::vector<Delayed> delayedBy(const Side& side) const {
        auto calendar = side.before;
        calendar.put(here());
        std::vector<Delayed> all;
        for (auto i = m_place; i < m_jobs.size(); ++i) {
            auto job = m_jobs[i];
            if (!m_asked.others.empty()) job.earliest = m_asked.others[i];
            const auto with = calendar.dayOf(calendar.put(job));
            if (isLate(job, with) && isLater(with, side.without[i])) all.push_back({i, with});
        }
        return all;
    }
    BenchJob here() const {
        return {m_asked.work, m_asked.due, m_asked.earliest.empty() ? std::nullopt : m_asked.earliest[m_place]};
    }

    std::span<const BenchJob> m_jobs;
    const AskedJob& m_asked;
    Date m_first;
    std::size_t m_place = 0;
    std::vector<Side> m_sides;
};

/// The first day for which it can be put into the queue.
std::optional<Date> firstDay(Trial trial) {
    for (;; trial.advance()) {
        const auto ready = trial.ready();
        if (const auto days = trial.days(); ready && days) {
            const auto day = std::max(*ready, days->first);
            if ((!days->second || day <= *days->second) && trial.delayed().empty()) return day;
        }
        if (trial.isAtEnd()) return std::nullopt;
    }
}

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

base::Result<Promise> promiseOf(std::span<const BenchJob> jobs, const AskedJob& asked, const BenchHours& hours,
                                Date today, std::optional<Date> countedFrom) {
    if (isNeverOpen(hours)) return base::fail(Fault::NoBenchTime, "week");
    const Trial trial(jobs, asked, hours, today, countedFrom.value_or(today));
    Promise promise;
    if (asked.due) {
        auto there = trial;
        while (!there.isAtEnd() && *jobs[there.place()].due <= *asked.due) there.advance();
        const auto ready = there.ready();
        if (ready && *ready <= *asked.due) {
            promise.delayed = there.delayed();
            promise.isHeld = promise.delayed.empty();
            promise.first = *ready;
        }
        if (promise.isHeld) return promise;
    }
    const auto first = firstDay(trial);
    if (!first) return base::fail(Fault::NotWithinYears, "wantedBy", kHorizonYears);
    promise.first = *first;
    return promise;
}

} // namespace sp::scheduling
