// SPDX-License-Identifier: MIT
#include "db/stores/change_log.h"

#include "db/stores/record_store.h"

#include <vector>

namespace sp::db::stores {

using sqlite::Digest;

std::optional<Digest> ChangeLog::save(const Change& change, const std::string& json) {
    if (json.empty()) return std::nullopt;
    RecordStore records(m_db);
    return change.entity == "customer" ? records.saveSalted(json) : records.save(json);
}

std::int64_t ChangeLog::add(const base::Id& command, std::int64_t step, const std::string& at, const std::string& actor,
                            std::string_view kind, const Change& change) {
    auto before = newestDigest(change.entity, change.id);
    if (!before || change.before.empty() || !RecordStore(m_db).is(*before, change.before))
        before = save(change, change.before);
    const auto after = change.after == change.before ? before : save(change, change.after);
    auto row = m_db.query("INSERT INTO change (command_id, step, at, actor, kind, entity, entity_id, before, after) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING seq",
                          command, step, at, actor, kind, change.entity, change.id, before, after);
    std::int64_t seq = 0;
    while (row.step()) row >> seq;
    return seq;
}

std::optional<Digest> ChangeLog::newestDigest(std::string_view entity, const base::Id& id) {
    std::optional<Digest> digest;
    auto row =
        m_db.query("SELECT after FROM change WHERE entity = ? AND entity_id = ? ORDER BY seq DESC LIMIT 1", entity, id);
    if (row.step()) row >> digest;
    return digest;
}

std::string ChangeLog::newest(std::string_view entity, const base::Id& id) {
    const auto digest = newestDigest(entity, id);
    return digest ? RecordStore(m_db).find(*digest) : std::string();
}

void ChangeLog::erase(std::string_view entity, const base::Id& id, const std::string& at) {
    std::vector<Digest> said;
    {
        auto rows = m_db.query("SELECT before FROM change WHERE entity = ?1 AND entity_id = ?2 AND before IS NOT NULL "
                               "UNION SELECT after FROM change WHERE entity = ?1 AND entity_id = ?2 "
                               "AND after IS NOT NULL",
                               entity, id);
        while (rows.step()) rows >> said.emplace_back();
    }
    RecordStore records(m_db);
    for (const auto& digest : said) {
        if (records.isSalted(digest) || records.isErased(digest)) {
            records.erase(digest, at);
            continue;
        }
        // Of versions 1 and 2, without a salt: whoever guesses what it was could make sure by its digest.
        const auto other = records.saveErased(at);
        m_db.run("UPDATE change SET before = ?1 WHERE entity = ?2 AND entity_id = ?3 AND before = ?4", other, entity,
                 id, digest);
        m_db.run("UPDATE change SET after = ?1 WHERE entity = ?2 AND entity_id = ?3 AND after = ?4", other, entity, id,
                 digest);
        records.remove(digest);
    }
}

bool ChangeLog::has(const base::Id& command) {
    auto row = m_db.query("SELECT 1 FROM change WHERE command_id = ? LIMIT 1", command);
    return row.step();
}

std::optional<base::Id> ChangeLog::firstCommand() {
    auto row = m_db.query("SELECT command_id FROM change ORDER BY seq LIMIT 1");
    return row.step() ? std::optional(row.takeId()) : std::nullopt;
}

std::optional<base::Id> ChangeLog::commandAt(std::int64_t place) {
    auto row = m_db.query("SELECT command_id FROM change WHERE seq = ?", place);
    return row.step() ? std::optional(row.takeId()) : std::nullopt;
}

bool ChangeLog::hasErasedSince(std::int64_t place) {
    auto row = m_db.query("SELECT 1 FROM change WHERE seq > ? AND kind = 'erase' LIMIT 1", place);
    return row.step();
}

bool ChangeLog::endsWithErasing() {
    auto row = m_db.query("SELECT kind = 'erase' FROM change ORDER BY seq DESC LIMIT 1");
    return row.step() && row.takeInteger() != 0;
}

std::int64_t ChangeLog::newestPlace() {
    auto row = m_db.query("SELECT coalesce(max(seq), 0) FROM change");
    return row.step() ? row.takeInteger() : 0;
}

std::optional<std::string> ChangeLog::newestMoment() {
    auto row = m_db.query("SELECT at FROM change ORDER BY seq DESC LIMIT 1");
    return row.step() ? std::optional(row.takeText()) : std::nullopt;
}

} // namespace sp::db::stores
