// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"
#include "db/stores/columns.h"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

// Things with parts in tables of their own: a kit and its items, a design and its stones. Read all at once, or the one
// whose key is `only`.
namespace sp::db::stores {

/// The things of these rows.
template<class T>
std::vector<T> takeAll(sqlite::Statement rows, T (*take)(sqlite::Statement&)) {
    std::vector<T> things;
    while (rows.step()) things.push_back(take(rows));
    return things;
}

/// Those of the table that are not removed, by name, then key. `columns` follow the key. Read from the table itself:
/// the index of the names, which takes no heed of letter case, may hold other letters. The plus signs keep SQLite from
/// that index; NOT INDEXED does not, in a table without rowid.
template<class T>
std::vector<T> takeThings(sqlite::Connection& db, std::string_view table, std::string_view columns,
                          const std::optional<base::Id>& only, T (*take)(sqlite::Statement&)) {
    if (only)
        return takeAll(
            db.query(fmt::format("SELECT id, {} FROM {} WHERE deleted_at IS NULL AND id = ?", columns, table), *only),
            take);
    return takeAll(db.query(fmt::format("SELECT id, {} FROM {} WHERE +deleted_at IS NULL "
                                        "ORDER BY +name COLLATE COUNTING, id",
                                        columns, table)),
                   take);
}

/// Gives each thing its parts, in their order: `take` reads the row's `columns` into the thing that column `owner`
/// names.
template<class T, class Take>
void takeParts(sqlite::Connection& db, std::vector<T>& things, std::string_view table, std::string_view owner,
               std::string_view columns, const Take& take) {
    if (things.empty()) return;
    std::unordered_map<base::Id, T*> owners;
    for (auto& thing : things) owners[thing.id] = &thing;
    const auto head = fmt::format("SELECT {}, {} FROM {}", owner, columns, table);
    const auto order = fmt::format(" ORDER BY {}, position", owner);
    auto rows = things.size() > 1 ? db.query(head + order)
                                  : db.query(head + fmt::format(" WHERE {} = ?", owner) + order, things.front().id);
    while (rows.step())
        if (const auto found = owners.find(rows.takeId()); found != owners.end()) take(rows, *found->second);
}

/// Of things read by one key.
template<class T>
std::optional<T> firstOf(std::vector<T> things) {
    if (things.empty()) return std::nullopt;
    return std::move(things.front());
}

} // namespace sp::db::stores
