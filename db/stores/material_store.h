// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"
#include "db/stores/columns.h"

#include <optional>
#include <vector>

namespace sp::db::stores {

// What every store of named things has in common. It throws DbError. `all` is sorted by name (letter case of ASCII
// ignored), then key, without what was removed; `find` gives nothing for what was removed. `write` makes the row or
// its next version, also of a removed one; `remove` is soft. Neither writes the change log: that is the caller's.

class MaterialStore {
  public:
    explicit MaterialStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::Material> all();
    std::optional<catalogue::Material> find(const base::Id& id);
    void write(const catalogue::Material& material, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);
    /// Throws Conflict when a design or the shop needs this material.
    void expectUnused(const base::Id& id);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
