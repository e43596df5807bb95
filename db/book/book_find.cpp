// SPDX-License-Identifier: MIT
// Finding jobs: by the index of the book where there is one, else by looking through the book itself.
#include "db/book/action.h"
#include "db/book/book.h"
#include "db/book/files.h"
#include "db/book/inside.h"
#include "db/book/opening.h"
#include "db/stores/find_index.h"

#include <algorithm>
#include <limits>

namespace sp::db {

namespace fs = std::filesystem;
using base::Done;
using base::Result;
using stores::FindIndex;
using stores::FoundJob;
using stores::IndexMark;

namespace {

constexpr std::int64_t kMost = 10'000'000;
constexpr std::int64_t kReadAtOnce = 250;     ///< jobs; whoever writes the book waits no longer than for these
constexpr std::int64_t kCaughtUpAtOnce = 300; ///< changed jobs; with more the index is made anew

/// By the folder's own name: SQLite is told to follow no links.
fs::path indexFile(const fs::path& folder, const std::string& identity) {
    std::error_code error;
    const auto own = fs::weakly_canonical(folder, error);
    return (error ? folder : own) / (identity + ".find");
}

/// Takes an index away, its bytes too: they name people.
void shredIndex(const fs::path& file) {
    std::error_code ignored;
    const auto size = fs::file_size(file, ignored);
    if (!ignored && fs::is_regular_file(fs::symlink_status(file, ignored))) overwrite(file, size);
    for (const char* end : {"", "-journal"}) fs::remove(fs::path(file.string() + end), ignored);
}

IndexMark indexMarkOf(Stores& stores) {
    IndexMark mark{.book = identityOf(stores.log), .change = stores.log.newestPlace(), .command = {}};
    if (const auto command = stores.log.commandAt(mark.change)) mark.command = *command;
    return mark;
}

std::vector<FoundJob> readyFor(const std::vector<stores::ListedJob>& listed) {
    std::vector<FoundJob> jobs;
    jobs.reserve(listed.size());
    for (const auto& job : listed) jobs.push_back(stores::foundJob(job));
    return jobs;
}

/// Fills a new index with all jobs of a book, the oldest first.
void fillIndex(FindIndex& index, Stores& stores, const Watch& watch) {
    const auto all = std::max<std::int64_t>(1, stores.jobs.count());
    std::int64_t done = 0;
    for (std::int64_t place = 0;;) {
        const auto listed = stores.jobs.foundFrom(place, kReadAtOnce);
        index.add(readyFor(listed));
        done += static_cast<std::int64_t>(listed.size());
        if (watch.progress) watch.progress(static_cast<double>(std::min(done, all)) / static_cast<double>(all));
        if (static_cast<std::int64_t>(listed.size()) < kReadAtOnce) return;
        place = listed.back().place + 1;
    }
}

/// Looks through the newest jobs.
Found lookThrough(stores::JobStore& jobs, const Wanted& wanted, units::Date today) {
    struct Kept {
        FoundJob job;
        QuoteSummary summary;
    };
    const auto needles = stores::needlesOf(wanted.text);
    const bool isNewestFirst = wanted.by == FoundBy::Started && !wanted.isAscending;
    std::vector<Kept> kept;
    Found found;
    std::int64_t looked = 0;
    for (auto place = std::numeric_limits<std::int64_t>::max();;) {
        const auto many = std::min(kReadAtOnce, wanted.lookThrough - looked);
        auto listed = jobs.foundBefore(place, many);
        looked += static_cast<std::int64_t>(listed.size());
        if (!listed.empty()) place = listed.back().place;
        for (auto& one : listed) {
            auto job = stores::foundJob(one);
            if (stores::isWanted(job, wanted, needles, today)) kept.push_back({std::move(job), std::move(one.summary)});
        }
        if (isNewestFirst && static_cast<std::int64_t>(kept.size()) > wanted.limit) break;
        if (static_cast<std::int64_t>(listed.size()) < many) break;
        if (looked >= wanted.lookThrough) {
            found.isWhole = jobs.foundBefore(place, 1).empty();
            break;
        }
    }
    std::ranges::stable_sort(kept,
                             [&](const Kept& a, const Kept& b) { return stores::isShownBefore(a.job, b.job, wanted); });
    found.hasMore = static_cast<std::int64_t>(kept.size()) > wanted.limit;
    if (found.hasMore) kept.resize(static_cast<std::size_t>(wanted.limit));
    for (auto& one : kept) found.jobs.push_back(std::move(one.summary));
    return found;
}

} // namespace

FindIndex* Book::Inside::currentIndex() {
    if (environment.cacheFolder.empty() || depth > 0 || isIndexStale) return nullptr;
    const auto now = indexMarkOf(stores);
    if (!index) {
        const auto target = indexFile(environment.cacheFolder, now.book);
        std::error_code ignored;
        if (!fs::exists(target, ignored)) return nullptr;
        index = FindIndex::open(target);
    }
    const auto mark = index->mark();
    if (mark == now) return index.get();
    if (mark.book != now.book || stores.log.commandAt(mark.change) != mark.command) {
        index.reset(); // of a copy of this book, which may be open and go by it
        return nullptr;
    }
    if (stores.log.hasErasedSince(mark.change)) {
        forgetIndex();
        return nullptr;
    }
    const auto changed = stores.jobs.changedSince(mark.change, kCaughtUpAtOnce + 1);
    if (static_cast<std::int64_t>(changed.size()) > kCaughtUpAtOnce) {
        index.reset();
        isIndexStale = true;
        return nullptr;
    }
    std::vector<stores::ListedJob> listed;
    for (const auto& job : changed)
        if (auto one = stores.jobs.foundOne(job)) listed.push_back(std::move(*one));
    std::ranges::sort(listed, {}, &stores::ListedJob::place);
    index->put(readyFor(listed), changed, now);
    return index.get();
}

std::optional<std::vector<base::Id>> Book::Inside::askIndex(const IndexQuery& query) {
    try {
        auto* const current = currentIndex();
        if (!current) return std::nullopt;
        return query(*current);
    } catch (const DbError& refusal) {
        if (refusal.error().code == base::Code::Busy) return std::nullopt; // another program is at it
        index.reset();
        const auto damaged = indexFile(environment.cacheFolder, identityOf(stores.log));
        std::error_code ignored;
        for (const char* end : {"", "-journal"}) fs::remove(fs::path(damaged.string() + end), ignored);
        return std::nullopt;
    }
}

void Book::Inside::forgetIndex() {
    index.reset();
    isIndexStale = false;
    if (environment.cacheFolder.empty()) return;
    const auto file = indexFile(environment.cacheFolder, identityOf(stores.log));
    shredIndex(file);
    for (const auto& begun : unfinishedOf(file)) shredIndex(begun);
}

Result<Found> Book::find(const Wanted& wanted) {
    return m_in->read([&] {
        auto& jobs = m_in->stores.jobs;
        const auto today = m_in->environment.today();
        const auto asked = std::min(wanted.limit, kMost) + 1;
        Found found;
        if (wanted.isAll() && wanted.by == FoundBy::Started && !wanted.isAscending) {
            found.jobs = jobs.list(asked);
        } else if (const auto byIndex =
                       m_in->askIndex([&](FindIndex& index) { return index.find(wanted, today, asked); })) {
            found.jobs = jobs.listOnly(*byIndex);
        } else {
            found = lookThrough(jobs, wanted, today);
        }
        if (static_cast<std::int64_t>(found.jobs.size()) == asked) {
            found.hasMore = true;
            found.jobs.pop_back();
        }
        for (auto& job : found.jobs) job.isLapsed = catalogue::isLapsed(job.stage, job.lastDay, today);
        return found;
    });
}

Result<std::vector<QuoteSummary>> Book::quotes(std::string_view text, std::int64_t limit) {
    auto found = find({.text = std::string(text), .stage = {}, .limit = limit});
    if (!found) return base::fail(found.error());
    return std::move(found->jobs);
}

Result<std::optional<QuoteSummary>> Book::summary(const base::Id& quote) {
    return m_in->read([&]() -> std::optional<QuoteSummary> {
        auto jobs = m_in->stores.jobs.listOnly({quote});
        if (jobs.empty()) return std::nullopt;
        auto& job = jobs.front();
        job.isLapsed = catalogue::isLapsed(job.stage, job.lastDay, m_in->environment.today());
        return std::move(job);
    });
}

bool Book::wantsIndex() {
    if (m_in->environment.cacheFolder.empty()) return false;
    const auto has =
        m_in->read([&] { return m_in->askIndex([](FindIndex&) { return std::vector<base::Id>(); }).has_value(); });
    return has && !*has;
}

void Book::takeIndex() {
    m_in->index.reset();
    m_in->isIndexStale = false;
}

Done Book::makeIndex(const fs::path& file, const fs::path& folder, const Watch& watch) {
    return catchToResult([&] {
        const auto connection = openToRead(file);
        connection->heed(watch.stop);
        Stores stores(*connection);
        const auto mark = indexMarkOf(stores);
        makeOwnFolder(folder);
        const auto target = indexFile(folder, mark.book);
        const TempFile temp(target);
        try {
            temp.make([&] {
                const auto index = FindIndex::make(temp.file(), watch.stop);
                fillIndex(*index, stores, watch);
                index->finish(mark);
            });
            // Somebody may have been taken out of the book after they were read.
            if (stores.log.hasErasedSince(mark.change)) throwError(Fault::Stopped, file.string());
        } catch (...) {
            shredIndex(temp.file());
            throw;
        }
        std::error_code ignored;
        fs::remove(fs::path(target.string() + "-journal"), ignored); // of the one before, after a power cut
        temp.commit(IfThere::Replace);
    });
}

} // namespace sp::db
