// SPDX-License-Identifier: MIT
#pragma once

#include "core/needs/order_work.h"
#include "core/units/unit_price.h"
#include "db/stores/columns.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace sp::db::stores {

/// The ledger of the shelf. Movements are added, never changed. A movement that reverses another counts in the sum
/// but, with the one it takes back, not in the average.
class StockStore {
  public:
    explicit StockStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<records::StockMove> find(const base::Id& id);
    /// In the order in which they were booked, as all lists of this.
    std::vector<records::StockMove> all();
    std::vector<records::StockMove> ofMaterial(const base::Id& material);
    void add(const records::StockMove& move, const Stamp& stamp);
    /// When things moved, and how many of them were used, lost or spoiled for good, never below 0. What was taken back
    /// is not used, and neither is its taking back; what came back from a job was not used by its latest movements,
    /// the newest first.
    struct TimedUse {
        base::Id material;
        std::string at; ///< as the log writes it
        std::int64_t used = 0;
    };
    std::vector<TimedUse> timed();
    std::int64_t onShelf(const base::Id& material);
    std::unordered_map<base::Id, std::int64_t> shelf();
    /// The keys of all that was booked for a job.
    std::vector<base::Id> keysFor(const base::Id& job);
    /// What was used for a job less what came back from it, by material; sorted by key. What was lost or spoiled with
    /// it is not what it takes.
    std::vector<needs::MaterialTake> takenFor(const base::Id& job);
    /// The jobs that were let go or collected and for which more was taken than came back; the one with the newest
    /// movement first, at most `limit`.
    std::vector<base::Id> endedWithTaken(std::int64_t limit);
    /// The same as takenFor of every job that is agreed or being made and has any.
    std::unordered_map<base::Id, std::vector<needs::MaterialTake>> takenForOpenJobs();

    /// The moving average of what lies on the shelf. A receipt with a cost joins what lies there, which is first
    /// valued at the average so far, rounded once to the micro-unit, halves to even; the new average is the sum of
    /// both over all things, kept as that ratio. What goes out, and what comes in without a cost, leaves the average
    /// as it is: what is found or comes back after the shelf was empty is worth what was there last. What is bought
    /// onto an empty shelf, or one that held nothing with a cost, starts anew. Nothing when the shelf is empty or no
    /// cost is known.
    std::optional<units::UnitPrice> average(const base::Id& material);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
