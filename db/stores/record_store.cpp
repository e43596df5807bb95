// SPDX-License-Identifier: MIT
#include "db/stores/record_store.h"

#include "db/db_error.h"

#include <optional>
#include <unistd.h>

namespace sp::db::stores {

using sqlite::Digest;

namespace {

constexpr std::size_t kSaltSize = 16;

/// A record as it lies there.
struct Row {
    std::string salt;
    std::string json;
    bool isErased = false;

    static Row take(sqlite::Statement& row) {
        Row taken;
        taken.salt = row.takeBytes();
        taken.json = row.takeRecord();
        std::optional<std::string> erasedAt;
        row >> erasedAt;
        taken.isErased = erasedAt.has_value();
        return taken;
    }
    bool matches(const Digest& digest) const {
        return isErased ? salt.empty() && json.empty() : sqlite::digestOf(salt + json) == digest;
    }
};

} // namespace

void RecordStore::throwRecordError() const {
    throwError(Fault::RecordDamaged, m_db.file().string(), m_db.file().filename().string());
}

Digest RecordStore::save(const std::string& json) {
    if (json.size() > sqlite::kLongestRecord)
        throwError(Fault::TooLargeForBook, m_db.file().string(), m_db.file().filename().string());
    auto digest = sqlite::digestOf(json);
    m_db.run("INSERT INTO record (digest, salt, json) VALUES (?, x'', ?) ON CONFLICT (digest) DO NOTHING", digest,
             json);
    return digest;
}

namespace {

std::string newSalt() {
    std::string salt(kSaltSize, '\0');
    if (::getentropy(salt.data(), salt.size()) != 0) throwError(Fault::NoRandomNumbers, {});
    return salt;
}

} // namespace

Digest RecordStore::saveErased(const std::string& at) {
    auto digest = sqlite::digestOf(newSalt());
    m_db.run("INSERT INTO record (digest, salt, json, erased_at) VALUES (?, x'', '', ?)", digest, at);
    return digest;
}

void RecordStore::erase(const Digest& digest, const std::string& at) {
    m_db.run("UPDATE record SET salt = x'', json = '', erased_at = ? WHERE digest = ? AND erased_at IS NULL", at,
             digest);
}

bool RecordStore::isSalted(const Digest& digest) {
    auto row = m_db.query("SELECT 1 FROM record WHERE digest = ? AND length(salt) > 0", digest);
    return row.step();
}

bool RecordStore::isErased(const Digest& digest) {
    auto row = m_db.query("SELECT 1 FROM record WHERE digest = ? AND erased_at IS NOT NULL", digest);
    return row.step();
}

void RecordStore::remove(const Digest& digest) { m_db.run("DELETE FROM record WHERE digest = ?", digest); }

Digest RecordStore::saveSalted(const std::string& json) {
    const auto salt = newSalt();
    auto digest = sqlite::digestOf(salt + json);
    auto insert = m_db.query("INSERT INTO record (digest, salt, json) VALUES (?, ?, ?)", digest);
    insert.bindBytes(salt);
    insert.bind(std::string_view(json));
    while (insert.step()) {}
    return digest;
}

bool RecordStore::is(const Digest& digest, const std::string& json) {
    auto row = m_db.query("SELECT salt FROM record WHERE digest = ?", digest);
    return row.step() && sqlite::digestOf(row.takeBytes() + json) == digest;
}

std::string RecordStore::find(const Digest& digest) {
    auto row = m_db.query("SELECT salt, json, erased_at FROM record WHERE digest = ?", digest);
    if (!row.step()) throwRecordError();
    auto record = Row::take(row);
    if (!record.matches(digest)) throwRecordError();
    return std::move(record.json);
}

std::optional<std::string> RecordStore::findWhole(const Digest& digest) {
    try {
        return find(digest);
    } catch (const DbError& refusal) {
        if (refusal.error().code != base::Code::Damaged) throw;
        return std::nullopt;
    }
}

void RecordStore::expectAll() {
    auto rows = m_db.query("SELECT digest, salt, json, erased_at FROM record ORDER BY digest");
    while (rows.step()) {
        Digest digest;
        rows >> digest;
        if (!Row::take(rows).matches(digest)) throwRecordError();
    }
}

} // namespace sp::db::stores
