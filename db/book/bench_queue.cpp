// SPDX-License-Identifier: MIT
#include "db/book/bench_queue.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace sp::db {

using base::fail;
using base::Result;

namespace {

/// The lead time of the supplier of the usual pack, else the shortest there is.
Result<std::unordered_map<base::Id, std::int64_t>> leadDaysOf(Book& book) {
    const auto suppliers = book.suppliers();
    if (!suppliers) return fail(suppliers.error());
    const auto packs = book.packs();
    if (!packs) return fail(packs.error());
    std::unordered_map<base::Id, std::int64_t> days;
    std::unordered_map<base::Id, bool> isUsual;
    for (const auto& pack : *packs) {
        const auto supplier = std::ranges::find(*suppliers, pack.supplier, &catalogue::Supplier::id);
        if (supplier == suppliers->end() || isUsual[pack.material]) continue;
        isUsual[pack.material] = pack.usual;
        const auto known = days.emplace(pack.material, supplier->leadDays).first;
        known->second = pack.usual ? supplier->leadDays : std::min(known->second, supplier->leadDays);
    }
    return days;
}

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

BenchWork benchWorkOf(const catalogue::Order& order, const catalogue::PriceBook& prices, layout::FitMemo& fits) {
    BenchWork work;
    const auto needed = needs::workOf(order.lines, prices, fits);
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

Result<scheduling::Promise> BenchQueue::promise(const BenchWork& work,
                                                const std::optional<units::Date>& wantedBy) const {
    if (work.whyNone) return fail(*work.whyNone);
    for (const auto& entry : entries)
        if (entry.work.whyNone) return fail(*entry.work.whyNone);
    return scheduling::promiseOf(jobs, {work.time, wantedBy, supplies.wait(work.takes)}, hours, today);
}

BenchQueue BenchQueue::without(const base::Id& job) const {
    auto others = *this;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (entries[i].job.id != job) continue;
        others.entries.erase(others.entries.begin() + static_cast<std::ptrdiff_t>(i));
        others.jobs.erase(others.jobs.begin() + static_cast<std::ptrdiff_t>(i));
        break;
    }
    return others;
}

Result<BenchEntry> BenchReader::entryOf(Book& book, QuoteSummary job) {
    auto known = m_known.find(job.id);
    if (known == m_known.end() || known->second.number != job.number || known->second.choice != job.choiceTaken) {
        const auto quote = book.quote(job.id);
        if (!quote) return fail(quote.error());
        Known fresh{job.number, job.choiceTaken, {}};
        if (quote->frozen) fresh.work = benchWorkOf(quote->order, *quote->frozen, m_fits);
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
    auto open = openJobs(book);
    if (!open) return fail(open.error());
    BenchQueue queue;
    queue.today = book.environment().today();
    queue.hours = {shop->benchWeek, shop->closedDays};
    queue.supplies = {{std::move(*shelf), std::move(*leadDays)}, queue.today};
    for (auto& job : *open) {
        auto entry = entryOf(book, std::move(job));
        if (!entry) return fail(entry.error());
        const bool isBegun = entry->job.stage == Stage::InProduction;
        queue.jobs.push_back(
            {entry->work.time, entry->job.wantedBy, isBegun ? std::nullopt : queue.supplies.take(entry->work.takes)});
        queue.entries.push_back(std::move(*entry));
    }
    return queue;
}

} // namespace sp::db
