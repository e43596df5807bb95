// SPDX-License-Identifier: MIT
#include "db/book/bench_queue.h"

#include "core/needs/still_taken.h"
#include "core/scheduling/messages.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace sp::db {

using base::fail;
using base::Result;

namespace {

Result<std::vector<QuoteSummary>> openJobs(Book& book) {
    std::vector<QuoteSummary> jobs;
    for (const auto stage : {Stage::InProduction, Stage::Agreed}) {
        Wanted wanted;
        wanted.stage = stage;
        auto found = book.find(wanted);
        if (!found) return fail(found.error());
        std::ranges::move(found->jobs, std::back_inserter(jobs));
    }
    std::ranges::sort(jobs, [](const QuoteSummary& a, const QuoteSummary& b) {
        if (a.wantedBy != b.wantedBy) return a.wantedBy && (!b.wantedBy || *a.wantedBy < *b.wantedBy);
        return std::pair(a.quotedOn, a.number) < std::pair(b.quotedOn, b.number);
    });
    return jobs;
}

} // namespace

Result<std::unordered_map<base::Id, std::int64_t>> leadDaysOf(Book& book) {
    const auto suppliers = book.suppliers();
    if (!suppliers) return fail(suppliers.error());
    const auto packs = book.packs();
    if (!packs) return fail(packs.error());
    std::unordered_map<base::Id, std::int64_t> days;
    std::unordered_map<base::Id, bool> isUsual;
    for (const auto& pack : *packs) {
        const auto supplier = std::ranges::find(*suppliers, pack.supplier, &catalogue::Supplier::id);
        if (supplier == suppliers->end() || supplier->leadDays == 0 || isUsual[pack.material]) continue;
        isUsual[pack.material] = pack.usual;
        const auto known = days.emplace(pack.material, supplier->leadDays).first;
        known->second = pack.usual ? supplier->leadDays : std::min(known->second, supplier->leadDays);
    }
    return days;
}

BenchWork benchWorkOf(const catalogue::Order& order, const catalogue::PriceBook& prices, layout::FitMemo& fits,
                      const needs::SetsThere& there) {
    BenchWork work;
    const auto needed = needs::workOf(order.lines, prices, fits, there);
    if (!needed) {
        work.whyNone = needed.error();
        return work;
    }
    work.time = needed->total;
    work.takes = needed->takes;
    for (const auto& line : order.lines)
        if (!line.isCharge()) work.pieces += line.quantity.value();
    return work;
}

std::size_t BenchQueue::firstUnknown() const {
    const auto found = std::ranges::find_if(entries, [](const auto& entry) { return entry.work.whyNone.has_value(); });
    return static_cast<std::size_t>(found - entries.begin());
}

std::unordered_map<base::Id, std::int64_t> BenchQueue::promised() const {
    std::unordered_map<base::Id, std::int64_t> promised;
    for (const auto& entry : entries)
        for (const auto& take : entry.work.takes) promised[take.material] += take.count;
    return promised;
}

Result<scheduling::BenchPlan> BenchQueue::plan() const {
    auto plan = scheduling::planOf(std::span(jobs).first(firstUnknown()), hours, today);
    if (plan) plan->ready.resize(jobs.size());
    return plan;
}

std::vector<std::optional<units::Date>> BenchQueue::starts(const std::vector<needs::MaterialTake>& asked) const {
    auto shelf = supplies;
    shelf.take(asked);
    std::vector<std::optional<units::Date>> days;
    for (const auto& entry : entries)
        days.push_back(entry.job.stage == Stage::InProduction ? std::nullopt : shelf.take(entry.work.takes));
    return days;
}

Result<BenchAnswer> BenchQueue::promise(const BenchWork& work, const std::optional<units::Date>& wantedBy) const {
    if (work.whyNone) return fail(*work.whyNone);
    if (const auto at = firstUnknown(); at < entries.size())
        return fail(scheduling::Fault::WorkNotKnown, "wantedBy", entries[at].job.number,
                    entries[at].work.whyNone->message());
    scheduling::AskedJob asked{work.time, wantedBy, {}, starts(work.takes)};
    auto shelf = supplies;
    std::vector<bool> isShort;
    for (std::size_t place = 0;; ++place) {
        asked.earliest.push_back(shelf.wait(work.takes));
        isShort.push_back(shelf.isShort(work.takes));
        if (place == entries.size()) break;
        if (entries[place].job.stage != Stage::InProduction) shelf.take(entries[place].work.takes);
    }
    auto promise = scheduling::promiseOf(jobs, asked, hours, today, today.plusDays(1));
    if (!promise) return fail(promise.error());
    const auto day = promise->isHeld ? *wantedBy : promise->first;
    std::size_t place = 0;
    while (place < jobs.size() && jobs[place].due && *jobs[place].due <= day) ++place;
    return BenchAnswer{std::move(*promise), asked.earliest[place], isShort[place]};
}

BenchQueue BenchQueue::without(const base::Id& job) const {
    auto others = *this;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (entries[i].job.id != job) continue;
        others.entries.erase(others.entries.begin() + static_cast<std::ptrdiff_t>(i));
        others.jobs.erase(others.jobs.begin() + static_cast<std::ptrdiff_t>(i));
        break;
    }
    const auto days = others.starts({});
    for (std::size_t i = 0; i < days.size(); ++i) others.jobs[i].earliest = days[i];
    return others;
}

Result<BenchEntry> BenchReader::entryOf(Book& book, QuoteSummary job, const needs::SetsThere& there) {
    const auto thereOf = [&there](const std::vector<base::Id>& designs) {
        std::vector<base::Id> found;
        std::ranges::copy_if(designs, std::back_inserter(found), [&](const auto& id) { return there.contains(id); });
        return found;
    };
    auto known = m_known.find(job.id);
    if (known == m_known.end() || known->second.number != job.number || known->second.choice != job.choiceTaken ||
        known->second.there != thereOf(known->second.designs)) {
        const auto quote = book.quote(job.id);
        if (!quote) return fail(quote.error());
        Known fresh{job.number, job.choiceTaken, {}, {}, {}};
        for (const auto& line : quote->order.lines)
            for (const auto& place : line.places)
                if (place.plannedPieces) fresh.designs.push_back(place.design);
        fresh.there = thereOf(fresh.designs);
        if (quote->frozen) fresh.work = benchWorkOf(quote->order, *quote->frozen, m_fits, there);
        known = m_known.insert_or_assign(job.id, std::move(fresh)).first;
    }
    BenchEntry entry{std::move(job), known->second.work, {}};
    if (entry.job.stage == Stage::Agreed && entry.job.left()) {
        const auto account = book.account(entry.job.id);
        if (!account) return fail(account.error());
        entry.depositLeft = account->depositLeft();
    }
    return entry;
}

Result<BenchQueue> BenchReader::read(Book& book) {
    const auto shop = book.shop();
    if (!shop) return fail(shop.error());
    auto shelf = book.shelf();
    if (!shelf) return fail(shelf.error());
    auto leadDays = leadDaysOf(book);
    if (!leadDays) return fail(leadDays.error());
    auto sets = book.setsThere();
    if (!sets) return fail(sets.error());
    const auto taken = book.takenForOpenJobs();
    if (!taken) return fail(taken.error());
    auto open = openJobs(book);
    if (!open) return fail(open.error());
    BenchQueue queue;
    queue.today = book.environment().today();
    queue.hours = {shop->benchWeek, shop->closedDays};
    queue.supplies = {{std::move(*shelf), std::move(*leadDays)}, queue.today};
    queue.sets = std::move(*sets);
    for (auto& job : *open) {
        auto entry = entryOf(book, std::move(job), queue.sets);
        if (!entry) return fail(entry.error());
        if (const auto own = taken->find(entry->job.id); own != taken->end())
            entry->work.takes = needs::stillTaken(entry->work.takes, own->second);
        if (entry->job.stage == Stage::InProduction) queue.supplies.take(entry->work.takes);
        queue.entries.push_back(std::move(*entry));
    }
    auto left = queue.supplies;
    for (auto& entry : queue.entries) {
        if (entry.job.stage == Stage::InProduction) continue;
        entry.isShort = left.isShort(entry.work.takes);
        left.take(entry.work.takes);
    }
    const auto days = queue.starts({});
    for (std::size_t i = 0; i < days.size(); ++i)
        queue.jobs.push_back({queue.entries[i].work.time, queue.entries[i].job.wantedBy, days[i]});
    return queue;
}

} // namespace sp::db
