// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/shop.h"
#include "db/stores/columns.h"

#include <optional>

namespace sp::db::stores {

/// The one shop of a book, with its ladder, rush table and packing. Nothing only while a book is being made.
class ShopStore {
  public:
    explicit ShopStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<catalogue::Shop> find();
    void write(const catalogue::Shop& shop, const Stamp& stamp);

  private:
    void takeLists(catalogue::Shop& shop);

    sqlite::Connection& m_db;
};

/// The one set of bench standards of a book.
class BenchStore {
  public:
    explicit BenchStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<catalogue::BenchStandards> find();
    void write(const catalogue::BenchStandards& bench, const Stamp& stamp);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
