// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "db/records/quote_summary.h"
#include "db/records/values.h"
#include "db/sqlite/digest.h"
#include "db/stores/columns.h"
#include "db/stores/found_job.h"

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace sp::db::stores {

/// A job without its papers, with the order of its newest revision.
struct JobRow {
    base::Id id;
    std::string number; ///< of its newest quote; empty for a draft
    Stage stage = Stage::Enquiry;
    std::optional<std::int64_t> choiceTaken; ///< from 0; of its order's choices the one that the customer takes
    std::optional<records::Revises> revises; ///< of a draft alone
    std::int64_t revision = 1;
    sqlite::Digest orderDigest;
    catalogue::Order order;
    std::int64_t version = 0;

    records::StageMark mark() const { return {stage, choiceTaken, revises}; }
};

/// One revision of a job.
struct RevisionRow {
    std::int64_t number = 1; ///< from 1
    std::optional<std::int64_t> choiceTaken;
    sqlite::Digest orderDigest;
    catalogue::Order order;
};

/// A row of the change log about how far a job is.
struct StageChange {
    std::string kind; ///< "change", "undo", "redo"
    std::string at;   ///< UTC
    records::StageMark after;
};

/// Jobs, their revisions and the numbers they are given. An order is a record; beside it lie the columns by which jobs
/// are listed and searched. Throws DbError; writes no change log.
class JobStore {
  public:
    explicit JobStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<JobRow> find(const base::Id& id);
    std::optional<base::Id> numbered(std::string_view number);
    /// The draft that was written last.
    std::optional<base::Id> lastDraft();
    /// All that name this entry, the newest first.
    std::vector<base::Id> ofCustomer(const base::Id& customer);
    std::vector<base::Id> draftsOf(const base::Id& customer);
    /// The newest draft that is to revise the job as it is in that revision, and was not let go.
    std::optional<base::Id> draftRevising(const records::Revises& revises);
    /// Of a job that was not removed.
    std::optional<RevisionRow> revision(const base::Id& job, std::int64_t number);
    /// All that were not removed, drafts too.
    std::int64_t count();
    /// Newest first.
    std::vector<QuoteSummary> list(std::int64_t limit);
    /// These, in this order; without those that are not there or were removed.
    std::vector<QuoteSummary> listOnly(const std::vector<base::Id>& jobs);
    /// At most `limit` of those that were started before that place, the newest first; with what they are found by.
    std::vector<ListedJob> foundBefore(std::int64_t place, std::int64_t limit);
    /// The same from that place on, the oldest first.
    std::vector<ListedJob> foundFrom(std::int64_t place, std::int64_t limit);
    /// One of them; none where it is not there or was removed.
    std::optional<ListedJob> foundOne(const base::Id& job);
    /// Those that are found by something else since that place in the change log, removed ones too; at most `limit`.
    std::vector<base::Id> changedSince(std::int64_t place, std::int64_t limit);
    /// The given ones that may ask for something: neither let go, nor lapsed before today, nor collected and paid.
    /// Newest first.
    std::vector<QuoteSummary> listAsking(units::Date today);
    /// The collected ones that were changed last at that moment (UTC) or later, by their keys.
    std::vector<base::Id> collectedSince(std::string_view moment);
    /// Whether any is collected.
    bool hasCollected();
    /// All that was done to how far a job is, the first first.
    std::vector<StageChange> stageChanges(const base::Id& job);
    /// When its row was written last, UTC.
    std::string changedAt(const base::Id& job);
    /// Those of a customer and of what was merged into it, the newest first.
    std::vector<QuoteSummary> listOf(const base::Id& customer);

    /// A new draft, or the next version of the order of one that was there. Throws Invalid when the order names
    /// something that is not in the book.
    void write(const base::Id& id, const catalogue::Order& order, const Stamp& stamp);
    /// The next revision of a given job, under its number; it is the newest then. No choice of it is taken. Throws as
    /// write.
    void revise(const JobRow& job, const catalogue::Order& order, const std::string& number, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);
    /// Writes how far the job is; the choice taken is one of its newest revision's.
    void setMark(const base::Id& id, const records::StageMark& mark, const Stamp& stamp);
    void setNumber(const base::Id& id, const std::string& number);
    /// How many pieces were sold of a design, place by place: those of jobs that are agreed, and of those after.
    std::int64_t sold(const base::Id& design);
    /// Of each design with planned pieces, where any are.
    std::unordered_map<base::Id, std::int64_t> soldOfPlanned();
    /// The designs with planned pieces of which some are made: those of jobs that are ready, or collected.
    std::unordered_set<base::Id> madeOfPlanned();
    /// The next number of that series and year; takes it.
    std::string takeNumber(std::string_view series, int year);

    /// Throws Damaged when the columns beside an order do not say what it says.
    void expectColumns(const JobRow& job);
    /// The same of an earlier revision; `number` is its quote's.
    void expectColumns(const base::Id& job, const RevisionRow& revision, const std::string& number);

  private:
    void writeLines(const base::Id& id, std::int64_t revision, const catalogue::Order& order);
    void expectKnownStones(const catalogue::Order& order);
    bool areLinesOf(const base::Id& job, std::int64_t revision, const catalogue::Order& order);

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
