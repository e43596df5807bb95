// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/price_list.h"
#include "db/stores/columns.h"

#include <optional>
#include <vector>

namespace sp::db::stores {

/// How each supplier's price list is read, keyed by the supplier; those of a removed supplier are left out of `all`
/// and come back with it.
class PriceListStore {
  public:
    explicit PriceListStore(sqlite::Connection& db)
        : m_db(db) {}

    std::vector<catalogue::PriceListColumns> all();
    std::optional<catalogue::PriceListColumns> find(const base::Id& supplier);
    void write(const catalogue::PriceListColumns& list, const Stamp& stamp);
    void remove(const base::Id& supplier, const Stamp& stamp);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
