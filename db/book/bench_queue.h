// SPDX-License-Identifier: MIT
#pragma once

#include "core/scheduling/bench_plan.h"
#include "core/scheduling/supplies.h"
#include "db/book/book.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

// What is to be made, as the bench makes it.
namespace sp::db {

/// What the bench has to do for an order.
struct BenchWork {
    units::Duration time;                    ///< with its spares, by the standards of its prices
    std::vector<needs::MaterialTake> takes;  ///< of materials
    std::int64_t pieces = 0;                 ///< handed over
    std::optional<base::Error> whyNone = {}; ///< why that cannot be worked out; then all of it is nothing
};

/// The work of an order, at those prices.
BenchWork benchWorkOf(const catalogue::Order& order, const catalogue::PriceBook& prices, layout::FitMemo& fits);

/// A job that is agreed or being made.
struct BenchEntry {
    QuoteSummary job;
    BenchWork work;
    units::Money depositLeft = {}; ///< of one that is agreed; it is planned as if that came today
};

/// All of them, in the order in which they are made: by the day they are wanted, those without one last, of equals
/// the one that was given first.
struct BenchQueue {
    units::Date today;
    scheduling::BenchHours hours;
    std::vector<BenchEntry> entries;
    std::vector<scheduling::BenchJob> jobs; ///< the same, for the plan
    scheduling::SupplyWait supplies;        ///< what they leave of the shelf

    /// What the plan of the queue is. Errors: as scheduling::planOf.
    base::Result<scheduling::BenchPlan> plan() const { return scheduling::planOf(jobs, hours, today); }
    /// For an order that is not among them: what can be promised. `wantedBy` as the order has it. Errors: why its work
    /// or that of one of them is not known; as scheduling::promiseOf.
    base::Result<scheduling::Promise> promise(const BenchWork& work, const std::optional<units::Date>& wantedBy) const;
    /// The same queue without that job; its supplies stay taken.
    BenchQueue without(const base::Id& job) const;
};

/// Reads the queue, and remembers the work of quotes that were given: it does not change. A job that is being made has
/// its supplies, the others take what is on the shelf in the order of the queue.
class BenchReader {
  public:
    /// Errors: the book's.
    base::Result<BenchQueue> read(Book& book);

  private:
    struct Known {
        std::string number;
        std::optional<std::int64_t> choice;
        BenchWork work;
    };

    base::Result<BenchEntry> entryOf(Book& book, QuoteSummary job);

    std::unordered_map<base::Id, Known> m_known;
    layout::FitMemo m_fits;
};

} // namespace sp::db
