// SPDX-License-Identifier: MIT
#include "db/stores/job_store.h"

#include "db/db_error.h"
#include "db/records/record.h"
#include "db/stores/record_store.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <vector>

namespace sp::db::stores {

using catalogue::Order;

namespace {

constexpr std::int64_t kFirstRevision = 1;

/// A row of the table for each place of a line, and one for a line without any. The first is called as the line is.
struct ListedLine {
    std::int64_t choice = 0;
    std::int64_t line = 0;
    std::int64_t place = 0;
    std::string title;
    base::Id design;
    base::Id baseMaterial;
    units::Count quantity;

    friend bool operator==(const ListedLine&, const ListedLine&) = default;
};

std::vector<ListedLine> listed(const Order& order) {
    std::vector<ListedLine> rows;
    std::int64_t number = -1;
    for (const auto& choice : catalogue::choicesOf(order)) {
        ++number;
        for (std::size_t i = 0; i < choice.lines.size(); ++i) {
            const auto& line = choice.lines[i];
            const auto count = std::max<std::size_t>(1, line.places.size());
            for (std::size_t place = 0; place < count; ++place)
                rows.push_back({number, static_cast<std::int64_t>(i), static_cast<std::int64_t>(place),
                                place == 0 ? line.title : line.places[place].title,
                                line.isCharge() ? base::Id() : line.places[place].design, line.baseMaterial,
                                line.quantity});
        }
    }
    return rows;
}

} // namespace

std::optional<JobRow> JobStore::find(const base::Id& id) {
    const sqlite::ReadTransaction reading(m_db);
    JobRow job;
    {
        auto row =
            m_db.query("SELECT j.id, j.number, j.stage, j.revision, j.row_version, r.order_digest, r.choice_taken, "
                       "j.revises_id, j.revises_revision "
                       "FROM job j JOIN revision r ON r.job_id = j.id AND r.number = j.revision "
                       "WHERE j.id = ? AND j.deleted_at IS NULL",
                       id);
        if (!row.step()) return std::nullopt;
        row >> job.id >> job.number >> job.stage >> job.revision >> job.version >> job.orderDigest >> job.choiceTaken;
        const auto revised = takeIdOrNone(row);
        std::optional<std::int64_t> revision;
        row >> revision;
        if (revision) job.revises = records::Revises{revised, *revision};
    }
    auto order = records::read<Order>(RecordStore(m_db).find(job.orderDigest));
    if (!order) throwDamaged(m_db, base::fail(order.error()));
    job.order = std::move(*order);
    return job;
}

std::optional<base::Id> JobStore::numbered(std::string_view number) {
    if (number.empty()) return std::nullopt;
    auto row = m_db.query("SELECT id FROM job WHERE number = ? AND number <> ''", number);
    if (!row.step()) return std::nullopt;
    return row.takeId();
}

std::optional<base::Id> JobStore::draftRevising(const records::Revises& revises) {
    auto row = m_db.query("SELECT id FROM job WHERE revises_id = ? AND revises_revision = ? AND stage = 'enquiry' "
                          "AND deleted_at IS NULL ORDER BY change_seq DESC, id DESC LIMIT 1",
                          revises.job, revises.revision);
    if (!row.step()) return std::nullopt;
    return row.takeId();
}

std::optional<RevisionRow> JobStore::revision(const base::Id& job, std::int64_t number) {
    RevisionRow revision{.number = number, .choiceTaken = {}, .orderDigest = {}, .order = {}};
    {
        auto row = m_db.query("SELECT r.order_digest, r.choice_taken FROM revision r JOIN job j ON j.id = r.job_id "
                              "WHERE r.job_id = ? AND r.number = ? AND j.deleted_at IS NULL",
                              job, number);
        if (!row.step()) return std::nullopt;
        row >> revision.orderDigest >> revision.choiceTaken;
    }
    auto order = records::read<Order>(RecordStore(m_db).find(revision.orderDigest));
    if (!order) throwDamaged(m_db, base::fail(order.error()));
    revision.order = std::move(*order);
    return revision;
}

std::optional<base::Id> JobStore::lastDraft() {
    auto row = m_db.query("SELECT id FROM job WHERE number = '' AND deleted_at IS NULL "
                          "ORDER BY change_seq DESC, id DESC LIMIT 1");
    if (!row.step()) return std::nullopt;
    return row.takeId();
}

std::vector<base::Id> JobStore::ofCustomer(const base::Id& customer) {
    std::vector<base::Id> jobs;
    auto rows = m_db.query("SELECT id FROM job WHERE customer_id = ? AND deleted_at IS NULL ORDER BY started_seq DESC",
                           customer);
    while (rows.step()) rows >> jobs.emplace_back();
    return jobs;
}

std::vector<base::Id> JobStore::draftsOf(const base::Id& customer) {
    std::vector<base::Id> drafts;
    auto rows = m_db.query(
        "SELECT id FROM job WHERE customer_id = ? AND number = '' AND deleted_at IS NULL ORDER BY started_seq",
        customer);
    while (rows.step()) drafts.push_back(rows.takeId());
    return drafts;
}

namespace {

/// What was invoiced for a job less what was credited; what its quote comes to, of several choices the one taken or the
/// lowest; and what it comes to, as Book::account has it. Then what was paid for it.
const std::string kBilled =
    "(SELECT sum(total_micros) FROM paper WHERE job_id = j.id AND kind IN ('invoice', 'credit'))";
const std::string kGiven = "coalesce((SELECT min(t.total_micros) FROM paper_choice t WHERE t.paper_id = p.id "
                           "AND t.choice = coalesce(r.choice_taken, t.choice)), p.total_micros)";
const std::string kComesTo =
    "(CASE WHEN " + kBilled + " IS NULL THEN " + kGiven +
    " WHEN j.stage IN ('agreed', 'making', 'ready', 'collected') AND NOT EXISTS (SELECT 1 FROM paper "
    "WHERE job_id = j.id AND kind = 'invoice' AND revision = j.revision) THEN max(" +
    kBilled + ", " + kGiven + ") ELSE " + kBilled + " END)";
const std::string kPaid = "(SELECT coalesce(sum(amount_micros), 0) FROM payment WHERE job_id = j.id)";

/// What summariesOf reads of a job: the lines and totals of the choice that the customer takes; while that is open, the
/// lines of the first and the totals of all.
const std::string kSummary =
    "j.id, j.number, j.stage, j.quoted_on, j.wanted_by, "
    "(SELECT substr(at, 1, 10) FROM change WHERE seq = j.change_seq), coalesce(c.name, ''), "
    "coalesce((SELECT title FROM job_line WHERE job_id = j.id AND revision = j.revision "
    "AND choice = coalesce(r.choice_taken, 0) AND line = 0 AND place = 0), ''), "
    "(SELECT count(*) FROM job_line WHERE job_id = j.id AND revision = j.revision "
    "AND choice = coalesce(r.choice_taken, 0) AND place = 0), "
    "(SELECT 1 + max(choice) FROM job_line WHERE job_id = j.id AND revision = j.revision), r.choice_taken, "
    "(SELECT max(t.total_micros) FROM paper_choice t WHERE t.paper_id = p.id "
    "AND t.choice = coalesce(r.choice_taken, t.choice)), p.until_on, " +
    kComesTo + ", " + kPaid + ", " + kBilled + ", coalesce((SELECT number FROM job WHERE id = j.revises_id), '')";
/// From where, of the jobs that were not removed.
const std::string kOfJobs = " FROM job j JOIN revision r ON r.job_id = j.id AND r.number = j.revision "
                            // As on the quote; may be merged into another since.
                            "LEFT JOIN customer named ON named.id = j.customer_id "
                            "LEFT JOIN customer c ON c.id = coalesce(named.merged_into_id, named.id) "
                            "LEFT JOIN paper p ON p.id = (SELECT id FROM paper WHERE job_id = j.id AND kind = 'quote' "
                            "ORDER BY revision DESC LIMIT 1) "
                            "WHERE j.deleted_at IS NULL ";
/// What a job is found by, one a line: texts, then amounts beside its own.
constexpr std::string_view kFoundBy =
    "j.started_seq, concat_lines(concat_lines(j.number, c.name, named.name, c.telephone, c.mail), "
    "(SELECT group_concat(title, char(10)) FROM job_line WHERE job_id = j.id), "
    "(SELECT group_concat(d.name, char(10)) FROM job_line l JOIN design d ON d.id = l.design_id WHERE l.job_id = "
    "j.id), "
    "(SELECT group_concat(kind || char(10) || note, char(10)) FROM payment WHERE job_id = j.id), "
    "(SELECT group_concat(number, char(10)) FROM paper WHERE job_id = j.id)), "
    "concat_lines((SELECT group_concat(amount_micros, char(10)) FROM payment WHERE job_id = j.id), "
    "(SELECT group_concat(total_micros, char(10)) FROM paper WHERE job_id = j.id), "
    "(SELECT group_concat(t.total_micros, char(10)) FROM paper_choice t WHERE t.paper_id = p.id))";

void takeSummary(sqlite::Statement& row, QuoteSummary& job) {
    std::optional<std::int64_t> choices;
    std::optional<units::Money> highest;
    std::optional<units::Money> billed;
    row >> job.id >> job.number >> job.stage >> job.quotedOn >> job.wantedBy >> job.stageSince >> job.customer >>
        job.firstTitle >> job.lines >> choices >> job.choiceTaken >> highest >> job.lastDay >> job.total >> job.paid >>
        billed >> job.revises;
    job.choices = std::max<std::int64_t>(1, choices.value_or(1));
    job.isInvoiced = billed && !billed->isZero();
    if (!billed && highest != job.total) job.highestTotal = highest;
}

std::vector<QuoteSummary> summariesOf(sqlite::Statement rows) {
    std::vector<QuoteSummary> list;
    while (rows.step()) takeSummary(rows, list.emplace_back());
    return list;
}

std::vector<ListedJob> listedOf(sqlite::Statement rows) {
    std::vector<ListedJob> list;
    while (rows.step()) {
        auto& job = list.emplace_back();
        takeSummary(rows, job.summary);
        job.place = rows.takeInteger();
        job.texts = rows.takeRecord();
        job.sums = rows.takeRecord();
    }
    return list;
}

const std::string& summaries() {
    static const std::string head = "SELECT " + kSummary + kOfJobs;
    return head;
}
const std::string& found() {
    static const std::string head = "SELECT " + kSummary + ", " + std::string(kFoundBy) + kOfJobs;
    return head;
}

} // namespace

std::vector<QuoteSummary> JobStore::list(std::int64_t limit) {
    static const std::string tail = "ORDER BY j.started_seq DESC LIMIT ?1";
    const sqlite::ReadTransaction reading(m_db);
    return summariesOf(m_db.query(summaries() + tail, limit));
}

std::vector<QuoteSummary> JobStore::listOnly(const std::vector<base::Id>& jobs) {
    static const std::string sql = summaries() + "AND j.id = ?1";
    const sqlite::ReadTransaction reading(m_db);
    std::vector<QuoteSummary> list;
    for (const auto& job : jobs)
        for (auto& summary : summariesOf(m_db.query(sql, job))) list.push_back(std::move(summary));
    return list;
}

std::vector<ListedJob> JobStore::foundBefore(std::int64_t place, std::int64_t limit) {
    static const std::string sql = found() + "AND j.started_seq < ?1 ORDER BY j.started_seq DESC LIMIT ?2";
    const sqlite::ReadTransaction reading(m_db);
    return listedOf(m_db.query(sql, place, limit));
}

std::vector<ListedJob> JobStore::foundFrom(std::int64_t place, std::int64_t limit) {
    static const std::string sql = found() + "AND j.started_seq >= ?1 ORDER BY j.started_seq LIMIT ?2";
    const sqlite::ReadTransaction reading(m_db);
    return listedOf(m_db.query(sql, place, limit));
}

std::optional<ListedJob> JobStore::foundOne(const base::Id& job) {
    static const std::string sql = found() + "AND j.id = ?1";
    const sqlite::ReadTransaction reading(m_db);
    auto one = listedOf(m_db.query(sql, job));
    return one.empty() ? std::nullopt : std::optional(std::move(one.front()));
}

std::vector<base::Id> JobStore::changedSince(std::int64_t place, std::int64_t limit) {
    std::vector<base::Id> jobs;
    auto rows = m_db.query("SELECT entity_id FROM change WHERE seq > ?1 AND entity IN ('quote', 'stage') "
                           "UNION SELECT job_id FROM payment WHERE change_seq > ?1 AND job_id IS NOT NULL "
                           "UNION SELECT p.job_id FROM change h JOIN paper p ON p.id = h.entity_id WHERE h.seq > ?1 "
                           "AND h.entity = 'paper' "
                           "UNION SELECT j.id FROM change h JOIN job j ON j.customer_id = h.entity_id "
                           "WHERE h.seq > ?1 AND h.entity = 'customer' "
                           "UNION SELECT j.id FROM change h JOIN customer m ON m.merged_into_id = h.entity_id "
                           "JOIN job j ON j.customer_id = m.id WHERE h.seq > ?1 AND h.entity = 'customer' "
                           "UNION SELECT l.job_id FROM change h JOIN job_line l ON l.design_id = h.entity_id "
                           "WHERE h.seq > ?1 AND h.entity = 'design' LIMIT ?2",
                           place, limit);
    while (rows.step()) rows >> jobs.emplace_back();
    return jobs;
}

std::vector<QuoteSummary> JobStore::listAsking(units::Date today) {
    // What is collected and paid is most of a book, and asks for nothing.
    static const std::string filter =
        "AND (j.stage IN ('agreed', 'making', 'ready') OR (j.stage = 'quoted' AND p.until_on >= ?1) "
        "OR (j.stage = 'collected' AND " +
        kPaid + " < " + kComesTo + ")) ORDER BY j.started_seq DESC";
    const sqlite::ReadTransaction reading(m_db);
    return summariesOf(m_db.query(summaries() + filter, today));
}

std::vector<base::Id> JobStore::collectedSince(std::string_view moment) {
    std::vector<base::Id> jobs;
    auto rows = m_db.query("SELECT j.id FROM job j JOIN change h ON h.seq = j.change_seq WHERE j.stage = 'collected' "
                           "AND j.deleted_at IS NULL AND h.at >= ? ORDER BY j.id",
                           moment);
    while (rows.step()) rows >> jobs.emplace_back();
    return jobs;
}

bool JobStore::hasCollected() {
    auto row = m_db.query("SELECT EXISTS(SELECT 1 FROM job WHERE stage = 'collected' AND deleted_at IS NULL)");
    return row.step() && row.takeInteger() != 0;
}

std::vector<StageChange> JobStore::stageChanges(const base::Id& job) {
    std::vector<std::pair<StageChange, sqlite::Digest>> rows;
    {
        auto row = m_db.query("SELECT kind, at, after FROM change WHERE entity = 'stage' AND entity_id = ? "
                              "AND after IS NOT NULL ORDER BY seq",
                              job);
        while (row.step()) {
            auto& [change, digest] = rows.emplace_back();
            row >> change.kind >> change.at >> digest;
        }
    }
    std::vector<StageChange> changes;
    for (auto& [change, digest] : rows) {
        auto mark = records::read<records::StageMark>(RecordStore(m_db).find(digest));
        if (!mark) throwDamaged(m_db, base::fail(mark.error()));
        change.after = *mark;
        changes.push_back(std::move(change));
    }
    return changes;
}

std::string JobStore::changedAt(const base::Id& job) {
    auto row = m_db.query("SELECT h.at FROM job j JOIN change h ON h.seq = j.change_seq WHERE j.id = ?", job);
    return row.step() ? row.takeText() : std::string();
}

std::vector<QuoteSummary> JobStore::listOf(const base::Id& customer) {
    static const std::string filter =
        "AND (j.customer_id = ?1 OR j.customer_id IN (SELECT id FROM customer WHERE merged_into_id = ?1)) "
        "ORDER BY j.started_seq DESC";
    const sqlite::ReadTransaction reading(m_db);
    return summariesOf(m_db.query(summaries() + filter, customer));
}

std::int64_t JobStore::count() {
    auto row = m_db.query("SELECT count(*) FROM job WHERE deleted_at IS NULL");
    return row.step() ? row.takeInteger() : 0;
}

void JobStore::write(const base::Id& id, const Order& order, const Stamp& stamp) {
    expectKnownStones(order);
    const auto digest = RecordStore(m_db).save(records::write(order));
    m_db.run("INSERT INTO job (id, started_seq, number, stage, customer_id, quoted_on, wanted_by, revision, "
             "row_version, change_seq) VALUES (?1, ?2, '', 'enquiry', ?3, ?4, ?5, ?6, 1, ?2) "
             "ON CONFLICT (id) DO UPDATE SET customer_id = excluded.customer_id, quoted_on = excluded.quoted_on, "
             "wanted_by = excluded.wanted_by, row_version = row_version + 1, change_seq = excluded.change_seq, "
             "deleted_at = NULL",
             id, stamp.seq, orNull(order.customer), order.quotedOn, order.wantedBy, kFirstRevision);
    m_db.run("INSERT INTO revision (job_id, number, order_digest) VALUES (?, ?, ?) "
             "ON CONFLICT (job_id, number) DO UPDATE SET order_digest = excluded.order_digest",
             id, kFirstRevision, digest);
    writeLines(id, kFirstRevision, order);
}

void JobStore::revise(const JobRow& job, const Order& order, const std::string& number, const Stamp& stamp) {
    expectKnownStones(order);
    const auto digest = RecordStore(m_db).save(records::write(order));
    const auto revision = job.revision + 1;
    m_db.run("INSERT INTO revision (job_id, number, order_digest) VALUES (?, ?, ?)", job.id, revision, digest);
    m_db.run("UPDATE job SET number = ?, revision = ?, customer_id = ?, quoted_on = ?, wanted_by = ?, "
             "row_version = row_version + 1, change_seq = ? WHERE id = ?",
             number, revision, orNull(order.customer), order.quotedOn, order.wantedBy, stamp.seq, job.id);
    writeLines(job.id, revision, order);
}

void JobStore::writeLines(const base::Id& id, std::int64_t revision, const Order& order) {
    m_db.run("DELETE FROM job_line WHERE job_id = ? AND revision = ?", id, revision);
    for (const auto& row : listed(order))
        m_db.run("INSERT INTO job_line (job_id, revision, choice, line, place, title, design_id, onto_id, quantity) "
                 "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                 id, revision, row.choice, row.line, row.place, row.title, orNull(row.design), orNull(row.baseMaterial),
                 row.quantity);
}

/// What the other columns refer to, SQLite looks for itself.
void JobStore::expectKnownStones(const Order& order) {
    std::set<base::Id> stones;
    for (const auto& choice : catalogue::choicesOf(order))
        for (const auto& line : choice.lines)
            for (const auto& place : line.places)
                for (const auto& stone : place.stones) stones.insert(stone.material);
    stones.erase(base::Id());
    for (const auto& stone : stones) {
        auto row = m_db.query("SELECT 1 FROM material WHERE id = ?", stone);
        if (!row.step()) throwError(Fault::OrderStoneUnknown, stone.text());
    }
}

void JobStore::expectColumns(const JobRow& job) {
    const auto& order = job.order;
    const auto expect = [&](bool holds) {
        if (!holds) throwError(Fault::OrderNotAsListed, job.number);
    };
    {
        auto row = m_db.query("SELECT customer_id, quoted_on, wanted_by FROM job WHERE id = ?", job.id);
        expect(row.step());
        const auto customer = takeIdOrNone(row);
        units::Date quotedOn;
        std::optional<units::Date> wantedBy;
        row >> quotedOn >> wantedBy;
        expect(customer == order.customer && quotedOn == order.quotedOn && wantedBy == order.wantedBy);
    }
    expect(areLinesOf(job.id, job.revision, order));
    if (job.choiceTaken)
        expect(!job.number.empty() && *job.choiceTaken < static_cast<std::int64_t>(choiceCount(order)));
    if (job.revises) expect(job.number.empty());
}

void JobStore::expectColumns(const base::Id& job, const RevisionRow& revision, const std::string& number) {
    const auto choices = static_cast<std::int64_t>(choiceCount(revision.order));
    if (!areLinesOf(job, revision.number, revision.order) || revision.choiceTaken.value_or(0) >= choices)
        throwError(Fault::OrderNotAsListed, number);
}

bool JobStore::areLinesOf(const base::Id& job, std::int64_t revision, const Order& order) {
    auto rows = m_db.query("SELECT choice, line, place, title, design_id, onto_id, quantity FROM job_line "
                           "WHERE job_id = ? AND revision = ? ORDER BY choice, line, place",
                           job, revision);
    std::vector<ListedLine> found;
    while (rows.step()) {
        auto& row = found.emplace_back();
        row.choice = rows.takeInteger();
        row.line = rows.takeInteger();
        row.place = rows.takeInteger();
        row.title = rows.takeText();
        row.design = takeIdOrNone(rows);
        row.baseMaterial = takeIdOrNone(rows);
        rows >> row.quantity;
    }
    return found == listed(order);
}

void JobStore::remove(const base::Id& id, const Stamp& stamp) { markRemoved(m_db, "job", id, stamp.seq, stamp.at); }

void JobStore::setMark(const base::Id& id, const records::StageMark& mark, const Stamp& stamp) {
    std::optional<base::Id> revised;
    std::optional<std::int64_t> revision;
    if (mark.revises) {
        revised = mark.revises->job;
        revision = mark.revises->revision;
    }
    m_db.run("UPDATE job SET stage = ?, revises_id = ?, revises_revision = ?, change_seq = ?, "
             "row_version = row_version + 1 WHERE id = ?",
             mark.stage, revised, revision, stamp.seq, id);
    m_db.run(
        "UPDATE revision SET choice_taken = ? WHERE job_id = ? AND number = (SELECT revision FROM job WHERE id = ?)",
        mark.choice, id, id);
}

void JobStore::setNumber(const base::Id& id, const std::string& number) {
    m_db.run("UPDATE job SET number = ? WHERE id = ?", number, id);
}

namespace {

/// The sum of the pieces sold; `which` says of which designs, and starts from them, for the index.
std::string soldOf(std::string_view which, std::string_view stages = "'agreed', 'making', 'ready', 'collected'") {
    return fmt::format("SELECT l.design_id, sum(l.quantity) FROM job_line l "
                       "JOIN job j ON j.id = l.job_id AND j.revision = l.revision "
                       "JOIN revision r ON r.job_id = l.job_id AND r.number = l.revision "
                       "WHERE l.design_id {} AND j.deleted_at IS NULL "
                       "AND j.stage IN ({}) "
                       "AND l.choice = coalesce(r.choice_taken, 0) GROUP BY l.design_id",
                       which, stages);
}

constexpr std::string_view kPlanned =
    "IN (SELECT id FROM design WHERE planned_pieces IS NOT NULL AND deleted_at IS NULL)";

} // namespace

std::unordered_map<base::Id, std::int64_t> JobStore::soldOfPlanned() {
    static const std::string sql = soldOf(kPlanned);
    std::unordered_map<base::Id, std::int64_t> pieces;
    auto rows = m_db.query(sql);
    while (rows.step()) {
        const auto design = rows.takeId();
        rows >> pieces[design];
    }
    return pieces;
}

std::unordered_set<base::Id> JobStore::madeOfPlanned() {
    static const std::string sql = soldOf(kPlanned, "'ready', 'collected'");
    std::unordered_set<base::Id> designs;
    auto rows = m_db.query(sql);
    while (rows.step()) designs.insert(rows.takeId());
    return designs;
}

std::int64_t JobStore::sold(const base::Id& design) {
    static const std::string sql = soldOf("= ?");
    auto row = m_db.query(sql, design);
    if (!row.step()) return 0;
    row.takeId();
    return row.takeInteger();
}

std::string JobStore::takeNumber(std::string_view series, int year) {
    auto row = m_db.query("INSERT INTO series (name, year, last_number) VALUES (?, ?, 1) "
                          "ON CONFLICT (name, year) DO UPDATE SET last_number = last_number + 1 RETURNING last_number",
                          series, year);
    std::int64_t number = 0;
    while (row.step()) row >> number;
    return fmt::format("{:04}-{:04}", year, number);
}

} // namespace sp::db::stores
