// SPDX-License-Identifier: MIT
#include "db/stores/columns.h"

#include "db/db_error.h"

#include <fmt/format.h>

namespace sp::db::stores {

std::string upsert(std::string_view table, std::string_view key, std::string_view columns, bool canBeRemoved) {
    std::string marks = "?";
    std::string updates;
    std::string_view rest = columns;
    while (!rest.empty()) {
        const auto comma = rest.find(", ");
        const auto column = rest.substr(0, comma);
        marks += ", ?";
        updates += fmt::format("{0} = excluded.{0}, ", column);
        rest = comma == std::string_view::npos ? std::string_view() : rest.substr(comma + 2);
    }
    return fmt::format("INSERT INTO {0} ({1}, {2}, change_seq, row_version) VALUES ({3}, ?, 1) ON CONFLICT ({1}) "
                       "DO UPDATE SET {4}change_seq = excluded.change_seq, row_version = row_version + 1{5}",
                       table, key, columns, marks, updates, canBeRemoved ? ", deleted_at = NULL" : "");
}

void markRemoved(sqlite::Connection& db, std::string_view table, const base::Id& id, std::int64_t changeSeq,
                 const std::string& at, std::string_view key) {
    db.run(fmt::format("UPDATE {} SET deleted_at = ?, change_seq = ?, row_version = row_version + 1 WHERE {} = ?",
                       table, key),
           at, changeSeq, id);
}

void throwDamaged(const sqlite::Connection& db, const base::Done& check) {
    if (check) return;
    throwError(Fault::ValueDamaged, db.file().string(), db.file().filename().string(), check.error().message());
}

} // namespace sp::db::stores
