// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/shop.h"
#include "db/stores/columns.h"

#include <optional>

namespace sp::db::stores {

/// The one shop of a book: a record, with columns for what it refers to and for its rates of tax. Nothing only while a
/// book is being made.
class ShopStore {
  public:
    explicit ShopStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<catalogue::Shop> find();
    void write(const catalogue::Shop& shop, const Stamp& stamp);
    /// Throws Damaged when the columns do not say what the record says.
    void expectColumns(const catalogue::Shop& shop);

  private:
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
