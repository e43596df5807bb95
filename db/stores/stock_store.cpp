// SPDX-License-Identifier: MIT
#include "db/stores/stock_store.h"

#include "db/records/record.h"

#include <algorithm>
#include <map>
#include <unordered_set>
#include <utility>
#include <vector>

namespace sp::db::stores {

using records::MoveKind;
using records::StockMove;
using units::Fraction;
using units::Money;
using units::UnitPrice;

namespace {

StockMove takeMove(sqlite::Statement& row) {
    StockMove move;
    row >> move.id >> move.material >> move.amount >> move.cost >> move.note >> move.reverses >> move.kind >> move.job;
    return move;
}

/// Where the movements are that stand: no reversals, and nothing that a standing reversal takes back. A reversal may be
/// reversed in turn. Later ones are looked at first, since only a later movement reverses.
std::vector<std::size_t> standing(const std::vector<StockMove>& moves) {
    std::unordered_set<base::Id> takenBack;
    std::vector<std::size_t> standing;
    for (auto at = moves.size(); at-- > 0;) {
        const auto& move = moves[at];
        if (takenBack.contains(move.id)) continue;
        if (move.reverses)
            takenBack.insert(*move.reverses);
        else
            standing.push_back(at);
    }
    return {standing.rbegin(), standing.rend()};
}

bool isUse(MoveKind kind) { return kind == MoveKind::Used || kind == MoveKind::Lost || kind == MoveKind::Spoiled; }

} // namespace

std::optional<StockMove> StockStore::find(const base::Id& id) {
    auto row = m_db.query(
        "SELECT id, material_id, amount, cost_micros, note, reverses, kind, job_id FROM stock_move WHERE id = ?", id);
    if (!row.step()) return std::nullopt;
    StockMove move = takeMove(row);
    throwDamaged(m_db, catalogue::fields::check(move));
    return move;
}

std::vector<StockMove> StockStore::all() {
    auto row = m_db.query("SELECT id, material_id, amount, cost_micros, note, reverses, kind, job_id FROM stock_move "
                          "ORDER BY change_seq");
    std::vector<StockMove> moves;
    while (row.step()) {
        moves.push_back(takeMove(row));
        throwDamaged(m_db, catalogue::fields::check(moves.back()));
    }
    return moves;
}

void StockStore::add(const StockMove& move, const Stamp& stamp) {
    m_db.run("INSERT INTO stock_move (id, change_seq, material_id, amount, cost_micros, note, reverses, kind, job_id) "
             "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
             move.id, stamp.seq, move.material, move.amount, move.cost, move.note, move.reverses, move.kind, move.job);
}

std::vector<StockStore::TimedUse> StockStore::timed() {
    std::vector<StockMove> moves;
    std::vector<TimedUse> uses;
    auto rows = m_db.query("SELECT move.id, move.material_id, move.amount, move.cost_micros, move.note, move.reverses, "
                           "move.kind, move.job_id, change.at "
                           "FROM stock_move AS move JOIN change ON change.seq = move.change_seq ORDER BY change.seq");
    while (rows.step()) {
        moves.push_back(takeMove(rows));
        TimedUse use;
        use.material = moves.back().material;
        rows >> use.at;
        uses.push_back(std::move(use));
    }
    std::map<std::pair<base::Id, base::Id>, std::vector<std::size_t>> usedFor; // by job and material, what is left
    for (const auto at : standing(moves)) {
        const auto& move = moves[at];
        if (isUse(move.kind)) uses[at].used = std::max<std::int64_t>(0, -move.amount);
        if (!move.job) continue;
        auto& used = usedFor[{*move.job, move.material}];
        if (move.kind == MoveKind::Used) used.push_back(at);
        if (move.kind != MoveKind::Returned) continue;
        for (auto back = move.amount; back > 0 && !used.empty();) {
            auto& latest = uses[used.back()].used;
            const auto taken = std::min(back, latest);
            latest -= taken;
            back -= taken;
            if (latest == 0) used.pop_back();
        }
    }
    return uses;
}

std::int64_t StockStore::onShelf(const base::Id& material) {
    auto row = m_db.query("SELECT coalesce(sum(amount), 0) FROM stock_move WHERE material_id = ?", material);
    return row.step() ? row.takeInteger() : 0;
}

std::unordered_map<base::Id, std::int64_t> StockStore::shelf() {
    std::unordered_map<base::Id, std::int64_t> shelf;
    auto rows = m_db.query("SELECT material_id, sum(amount) FROM stock_move GROUP BY material_id ORDER BY material_id");
    while (rows.step()) {
        const auto material = rows.takeId();
        shelf[material] = rows.takeInteger();
    }
    return shelf;
}

std::vector<base::Id> StockStore::keysFor(const base::Id& job) {
    std::vector<base::Id> keys;
    auto rows = m_db.query("SELECT id FROM stock_move WHERE job_id = ? ORDER BY change_seq", job);
    while (rows.step()) keys.push_back(rows.takeId());
    return keys;
}

std::vector<needs::MaterialTake> StockStore::takenFor(const base::Id& job) {
    std::vector<needs::MaterialTake> taken;
    auto rows =
        m_db.query("SELECT material_id, -sum(amount) FROM stock_move WHERE job_id = ? AND kind IN ('used', 'returned') "
                   "GROUP BY material_id ORDER BY material_id",
                   job);
    while (rows.step()) {
        const auto material = rows.takeId();
        taken.push_back({material, rows.takeInteger()});
    }
    return taken;
}

std::vector<base::Id> StockStore::endedWithTaken(std::int64_t limit) {
    std::vector<base::Id> jobs;
    auto rows = m_db.query("SELECT move.job_id FROM job JOIN stock_move AS move ON move.job_id = job.id "
                           "WHERE job.stage IN ('let-go', 'collected') AND job.deleted_at IS NULL AND move.job_id IN ("
                           "SELECT job_id FROM stock_move WHERE kind IN ('used', 'returned') AND job_id IS NOT NULL "
                           "GROUP BY job_id, material_id HAVING sum(amount) < 0) "
                           "GROUP BY move.job_id ORDER BY max(move.change_seq) DESC LIMIT ?",
                           limit);
    while (rows.step()) jobs.push_back(rows.takeId());
    return jobs;
}

std::unordered_map<base::Id, std::vector<needs::MaterialTake>> StockStore::takenForOpenJobs() {
    std::unordered_map<base::Id, std::vector<needs::MaterialTake>> taken;
    auto rows = m_db.query("SELECT move.job_id, move.material_id, -sum(move.amount) "
                           "FROM job JOIN stock_move AS move ON move.job_id = job.id "
                           "WHERE job.stage IN ('agreed', 'making') AND job.deleted_at IS NULL "
                           "AND move.kind IN ('used', 'returned') "
                           "GROUP BY move.job_id, move.material_id ORDER BY move.job_id, move.material_id");
    while (rows.step()) {
        const auto job = rows.takeId();
        const auto material = rows.takeId();
        taken[job].push_back({material, rows.takeInteger()});
    }
    return taken;
}

std::vector<StockMove> StockStore::ofMaterial(const base::Id& material) {
    std::vector<StockMove> moves;
    auto rows = m_db.query("SELECT id, material_id, amount, cost_micros, note, reverses, kind, job_id FROM stock_move "
                           "WHERE material_id = ? ORDER BY change_seq",
                           material);
    while (rows.step()) moves.push_back(takeMove(rows));
    return moves;
}

std::optional<UnitPrice> StockStore::average(const base::Id& material) {
    const auto moves = ofMaterial(material);
    std::int64_t lying = 0;
    std::optional<UnitPrice> average;
    for (const auto at : standing(moves)) {
        const auto& move = moves[at];
        if (lying <= 0 && (move.cost || move.kind == MoveKind::Bought)) average.reset();
        if (move.cost && move.amount > 0) {
            const Money value = average ? Money::fromExact(average->each() * Fraction::of(lying)) : Money();
            average = UnitPrice{value + *move.cost, units::Count::of((average ? lying : 0) + move.amount)};
        }
        lying += move.amount;
    }
    return lying > 0 ? average : std::nullopt;
}

} // namespace sp::db::stores
