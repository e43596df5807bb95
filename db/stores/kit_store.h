// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/kit.h"
#include "db/stores/columns.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::db::stores {

/// See material_store.h for what the stores have in common.
class KitStore {
  public:
    explicit KitStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::Kit> all();
    std::optional<catalogue::Kit> find(const base::Id& id);
    void write(const catalogue::Kit& kit, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);
    /// The name of a kit that holds this material, is sold by this supplier or made for this design; empty for none.
    std::string nameOfUser(const base::Id& id);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
