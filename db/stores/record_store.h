// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"
#include "db/sqlite/digest.h"

#include <optional>
#include <string>
#include <string_view>

namespace sp::db::stores {

/// Values as JSON, each kept once under its digest and never changed. Throws DbError.
class RecordStore {
  public:
    explicit RecordStore(sqlite::Connection& db)
        : m_db(db) {}

    /// Keeps a record; gives its digest.
    sqlite::Digest save(const std::string& json);
    /// Keeps what belongs to a person under a salt of its own, so that it can be taken out later without anybody
    /// finding out from the digest what it was.
    sqlite::Digest saveSalted(const std::string& json);
    /// A record that was taken out before anybody could read it, for what needs the digest of a person who is gone.
    sqlite::Digest saveErased(const std::string& at);
    /// Takes the text and the salt of a record out; its digest stays and still holds. Nothing happens to one that was
    /// taken out before.
    void erase(const sqlite::Digest& digest, const std::string& at);
    /// Whether a record has a salt, and so a digest that tells nobody what it was. False for one that was taken out.
    bool isSalted(const sqlite::Digest& digest);
    /// Whether it was taken out. False when there is none.
    bool isErased(const sqlite::Digest& digest);
    /// Takes the row itself out; nothing may name its digest any more.
    void remove(const sqlite::Digest& digest);
    /// Whether the record of that digest is this one.
    bool is(const sqlite::Digest& digest, const std::string& json);
    /// Empty when it was taken out. Throws Damaged when there is none, or its digest is another.
    std::string find(const sqlite::Digest& digest);
    /// As `find`, but nothing where that is Damaged. Want of memory, or a disk that does not give the record, says
    /// nothing of it and is thrown.
    std::optional<std::string> findWhole(const sqlite::Digest& digest);
    /// Throws Damaged when a record does not match its digest.
    void expectAll();

  private:
    [[noreturn]] void throwRecordError() const;

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
