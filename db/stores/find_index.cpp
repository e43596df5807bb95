// SPDX-License-Identifier: MIT
#include "db/stores/find_index.h"

#include "db/db_error.h"
#include "db/sqlite/transaction.h"
#include "db/stores/columns.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::db::stores {

namespace {

/// Of the tables below and of wordsOf: an index of another format is made anew.
constexpr std::int64_t kFormat = 2;
constexpr std::size_t kGroup = 3;           ///< letters
constexpr std::int64_t kMergedAtOnce = 500; ///< pages of the file

/// `found` holds the groups of letters alone; `said` the words themselves, by which what was found is looked at again.
/// `job` is small, so that what is chosen and sorted by no word is quick as well.
constexpr const char* kTables =
    "CREATE TABLE mark (only_row INTEGER PRIMARY KEY NOT NULL CHECK (only_row = 1), format INTEGER NOT NULL, "
    "book TEXT NOT NULL, change INTEGER NOT NULL, command BLOB NOT NULL) STRICT;"
    "CREATE TABLE job (place INTEGER PRIMARY KEY NOT NULL, id BLOB NOT NULL UNIQUE, number TEXT NOT NULL, "
    "day TEXT NOT NULL, customer TEXT NOT NULL, what TEXT NOT NULL, stage INTEGER NOT NULL, last_day TEXT, "
    "total INTEGER, unpaid INTEGER) STRICT;"
    "CREATE INDEX job_stage ON job (stage, place);"
    "CREATE INDEX job_unpaid ON job (place) WHERE unpaid IS NOT NULL;"
    "CREATE TABLE said (place INTEGER PRIMARY KEY NOT NULL, words TEXT NOT NULL) STRICT;"
    "CREATE VIRTUAL TABLE found USING fts5(words, content='', columnsize=0, detail=none, "
    "tokenize='trigram case_sensitive 1');";

/// Where the letters of a text begin.
std::vector<std::size_t> lettersOf(std::string_view text) {
    std::vector<std::size_t> starts;
    for (std::size_t i = 0; i < text.size(); ++i)
        if ((static_cast<unsigned char>(text[i]) & 0xC0) != 0x80) starts.push_back(i);
    return starts;
}

/// A group of letters as FTS5 reads it.
std::string quoted(std::string_view group) {
    std::string text = "\"";
    for (const char c : group) text += c == '"' ? std::string("\"\"") : std::string(1, c);
    return text + '"';
}

/// Groups that a text which holds this piece has, side by side; the last one ends with it.
void addGroups(std::vector<std::string>& groups, std::string_view piece) {
    auto starts = lettersOf(piece);
    const auto letters = starts.size();
    starts.push_back(piece.size());
    for (std::size_t i = 0; i + kGroup <= letters; i += kGroup)
        groups.push_back(quoted(piece.substr(starts[i], starts[i + kGroup] - starts[i])));
    if (letters > kGroup && letters % kGroup != 0) groups.push_back(quoted(piece.substr(starts[letters - kGroup])));
}

std::string matchOf(const std::vector<std::string>& pieces) {
    std::vector<std::string> groups;
    for (const auto& piece : pieces) addGroups(groups, piece);
    return fmt::format("({})", fmt::join(groups, " AND "));
}

std::string matchOf(const Needles& needles) {
    if (needles.sum.empty()) return matchOf(needles.words);
    return matchOf(needles.words) + " OR " + matchOf({needles.sum});
}

std::string_view columnOf(FoundBy by) {
    switch (by) {
    case FoundBy::Started: return "j.place";
    case FoundBy::Number: return "j.number";
    case FoundBy::Day: return "j.day";
    case FoundBy::Customer: return "j.customer";
    case FoundBy::What: return "j.what";
    case FoundBy::Stage: return "j.stage";
    case FoundBy::Total: return "j.total";
    case FoundBy::Left: return "j.unpaid";
    }
    return "j.place";
}

} // namespace

std::unique_ptr<FindIndex> FindIndex::open(const std::filesystem::path& file) {
    auto db = sqlite::Connection::open(file, sqlite::Access::Write);
    db->settle();
    db->run("PRAGMA synchronous = NORMAL"); // what a power cut takes of it is made anew
    db->shred();
    std::unique_ptr<FindIndex> index(new FindIndex(std::move(db)));
    index->mark();
    return index;
}

std::unique_ptr<FindIndex> FindIndex::make(const std::filesystem::path& file, std::stop_token stop) {
    auto db = sqlite::Connection::make(file);
    {
        auto row = db->query("PRAGMA journal_mode = OFF"); // it is thrown away where it is not finished
        while (row.step()) {}
    }
    db->run("PRAGMA synchronous = OFF");
    db->script(kTables);
    db->heed(std::move(stop));
    std::unique_ptr<FindIndex> index(new FindIndex(std::move(db)));
    index->m_db->run("INSERT INTO found (found, rank) VALUES ('hashsize', 16000000)");
    return index;
}

IndexMark FindIndex::mark() {
    auto row = m_db->query("SELECT format, book, change, command FROM mark");
    if (!row.step() || row.takeInteger() != kFormat)
        throwError(Fault::IndexDamaged, m_db->file().string(), m_db->file().filename().string());
    IndexMark mark;
    row >> mark.book >> mark.change >> mark.command;
    return mark;
}

void FindIndex::insert(const FoundJob& job) {
    m_db->run("INSERT INTO job (place, id, number, day, customer, what, stage, last_day, total, unpaid) "
              "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
              job.place, job.id, job.number, job.day, job.customer, job.what, static_cast<std::int64_t>(job.stage),
              job.lastDay, job.total, job.left);
    m_db->run("INSERT INTO said (place, words) VALUES (?, ?)", job.place, job.words);
    m_db->run("INSERT INTO found (rowid, words) VALUES (?, ?)", job.place, job.words);
}

void FindIndex::remove(const base::Id& job) {
    std::int64_t place = 0;
    std::string words;
    {
        auto row =
            m_db->query("SELECT s.place, s.words FROM job j JOIN said s ON s.place = j.place WHERE j.id = ?", job);
        if (!row.step()) return;
        place = row.takeInteger();
        words = row.takeRecord();
    }
    m_db->run("INSERT INTO found (found, rowid, words) VALUES ('delete', ?, ?)", place, words);
    m_db->run("DELETE FROM said WHERE place = ?", place);
    m_db->run("DELETE FROM job WHERE place = ?", place);
}

void FindIndex::put(const std::vector<FoundJob>& jobs, const std::vector<base::Id>& gone, const IndexMark& mark) {
    sqlite::Transaction transaction(*m_db);
    for (const auto& job : gone) remove(job);
    for (const auto& job : jobs) {
        remove(job.id);
        insert(job);
    }
    m_db->run("UPDATE mark SET change = ?, command = ?", mark.change, mark.command);
    transaction.commit();
}

void FindIndex::add(const std::vector<FoundJob>& jobs) {
    sqlite::Transaction transaction(*m_db);
    for (const auto& job : jobs) insert(job);
    transaction.commit();
}

void FindIndex::finish(const IndexMark& mark) {
    // One list of places for each group, in steps that can be stopped in between (sqlite.org/fts5.html, section 6.8).
    const auto changes = [&] {
        auto row = m_db->query("SELECT total_changes()");
        return row.step() ? row.takeInteger() : 0;
    };
    for (std::int64_t before = -2, pages = -kMergedAtOnce; changes() - before >= 2; pages = kMergedAtOnce) {
        before = changes();
        m_db->run("INSERT INTO found (found, rank) VALUES ('merge', ?)", pages);
    }
    m_db->run("INSERT INTO mark (only_row, format, book, change, command) VALUES (1, ?, ?, ?, ?)", kFormat, mark.book,
              mark.change, mark.command);
}

std::int64_t FindIndex::count() {
    auto row = m_db->query("SELECT count(*) FROM job");
    return row.step() ? row.takeInteger() : 0;
}

FindIndex::Asked FindIndex::asked(const Wanted& wanted, units::Date today, std::int64_t limit) {
    const auto needles = needlesOf(wanted.text);
    std::vector<std::string> conditions;
    Asked asked;
    std::string from = "job j";
    if (needles.isMarksAlone) conditions.emplace_back("FALSE");
    if (!needles.words.empty()) {
        from = "found f CROSS JOIN said s ON s.place = f.rowid CROSS JOIN job j ON j.place = f.rowid";
        conditions.emplace_back("f.found MATCH ?");
        asked.texts.push_back(matchOf(needles));
        std::string held;
        for (const auto& word : needles.words) {
            held += held.empty() ? "instr(s.words, ?) > 0" : " AND instr(s.words, ?) > 0";
            asked.texts.push_back(word);
        }
        if (!needles.sum.empty()) {
            held = fmt::format("({} OR instr(s.words, ?) > 0)", held);
            asked.texts.push_back(needles.sum);
        }
        conditions.push_back(held);
    }
    if (wanted.stage) conditions.push_back(fmt::format("j.stage = {}", static_cast<int>(*wanted.stage)));
    if (wanted.isLapsed)
        conditions.push_back(
            fmt::format("j.stage = {} AND j.last_day < '{}'", static_cast<int>(Stage::Quoted), today.iso()));
    if (wanted.isUnpaid) conditions.emplace_back("j.unpaid IS NOT NULL");
    if (wanted.from) conditions.push_back(fmt::format("j.day >= '{}'", wanted.from->iso()));
    if (wanted.to) conditions.push_back(fmt::format("j.day <= '{}'", wanted.to->iso()));
    // The place of the words, so that FTS5 reads them backwards and stops at the limit.
    const std::string_view place = needles.words.empty() ? "j.place" : "f.rowid";
    const bool isByPlace = wanted.by == FoundBy::Started;
    const auto order =
        fmt::format("{} {}", isByPlace ? place : columnOf(wanted.by), wanted.isAscending ? "ASC" : "DESC");
    asked.sql =
        fmt::format("SELECT j.id FROM {}{}{} ORDER BY {}{} LIMIT {}", from, conditions.empty() ? "" : " WHERE ",
                    fmt::join(conditions, " AND "), order, isByPlace ? "" : fmt::format(", {} DESC", place), limit);
    return asked;
}

std::vector<base::Id> FindIndex::find(const Wanted& wanted, units::Date today, std::int64_t limit) {
    const sqlite::ReadTransaction reading(*m_db);
    const auto statement = asked(wanted, today, limit);
    auto rows = m_db->query(statement.sql);
    for (const auto& text : statement.texts) rows.bind(text);
    std::vector<base::Id> jobs;
    while (rows.step()) rows >> jobs.emplace_back();
    return jobs;
}

std::vector<base::Id> FindIndex::findAsking(units::Date today) {
    static const std::string sql =
        fmt::format("SELECT id FROM job WHERE stage IN ({}, {}, {}) OR unpaid IS NOT NULL OR (stage = {} "
                    "AND last_day >= ?) ORDER BY place DESC",
                    static_cast<int>(Stage::Agreed), static_cast<int>(Stage::InProduction),
                    static_cast<int>(Stage::Ready), static_cast<int>(Stage::Quoted));
    const sqlite::ReadTransaction reading(*m_db);
    auto rows = m_db->query(sql, today);
    std::vector<base::Id> jobs;
    while (rows.step()) rows >> jobs.emplace_back();
    return jobs;
}

} // namespace sp::db::stores
