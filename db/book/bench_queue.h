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

/// The work of an order, at those prices; a set with planned pieces that is not among those there is made with it.
BenchWork benchWorkOf(const catalogue::Order& order, const catalogue::PriceBook& prices, layout::FitMemo& fits,
                      const needs::SetsThere& there = {});

/// What the bench says of an order that it does not have yet.
struct BenchAnswer {
    scheduling::Promise promise;
    std::optional<units::Date> suppliesBy = {}; ///< the day on which what it lacks can be here
    bool isShort = false; ///< it lacks something of which nobody knows when it comes; the promise is without it
};

/// A job that is agreed or being made.
struct BenchEntry {
    QuoteSummary job;
    BenchWork work;                ///< what it takes without what was taken off the shelf for it
    units::Money depositLeft = {}; ///< of one that is agreed; it is planned as if that came today
    bool isShort = false; ///< it lacks something of which nobody knows when it comes, and is planned as if it were here
};

/// All of them, in the order in which they are made: by the day they are wanted, those without one last, of equals
/// the one that was given first.
struct BenchQueue {
    units::Date today;
    scheduling::BenchHours hours;
    std::vector<BenchEntry> entries;
    std::vector<scheduling::BenchJob> jobs; ///< the same, for the plan
    scheduling::SupplyWait supplies;        ///< the shelf without what is being made takes
    needs::SetsThere sets;                  ///< that are cut: of jobs that are ready or collected

    /// The first of them whose work is not known: when it and those after it are ready is not known either. Their
    /// number where there is none.
    std::size_t firstUnknown() const;
    /// What all of them still take together of each material, as far as that is known.
    std::unordered_map<base::Id, std::int64_t> promised() const;
    /// What the plan of the queue is, as far as it is known. Errors: as scheduling::planOf.
    base::Result<scheduling::BenchPlan> plan() const;
    /// For an order that is not among them: what can be promised when it is agreed to today and stands in the queue by
    /// the day it is wanted. What is left of today is not counted on, for nobody knows what is done of it. Errors: why
    /// its work is not known; WorkNotKnown of one of them; as scheduling::promiseOf.
    base::Result<BenchAnswer> promise(const BenchWork& work, const std::optional<units::Date>& wantedBy) const;
    /// The same queue without that job.
    BenchQueue without(const base::Id& job) const;

  private:
    friend class BenchReader;
    /// When each can be begun, the shelf being given out in their order, after `asked` has taken what it needs.
    std::vector<std::optional<units::Date>> starts(const std::vector<needs::MaterialTake>& asked) const;
};

/// By material the lead time of the supplier of its usual pack, else the shortest there is, in days. A supplier without
/// lead days is one of whom nothing is known. Errors: the book's.
base::Result<std::unordered_map<base::Id, std::int64_t>> leadDaysOf(Book& book);

/// Reads the queue, and remembers the work of quotes that were given: it does not change. What was
/// taken off the shelf for a job it does not take again. Of the rest, a job that is being made takes what it needs
/// first; the others take what is left in the order of the queue. A supplier without lead days is one of whom nothing
/// is known.
class BenchReader {
  public:
    /// Errors: the book's.
    base::Result<BenchQueue> read(Book& book);

  private:
    struct Known {
        std::string number;
        std::optional<std::int64_t> choice;
        std::vector<base::Id> there; ///< of its designs, those whose sets were there then
        std::vector<base::Id> designs;
        BenchWork work;
    };

    base::Result<BenchEntry> entryOf(Book& book, QuoteSummary job, const needs::SetsThere& there);

    std::unordered_map<base::Id, Known> m_known;
    layout::FitMemo m_fits;
};

} // namespace sp::db
