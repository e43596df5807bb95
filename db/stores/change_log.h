// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/digest.h"
#include "db/stores/columns.h"

#include <optional>
#include <string>
#include <string_view>

namespace sp::db::stores {

/// What one row of the change log says about one thing. `before` and `after` are records as JSON; empty for none.
struct Change {
    std::string entity; ///< "material", "quote" …
    base::Id id;
    std::string before;
    std::string after;
};

/// The append-only log of everything that was changed. A row names records by their digests, so that what a thing was
/// before is kept once, as what it was after the change before. Throws DbError.
class ChangeLog {
  public:
    explicit ChangeLog(sqlite::Connection& db)
        : m_db(db) {}

    /// Adds step `step` (from 1) of an action; returns its place in the log.
    std::int64_t add(const base::Id& command, std::int64_t step, const std::string& at, const std::string& actor,
                     std::string_view kind, const Change& change);
    /// The `after` of the newest row about that thing; empty when there is none or it was removed.
    std::string newest(std::string_view entity, const base::Id& id);
    /// Takes out what the log says of a thing that belongs to a person; its rows stay, and follow each other as before.
    void erase(std::string_view entity, const base::Id& id, const std::string& at);
    /// Whether an action of that id is in it.
    bool has(const base::Id& command);
    /// The action by which the book was made.
    std::optional<base::Id> firstCommand();
    /// The action that a row belongs to; nothing where there is no such row.
    std::optional<base::Id> commandAt(std::int64_t place);
    /// Whether somebody was erased in a row after that one.
    bool hasErasedSince(std::int64_t place);
    /// Whether erasing somebody is the newest that was done.
    bool endsWithErasing();
    /// The place of the newest row; 0 when there is none.
    std::int64_t newestPlace();
    /// When that row was written, UTC: "2026-11-30T14:02:00.000Z".
    std::optional<std::string> newestMoment();

  private:
    std::optional<sqlite::Digest> newestDigest(std::string_view entity, const base::Id& id);
    std::optional<sqlite::Digest> save(const Change& change, const std::string& json);

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
