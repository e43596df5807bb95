// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/customer.h"
#include "db/stores/columns.h"

#include <optional>
#include <string_view>
#include <vector>

namespace sp::db::stores {

/// See material_store.h for what the stores have in common.
class CustomerStore {
  public:
    explicit CustomerStore(sqlite::Connection& db)
        : m_db(db) {}

    /// Without those that were merged into another.
    std::vector<catalogue::Customer> all();
    std::vector<catalogue::Customer> mergedInto(const base::Id& id);
    std::optional<catalogue::Customer> find(const base::Id& id);
    void write(const catalogue::Customer& customer, const Stamp& stamp);
    void remove(const base::Id& id, const Stamp& stamp);
    /// Those that were removed and whose person is still in the book.
    std::vector<catalogue::Customer> removed();
    std::optional<catalogue::Customer> findRemoved(const base::Id& id);
    /// What a list shows in place of the name of one whose person was taken out.
    static constexpr std::string_view kErasedName = "\u2014";
    /// Removes an entry and takes out all that it said of the person.
    void erase(const base::Id& id, const Stamp& stamp);

  private:
    catalogue::Customer take(sqlite::Statement& row);
    void expectFreeName(const catalogue::Customer& customer);

    sqlite::Connection& m_db;
};

} // namespace sp::db::stores
