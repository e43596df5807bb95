// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/design.h"
#include "db/stores/columns.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace sp::db::stores {

/// See material_store.h for what the stores have in common.
class DesignStore {
  public:
    explicit DesignStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::Design> all();
    std::optional<catalogue::Design> find(const base::Id& id);
    /// The sets of those with planned pieces, without what is sold.
    std::unordered_map<base::Id, catalogue::DesignSet> sets();
    void write(const catalogue::Design& design, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
