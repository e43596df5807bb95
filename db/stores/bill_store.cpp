// SPDX-License-Identifier: MIT
#include "db/stores/bill_store.h"

#include "db/db_error.h"
#include "db/records/record.h"
#include "db/stores/record_store.h"

namespace sp::db::stores {

using catalogue::PaperKind;
using records::SealedPaper;
using sqlite::Digest;

std::string_view prefixOf(PaperKind kind) {
    switch (kind) {
    case PaperKind::Quote: return "";
    case PaperKind::Invoice: return "I-";
    case PaperKind::Receipt: return "R-";
    case PaperKind::Credit: return "C-";
    }
    return "";
}

void BillStore::throwSealError(const std::string& number) const {
    throwError(Fault::BillDamaged, number, number, m_db.file().filename().string());
}

SealedPaper BillStore::prepare(const Issue& issue, records::BillResult result) {
    RecordStore records(m_db);
    const records::SealedPerson person{issue.customer, std::exchange(result.sheet.customer, {})};
    SealedPaper paper{.paper = issue.id,
                      .job = issue.job,
                      .revision = issue.revision,
                      .kind = std::string(catalogue::fields::wordOf(issue.kind)),
                      .number = issue.number,
                      .issuedAt = issue.issuedAt,
                      .until = issue.due,
                      .total = issue.total,
                      .order = issue.order.hex,
                      .prices = issue.prices,
                      .person = {},
                      .result = records.save(records::write(result)).hex,
                      .previous = m_papers.lastSeal().hex};
    if (person != records::SealedPerson{}) paper.person = m_papers.savePerson(person, issue.issuedAt);
    return paper;
}

void BillStore::issue(const SealedPaper& paper, units::Date day) {
    m_db.run("INSERT INTO paper (id, job_id, revision, kind, series, number, issued_on, until_on, total_micros, "
             "result) VALUES (?1, ?2, ?3, ?4, ?4, ?5, ?6, ?7, ?8, 'sealed')",
             paper.paper, paper.job, paper.revision, paper.kind, paper.number, day, paper.until, paper.total);
    m_papers.seal(paper.paper, "paper", records::write(paper), Digest{paper.previous});
}

std::vector<IssuedBill> BillStore::ofJob(const base::Id& job) {
    std::vector<base::Id> ids;
    {
        auto rows = m_db.query("SELECT p.id FROM paper p JOIN seal s ON s.paper_id = p.id AND s.kind = 'paper' "
                               "WHERE p.job_id = ? AND p.kind <> 'quote' ORDER BY s.place",
                               job);
        while (rows.step()) rows >> ids.emplace_back();
    }
    std::vector<IssuedBill> bills;
    for (const auto& id : ids)
        if (auto bill = find(id)) bills.push_back(std::move(*bill));
    return bills;
}

std::vector<base::Id> BillStore::issuedIn(units::Date from, units::Date to) {
    std::vector<base::Id> ids;
    auto rows = m_db.query("SELECT p.id FROM paper p JOIN seal s ON s.paper_id = p.id AND s.kind = 'paper' "
                           "WHERE p.kind IN ('invoice', 'credit') AND p.issued_on BETWEEN ? AND ? ORDER BY s.place",
                           from, to);
    while (rows.step()) rows >> ids.emplace_back();
    return ids;
}

std::optional<units::Money> BillStore::billedOf(const base::Id& job) {
    std::optional<units::Money> sum;
    auto row =
        m_db.query("SELECT sum(total_micros) FROM paper WHERE job_id = ? AND kind IN ('invoice', 'credit')", job);
    if (row.step()) row >> sum;
    return sum;
}

bool BillStore::isInvoiced(const base::Id& job, std::int64_t revision) {
    auto row = m_db.query("SELECT 1 FROM paper WHERE job_id = ? AND kind = 'invoice' AND revision = ?", job, revision);
    return row.step();
}

std::optional<base::Id> BillStore::numbered(std::string_view number) {
    auto row = m_db.query("SELECT id FROM paper WHERE number = ? AND series <> 'quote' ORDER BY series, id", number);
    if (!row.step()) return std::nullopt;
    return row.takeId();
}

std::optional<IssuedBill> BillStore::find(const base::Id& id) {
    std::string number;
    Digest digest;
    Digest previous;
    {
        auto row = m_db.query("SELECT p.number, s.digest, s.previous_digest FROM paper p "
                              "JOIN seal s ON s.paper_id = p.id AND s.kind = 'paper' "
                              "WHERE p.id = ? AND p.kind <> 'quote'",
                              id);
        if (!row.step()) return std::nullopt;
        row >> number >> digest >> previous;
    }
    RecordStore records(m_db);
    const auto json = records.findWhole(digest);
    if (!json) throwSealError(number);
    const auto sealed = records::read<SealedPaper>(*json);
    if (!sealed) throwSealError(number);
    const auto kind = catalogue::fields::namedBy<PaperKind>(sealed->kind);
    auto result = records::read<records::BillResult>(records.find(Digest{sealed->result}));
    if (!kind || !result || sealed->paper != id || sealed->number != number || sealed->previous != previous.hex)
        throwSealError(number);
    if (const auto person = m_papers.personOf(sealed->person)) result->sheet.customer = person->sheet;
    IssuedBill bill{.id = id,
                    .job = sealed->job,
                    .revision = sealed->revision,
                    .kind = *kind,
                    .number = number,
                    .issuedAt = sealed->issuedAt,
                    .due = sealed->until,
                    .total = sealed->total,
                    .result = std::move(*result)};
    const auto whole = pricing::wholeOf(bill.result.parts);
    if (bill.kind != PaperKind::Receipt && bill.total != (bill.kind == PaperKind::Credit ? -whole : whole))
        throwSealError(number);
    return bill;
}

void BillStore::expectColumns(const IssuedBill& bill) {
    auto row = m_db.query("SELECT job_id, revision, kind, series, issued_on, until_on, total_micros, result "
                          "FROM paper WHERE id = ?",
                          bill.id);
    if (!row.step()) throwSealError(bill.number);
    const auto job = row.takeId();
    const auto revision = row.takeInteger();
    const auto kind = row.takeText();
    const auto series = row.takeText();
    units::Date issuedOn;
    std::optional<units::Date> until;
    units::Money total;
    row >> issuedOn >> until >> total;
    const auto result = row.takeText();
    if (job != bill.job || revision != bill.revision || kind != catalogue::fields::wordOf(bill.kind) ||
        series != kind || issuedOn != bill.result.day || until != bill.due || total != bill.total || result != "sealed")
        throwSealError(bill.number);
}

} // namespace sp::db::stores
