// SPDX-License-Identifier: MIT
#pragma once

#include "db/stores/columns.h"

#include <string>
#include <string_view>

namespace sp::db::stores {

/// What one row of the change log says about one thing. `before` and `after` are records; empty for none.
struct Change {
    std::string entity; ///< "material", "quote" …
    base::Id id;
    std::string before;
    std::string after;
};

/// The append-only log of everything that was changed.
class ChangeLog {
  public:
    explicit ChangeLog(sqlite::Connection& db)
        : m_db(db) {}

    /// Adds step `step` (from 1) of an action; returns its place in the log.
    std::int64_t add(const base::Id& command, std::int64_t step, const std::string& at, const std::string& actor,
                     std::string_view kind, const Change& change);
    /// The `after` of the newest row about that thing; empty when there is none or it was removed.
    std::string newest(std::string_view entity, const base::Id& id);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
