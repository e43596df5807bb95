// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/payment.h"
#include "db/stores/columns.h"

#include <optional>
#include <vector>

namespace sp::db::stores {

/// The ledger of payments: added, never changed. Throws DbError; writes no change log.
class PaymentStore {
  public:
    explicit PaymentStore(sqlite::Connection& db)
        : m_db(db) {}

    std::optional<catalogue::Payment> find(const base::Id& id);
    void add(const catalogue::Payment& payment, const Stamp& stamp);
    /// In the order in which they were made.
    std::vector<catalogue::Payment> ofJob(const base::Id& job);
    /// A row of money, and its change and rounding; nothing where it is missing.
    std::vector<catalogue::Payment> madeWith(const base::Id& id);
    bool isReversed(const base::Id& id);

  private:
    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
