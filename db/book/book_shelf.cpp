// SPDX-License-Identifier: MIT
#include "core/needs/still_taken.h"
#include "db/book/action.h"
#include "db/book/shelf_state.h"
#include "db/records/record.h"

#include <algorithm>

namespace sp::db {

using base::Done;
using base::Id;
using base::Result;
using records::MoveKind;
using records::StockMove;

catalogue::Material Book::Inside::materialOf(const Id& id) {
    auto found = stores.materials.find(id);
    if (!found) throwError(Fault::MaterialGone, id.text());
    return std::move(*found);
}

void Book::Inside::addMove(StockMove move, std::optional<base::Message> what) {
    if (move.id.isNone()) move.id = newId();
    valueOrThrow(catalogue::fields::check(move));
    const auto stamp = record("make", std::move(what), {"movement", move.id, {}, records::write(move)});
    stores.stock.add(move, stamp);
}

Done Book::moveStock(const StockMove& move) {
    return m_in->write([&] {
        const auto moved = m_in->materialOf(move.material);
        if (move.job && m_in->rowOf(*move.job).number.empty()) throwError(Fault::NotGivenYet, "job");
        // Not among the checks of a record: books have such movements from before.
        if (move.job && move.kind == MoveKind::Returned && move.amount < 0)
            throwError(Fault::ReturnedForJob, "job", moved.name);
        auto made = move;
        made.id = m_in->newId();
        made.reverses.reset();
        valueOrThrow(catalogue::fields::check(made));
        const auto lying = m_in->stores.stock.onShelf(move.material);
        if (lying + move.amount < 0) throwError(Fault::NotOnShelf, moved.name, lying, moved.name);
        if (lying + move.amount > catalogue::fields::kCounts.highest)
            throwError(Fault::ShelfTooFull, moved.name, catalogue::fields::kCounts.highest, moved.name);
        m_in->addMove(std::move(made), base::say(Note::MovementOf, moved.name));
    });
}

Done Book::moveStock(const Id& material, std::int64_t amount, std::optional<units::Money> cost, std::string_view note) {
    return moveStock(
        {{}, material, amount, cost, std::string(note), {}, cost ? MoveKind::Bought : MoveKind::Counted, {}});
}

Result<std::int64_t> Book::countShelf(const Id& material, std::int64_t counted, std::string_view reason) {
    return m_in->write([&] {
        const auto known = m_in->materialOf(material);
        if (counted < 0 || counted > catalogue::fields::kCounts.highest)
            throwError(Fault::CountOutOfRange, known.name, known.name, catalogue::fields::kCounts.highest);
        const auto difference = counted - m_in->stores.stock.onShelf(material);
        if (difference != 0)
            m_in->addMove({{}, material, difference, {}, std::string(reason), {}, MoveKind::Counted, {}},
                          base::say(Note::MovementOf, known.name));
        return difference;
    });
}

Result<std::unordered_map<Id, std::int64_t>> Book::shelf() {
    return m_in->read([&] { return m_in->stores.stock.shelf(); });
}

Result<std::vector<StockMove>> Book::movesOf(const Id& material) {
    return m_in->read([&] { return m_in->stores.stock.ofMaterial(material); });
}

Result<std::unordered_map<Id, std::vector<needs::MaterialTake>>> Book::takenForOpenJobs() {
    return m_in->read([&] { return m_in->stores.stock.takenForOpenJobs(); });
}

Result<std::vector<Id>> Book::endedWithTaken(std::int64_t limit) {
    return m_in->read([&] { return m_in->stores.stock.endedWithTaken(limit); });
}

Result<std::unordered_map<Id, UsedOfMaterial>> Book::usedByDay() {
    return m_in->read([&] {
        std::unordered_map<Id, UsedOfMaterial> used;
        for (const auto& move : m_in->stores.stock.timed()) {
            const auto day = m_in->dayAt(move.at);
            auto& own = used.try_emplace(move.material, UsedOfMaterial{day, {}}).first->second;
            own.since = std::min(own.since, day);
            if (move.used == 0) continue;
            if (!own.uses.empty() && own.uses.back().day == day)
                own.uses.back().count += move.used;
            else
                own.uses.push_back({day, move.used});
        }
        return used;
    });
}

ShelfUse Book::Inside::useOf(const Quote& quote, Stage stage) {
    const auto shop = stores.shop.find().value();
    if (!quote.frozen || !isUsedBetween(quote.stage, stage, shop.usedWhen)) return {};
    layout::FitMemo fits;
    const auto work = benchWorkOf(quote.order, *quote.frozen, fits, stores.jobs.madeOfPlanned());
    if (work.whyNone) return {{}, {}, work.whyNone};
    const auto taken = stores.stock.takenFor(quote.id);
    const auto still = needs::stillTaken(work.takes, taken);
    std::unordered_map<Id, std::int64_t> shelf;
    for (const auto& take : still) shelf[take.material] = stores.stock.onShelf(take.material);
    auto split = needs::splitBy(still, shelf);
    return {std::move(split.there),
            std::move(split.lacks),
            {},
            needs::stillTaken(taken, work.takes),
            stage == Stage::InProduction};
}

Result<ShelfUse> Book::useAt(const Id& quote, Stage stage) {
    return m_in->read([&] {
        const auto row = m_in->rowOf(quote);
        ShelfUse kept;
        if (stage == Stage::Declined && row.stage != stage)
            for (const auto& take : m_in->stores.stock.takenFor(quote))
                if (take.count > 0) kept.stays.push_back(take);
        // A job with a damaged paper can still be let go: its paper is read only for what is used.
        if (row.number.empty() || !isUsedBetween(row.stage, stage, m_in->stores.shop.find().value().usedWhen))
            return kept;
        return m_in->useOf(m_in->wholeOf(quote), stage);
    });
}

void Book::Inside::bookUse(const Id& job, const ShelfUse& use) {
    for (const auto& take : use.used)
        addMove({{}, take.material, -take.count, {}, {}, {}, MoveKind::Used, job}, std::nullopt);
}

} // namespace sp::db
