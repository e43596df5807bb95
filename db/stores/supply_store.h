// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"
#include "db/stores/columns.h"

#include <optional>
#include <vector>

namespace sp::db::stores {

/// See material_store.h for what the stores have in common.
class SupplierStore {
  public:
    explicit SupplierStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::Supplier> all();
    std::optional<catalogue::Supplier> find(const base::Id& id);
    void write(const catalogue::Supplier& supplier, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);

  private:
    sqlite::Connection& m_db;
};

/// Packs of a material or supplier that was removed are left out, and come back with it.
class PackStore {
  public:
    explicit PackStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::Pack> all();
    std::optional<catalogue::Pack> find(const base::Id& id);
    /// The pack of that material that is marked usual, whoever sells it.
    std::optional<catalogue::Pack> usualOf(const base::Id& material);
    void write(const catalogue::Pack& pack, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
