// SPDX-License-Identifier: MIT
#include "db/stores/paper_store.h"

#include "db/db_error.h"
#include "db/records/record.h"
#include "db/stores/record_store.h"

#include <algorithm>
#include <set>
#include <vector>

namespace sp::db::stores {

using catalogue::PriceBook;
using catalogue::PricedMaterial;
using records::PriceList;
using records::SealedPaper;
using records::SealedQuote;
using sqlite::Digest;

namespace {

/// Of versions 1 and 2, which held the order and the customer within.
bool isOfVersion2(const std::string& json) { return json.find(R"("kind":"sealed-quote")") < 40; }

} // namespace

void PaperStore::throwSealError(const std::string& number) const {
    throwError(Fault::SealBroken, number, number, m_db.file().filename().string());
}

std::string PaperStore::savePrices(const PriceBook& prices) {
    RecordStore records(m_db);
    std::vector<const PricedMaterial*> materials;
    for (const auto& [id, material] : prices.materials) materials.push_back(&material);
    std::sort(materials.begin(), materials.end(),
              [](const auto* a, const auto* b) { return a->material.id < b->material.id; });
    PriceList list{
        records.save(records::write(prices.shop)).hex, records.save(records::write(prices.bench)).hex, {}, {}};
    for (const auto* material : materials) list.materials.push_back(records.save(records::write(*material)).hex);
    for (const auto& [id, set] : prices.sets) list.sets.push_back(set);
    std::ranges::sort(list.sets, {}, &catalogue::DesignSet::design);
    return records.save(records::write(list)).hex;
}

Digest PaperStore::lastSeal() {
    Digest last;
    auto row = m_db.query("SELECT digest FROM seal ORDER BY place DESC LIMIT 1");
    if (row.step()) row >> last;
    return last;
}

void PaperStore::seal(const base::Id& paper, std::string_view kind, const std::string& json, const Digest& previous) {
    const auto digest = RecordStore(m_db).save(json);
    m_db.run("INSERT INTO seal (place, paper_id, kind, digest, previous_digest) "
             "VALUES ((SELECT coalesce(max(place), 0) + 1 FROM seal), ?, ?, ?, ?)",
             paper, kind, digest, previous);
}

std::string PaperStore::savePerson(const records::SealedPerson& person, const std::string& at) {
    RecordStore records(m_db);
    if (!person.customer && person.sheet.isErased) return records.saveErased(at).hex;
    return records.saveSalted(records::write(person)).hex;
}

PaperStore::Kept PaperStore::saveResult(records::PaperResult result, const std::optional<catalogue::Customer>& customer,
                                        const std::string& at) {
    RecordStore records(m_db);
    records::SealedPerson person{customer, std::exchange(result.sheet.customer, {})};
    Kept kept;
    if (person != records::SealedPerson{}) kept.person = savePerson(person, at);
    kept.result = records.save(records::write(result)).hex;
    return kept;
}

std::optional<records::SealedPerson> PaperStore::personOf(const std::string& digest) {
    if (digest.empty()) return std::nullopt;
    const auto json = RecordStore(m_db).find(Digest{digest});
    if (json.empty()) { // taken out
        records::SealedPerson person;
        person.sheet.isErased = true;
        return person;
    }
    return valueOrThrow(records::read<records::SealedPerson>(json));
}

records::PaperResult PaperStore::resultOf(const std::string& digest,
                                          const std::optional<records::SealedPerson>& person) {
    auto result = valueOrThrow(records::read<records::PaperResult>(RecordStore(m_db).find(Digest{digest})));
    if (person) result.sheet.customer = person->sheet;
    return result;
}

void PaperStore::issue(const Issue& issue, const PriceBook& prices, records::PaperResult result) {
    m_db.run("INSERT INTO paper (id, job_id, revision, kind, series, number, issued_on, until_on, total_micros, "
             "result) VALUES (?, ?, ?, 'quote', 'quote', ?, ?, ?, ?, 'sealed')",
             issue.id, issue.job, issue.revision, issue.number, issue.issuedOn, issue.until, issue.total);
    writeChoices(issue.id, result);
    const auto kept = saveResult(std::move(result), prices.customer, issue.issuedAt);
    const SealedPaper paper{.paper = issue.id,
                            .job = issue.job,
                            .revision = issue.revision,
                            .kind = "quote",
                            .number = issue.number,
                            .issuedAt = issue.issuedAt,
                            .until = issue.until,
                            .total = issue.total,
                            .order = issue.order.hex,
                            .prices = savePrices(prices),
                            .person = kept.person,
                            .result = kept.result,
                            .previous = lastSeal().hex};
    seal(issue.id, "paper", records::write(paper), Digest{paper.previous});
}

std::vector<units::Money> PaperStore::totalsOf(const records::PaperResult& result) {
    std::vector<units::Money> totals;
    if (result.others.empty()) return totals;
    for (const auto& other : result.others) totals.push_back(other.total);
    totals.insert(totals.begin() + result.sheet.choice, result.figures.total);
    return totals;
}

void PaperStore::writeChoices(const base::Id& paper, const records::PaperResult& result) {
    std::int64_t choice = 0;
    for (const auto total : totalsOf(result))
        m_db.run("INSERT INTO paper_choice (paper_id, choice, total_micros) VALUES (?, ?, ?)", paper, choice++, total);
}

std::vector<base::Id> PaperStore::withoutResult(std::int64_t limit) {
    std::vector<base::Id> jobs;
    auto rows =
        m_db.query("SELECT job_id FROM paper WHERE result = 'open' AND revision = (SELECT revision FROM job WHERE id = "
                   "job_id) ORDER BY issued_on DESC, id DESC LIMIT ?",
                   limit);
    while (rows.step()) rows >> jobs.emplace_back();
    return jobs;
}

void PaperStore::sealResult(const base::Id& job, const std::string& at, records::PaperResult result) {
    const auto paper = quoteOf(job);
    if (!paper) throwSealError({});
    const auto kept = saveResult(std::move(result), paper->customer, at);
    const records::SealedResult sealed{.paper = paper->id,
                                       .seal = paper->seal.hex,
                                       .sealedAt = at,
                                       .person = kept.person,
                                       .result = kept.result,
                                       .previous = lastSeal().hex};
    seal(paper->id, "result", records::write(sealed), Digest{sealed.previous});
    m_db.run("UPDATE paper SET result = 'sealed' WHERE id = ?", paper->id);
}

void PaperStore::loseResult(const base::Id& job) {
    m_db.run("UPDATE paper SET result = 'lost' WHERE job_id = ? AND result = 'open'", job);
}

void PaperStore::readLaterResult(IssuedPaper& paper) {
    Digest digest;
    Digest previous;
    {
        auto row =
            m_db.query("SELECT digest, previous_digest FROM seal WHERE paper_id = ? AND kind = 'result'", paper.id);
        if (!row.step()) return;
        row >> digest >> previous;
    }
    const auto sealed = valueOrThrow(records::read<records::SealedResult>(RecordStore(m_db).find(digest)));
    if (sealed.paper != paper.id || sealed.seal != paper.seal.hex || sealed.previous != previous.hex)
        throwSealError(paper.number);
    paper.result = resultOf(sealed.result, personOf(sealed.person));
}

std::optional<IssuedPaper> PaperStore::quoteOf(const base::Id& job) {
    base::Id paper;
    {
        auto row =
            m_db.query("SELECT id FROM paper WHERE job_id = ? AND kind = 'quote' ORDER BY revision DESC LIMIT 1", job);
        if (!row.step()) return std::nullopt;
        row >> paper;
    }
    return find(paper);
}

namespace {

const std::string kGivenRow =
    "SELECT id, job_id, revision, number, issued_on, "
    "iif(EXISTS (SELECT 1 FROM paper_choice c WHERE c.paper_id = paper.id), NULL, total_micros) FROM paper ";

std::vector<GivenRow> givenRowsOf(sqlite::Statement rows) {
    std::vector<GivenRow> list;
    while (rows.step()) {
        auto& given = list.emplace_back();
        rows >> given.paper >> given.job >> given.revision >> given.number >> given.issuedOn >> given.total;
    }
    return list;
}

} // namespace

std::vector<GivenRow> PaperStore::quotesOf(const base::Id& job) {
    static const std::string sql = kGivenRow + "WHERE job_id = ? AND kind = 'quote' ORDER BY revision, id";
    return givenRowsOf(m_db.query(sql, job));
}

std::optional<GivenRow> PaperStore::quoteNumbered(std::string_view number) {
    static const std::string sql = kGivenRow + "WHERE series = 'quote' AND number = ? AND kind = 'quote'";
    const auto found = givenRowsOf(m_db.query(sql, number));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

std::optional<IssuedPaper> PaperStore::find(const base::Id& id) {
    base::Id job;
    std::int64_t revision = 0;
    std::string number;
    units::Money total;
    Digest digest;
    Digest previous;
    {
        auto row = m_db.query("SELECT p.job_id, p.revision, p.number, p.total_micros, s.digest, s.previous_digest "
                              "FROM paper p JOIN seal s ON s.paper_id = p.id AND s.kind = 'paper' WHERE p.id = ?",
                              id);
        if (!row.step()) return std::nullopt;
        row >> job >> revision >> number >> total >> digest >> previous;
    }
    const auto json = RecordStore(m_db).findWhole(digest);
    if (!json) throwSealError(number);
    // Of one that held the person within, what was left of it; that the chain holds is seen by the digests.
    auto paper = read(number, json->empty() ? restOf(id, number) : *json);
    if (json->empty()) paper.previous = previous.hex;
    if (paper.id != id || paper.job != job || paper.revision != revision || paper.number != number ||
        paper.total != total || paper.previous != previous.hex)
        throwSealError(number);
    paper.seal = digest;
    if (!paper.result) readLaterResult(paper);
    if (paper.result && paper.result->figures.total != paper.total) throwSealError(number);
    if (paper.result && (paper.result->sheet.choice != paper.order.choice ||
                         paper.result->sheet.others.size() != paper.order.others.size() ||
                         paper.result->others.size() != paper.order.others.size()))
        throwSealError(number);
    return paper;
}

IssuedPaper PaperStore::read(const std::string& number, const std::string& json) {
    if (isOfVersion2(json)) {
        auto sealed = records::read<SealedQuote>(json);
        if (!sealed) throwSealError(number);
        return {.id = sealed->quote,
                .job = sealed->quote,
                .revision = 1,
                .number = sealed->number,
                .issuedAt = sealed->issuedAt,
                .until = sealed->validUntil,
                .total = sealed->total,
                .order = std::move(sealed->order),
                .customer = std::move(sealed->customer),
                .prices = sealed->prices,
                .seal = {},
                .previous = sealed->previous,
                .result = {}};
    }
    RecordStore records(m_db);
    auto sealed = records::read<SealedPaper>(json);
    if (!sealed) throwSealError(number);
    auto order = records::read<catalogue::Order>(records.find(Digest{sealed->order}));
    if (!order) throwSealError(number);
    const auto person = personOf(sealed->person);
    return {.id = sealed->paper,
            .job = sealed->job,
            .revision = sealed->revision,
            .number = sealed->number,
            .issuedAt = sealed->issuedAt,
            .until = sealed->until,
            .total = sealed->total,
            .order = std::move(*order),
            .customer = person ? person->customer : std::nullopt,
            .prices = sealed->prices,
            .seal = {},
            .previous = sealed->previous,
            .result = sealed->result.empty() ? std::nullopt : std::optional(resultOf(sealed->result, person))};
}

std::string PaperStore::restOf(const base::Id& paper, const std::string& number) {
    Digest digest;
    Digest previous;
    {
        auto row = m_db.query("SELECT digest, previous_digest FROM seal WHERE paper_id = ? AND kind = 'rest'", paper);
        if (!row.step()) throwSealError(number);
        row >> digest >> previous;
    }
    auto json = RecordStore(m_db).find(digest);
    const auto rest = records::read<SealedPaper>(json);
    if (!rest || rest->previous != previous.hex) throwSealError(number);
    return json;
}

std::int64_t PaperStore::erasePersons(const base::Id& customer, const std::string& at) {
    // A job of several revisions may have been somebody else's before.
    struct Seal {
        base::Id paper;
        Digest digest;
        bool isTheirs = false;
    };
    std::vector<Seal> seals;
    {
        auto rows = m_db.query("SELECT s.paper_id, s.digest, j.customer_id IS ?1 FROM seal s "
                               "JOIN paper p ON p.id = s.paper_id JOIN job j ON j.id = p.job_id "
                               "WHERE j.customer_id = ?1 OR j.revision > 1 ORDER BY s.place",
                               customer);
        while (rows.step()) {
            auto& seal = seals.emplace_back();
            rows >> seal.paper >> seal.digest >> seal.isTheirs;
        }
    }
    RecordStore records(m_db);
    std::set<base::Id> papers;
    for (const auto& seal : seals) {
        const auto json = records.find(seal.digest);
        if (json.empty()) continue;
        if (isOfVersion2(json)) {
            const auto sealed = valueOrThrow(records::read<SealedQuote>(json));
            if (sealed.customer ? sealed.customer->id != customer : !seal.isTheirs) continue;
            sealRest(seal.paper, at);
            records.erase(seal.digest, at);
            papers.insert(seal.paper);
            continue;
        }
        const auto digest = personIn(json);
        const auto person = records.isErased(Digest{digest}) ? std::nullopt : personOf(digest);
        if (!person || (person->customer ? person->customer->id != customer : !seal.isTheirs)) continue;
        records.erase(Digest{digest}, at);
        papers.insert(seal.paper);
    }
    return static_cast<std::int64_t>(papers.size());
}

std::int64_t PaperStore::ofJob(const base::Id& job) {
    auto row = m_db.query("SELECT count(*) FROM paper WHERE job_id = ?", job);
    return row.step() ? row.takeInteger() : 0;
}

std::int64_t PaperStore::countOf(const base::Id& customer) {
    auto row = m_db.query("SELECT count(*) FROM paper p JOIN job j ON j.id = p.job_id WHERE j.customer_id = ?1 "
                          "OR j.customer_id IN (SELECT id FROM customer WHERE merged_into_id = ?1)",
                          customer);
    return row.step() ? row.takeInteger() : 0;
}

/// The digest of the person that a seal names.
std::string PaperStore::personIn(const std::string& json) {
    if (const auto paper = records::read<SealedPaper>(json)) return paper->person;
    return valueOrThrow(records::read<records::SealedResult>(json)).person;
}

/// A paper of versions 1 and 2 held the person within: all else of it is sealed anew, behind the newest seal.
void PaperStore::sealRest(const base::Id& id, const std::string& at) {
    const auto paper = find(id).value();
    std::int64_t revision = 1;
    {
        auto row = m_db.query("SELECT revision FROM paper WHERE id = ?", id);
        if (row.step()) row >> revision;
    }
    RecordStore records(m_db);
    const SealedPaper rest{.paper = id,
                           .job = paper.job,
                           .revision = revision,
                           .kind = "quote",
                           .number = paper.number,
                           .issuedAt = paper.issuedAt,
                           .until = paper.until,
                           .total = paper.total,
                           .order = records.save(records::write(paper.order)).hex,
                           .prices = paper.prices,
                           .person = records.saveErased(at).hex,
                           .result = {},
                           .previous = lastSeal().hex};
    seal(id, "rest", records::write(rest), Digest{rest.previous});
}

void PaperStore::expectColumns(const IssuedPaper& paper) {
    auto row = m_db.query("SELECT kind, series, issued_on, until_on, result FROM paper WHERE id = ?", paper.id);
    if (!row.step()) throwSealError(paper.number);
    const auto kind = row.takeText();
    const auto series = row.takeText();
    units::Date issuedOn;
    std::optional<units::Date> until;
    row >> issuedOn >> until;
    const auto result = row.takeText();
    if (kind != "quote" || series != "quote" || issuedOn != paper.order.quotedOn || until != paper.until ||
        (paper.result ? result != "sealed" : result != "open" && result != "lost"))
        throwSealError(paper.number);
    std::vector<units::Money> totals;
    auto choices =
        m_db.query("SELECT choice, total_micros FROM paper_choice WHERE paper_id = ? ORDER BY choice", paper.id);
    while (choices.step()) {
        if (choices.takeInteger() != static_cast<std::int64_t>(totals.size())) throwSealError(paper.number);
        choices >> totals.emplace_back();
    }
    if (totals != (paper.result ? totalsOf(*paper.result) : std::vector<units::Money>{})) throwSealError(paper.number);
}

PriceBook PaperStore::prices(const std::string& digest) {
    RecordStore records(m_db);
    const auto list = valueOrThrow(records::read<PriceList>(records.find(Digest{digest})));
    PriceBook book;
    book.shop = valueOrThrow(records::read<catalogue::Shop>(records.find(Digest{list.shop})));
    book.bench = valueOrThrow(records::read<catalogue::BenchStandards>(records.find(Digest{list.bench})));
    for (const auto& material : list.materials) {
        auto priced = valueOrThrow(records::read<PricedMaterial>(records.find(Digest{material})));
        book.materials.emplace(priced.material.id, std::move(priced));
    }
    for (const auto& set : list.sets) book.sets.emplace(set.design, set);
    return book;
}

} // namespace sp::db::stores
