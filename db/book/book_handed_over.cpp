// SPDX-License-Identifier: MIT
// When jobs were handed over, by what the change log says of their stages.
#include "db/book/action.h"
#include "db/book/book.h"
#include "db/book/inside.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <tuple>

namespace sp::db {

using stores::StageChange;

namespace {

/// "2026-11-30T14:02:00.000Z" to the second; nothing for what is written otherwise.
std::optional<std::chrono::system_clock::time_point> momentOf(std::string_view text) {
    if (text.size() < 19) return std::nullopt;
    const auto day = units::Date::parse(text.substr(0, 10));
    if (!day) return std::nullopt;
    std::array<int, 3> parts{};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto two = text.substr(11 + 3 * i, 2);
        const auto read = std::from_chars(two.data(), two.data() + two.size(), parts[i]);
        if (read.ec != std::errc() || read.ptr != two.data() + two.size()) return std::nullopt;
    }
    return day->days() + std::chrono::hours(parts[0]) + std::chrono::minutes(parts[1]) + std::chrono::seconds(parts[2]);
}

/// How far a job was, and since when it is collected.
struct Standing {
    Stage stage = Stage::Enquiry;
    std::string since; ///< empty unless it is collected
};

/// When the job came to Collected, where it stands there at the end; empty where the rows do not say it. Undo brings
/// back what was before with its moment, redo what was undone.
std::string collectedAt(const std::vector<StageChange>& changes) {
    std::vector<Standing> done;
    std::vector<Standing> undone;
    for (const auto& change : changes) {
        const auto stage = change.after.stage;
        if (change.kind == "undo") {
            if (!done.empty()) {
                undone.push_back(done.back());
                done.pop_back();
            }
            if (!done.empty() && done.back().stage == stage) continue;
        } else if (change.kind == "redo" && !undone.empty() && undone.back().stage == stage) {
            done.push_back(undone.back());
            undone.pop_back();
            continue;
        } else {
            undone.clear();
        }
        Standing standing{stage, {}};
        if (stage == Stage::Collected) {
            const bool wasThere = !done.empty() && done.back().stage == Stage::Collected;
            standing.since = wasThere ? done.back().since : change.at; // another choice is no other day
        }
        done.push_back(std::move(standing));
    }
    return done.empty() ? std::string() : done.back().since;
}

} // namespace

units::Date Book::Inside::dayAt(std::string_view moment) const {
    const auto point = momentOf(moment);
    if (!point) return {};
    return environment.dayOf ? environment.dayOf(*point)
                             : units::Date::fromDays(std::chrono::floor<std::chrono::days>(*point));
}

base::Result<std::vector<HandedOver>> Book::handedOver(units::Date from, units::Date to) {
    return m_in->read([&] {
        auto& in = *m_in;
        std::vector<HandedOver> jobs;
        const auto first = units::Date::fromDays(std::chrono::year(1) / 1 / 2);
        // No place's day is further than one from that of UTC.
        for (const auto& id : in.stores.jobs.collectedSince(std::max(from, first).plusDays(-1).iso())) {
            auto moment = collectedAt(in.stores.jobs.stageChanges(id));
            if (moment.empty()) moment = in.stores.jobs.changedAt(id);
            const auto day = in.dayAt(moment);
            if (day < from || to < day) continue;
            auto listed = in.stores.jobs.listOnly({id});
            if (listed.empty()) continue;
            jobs.push_back({std::move(listed.front()), day, in.stores.papers.ofJob(id)});
        }
        std::ranges::sort(jobs, {}, [](const HandedOver& one) { return std::tie(one.day, one.job.number); });
        return jobs;
    });
}

base::Result<bool> Book::hasHandedOver() {
    return m_in->read([&] { return m_in->stores.jobs.hasCollected(); });
}

} // namespace sp::db
