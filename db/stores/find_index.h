// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"
#include "db/stores/found_job.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace sp::db::stores {

/// How far a book has come, as an index of it knows: it may be of another book, or of a copy that went another way.
struct IndexMark {
    std::string book;        ///< see db::BookMark
    std::int64_t change = 0; ///< place in its change log
    base::Id command;        ///< the action of that change

    friend bool operator==(const IndexMark&, const IndexMark&) = default;
};

/// What the jobs of a book are found by, in a file of its own that can be thrown away: the book is read without it and
/// makes it anew. Words are kept as groups of three letters (SQLite's FTS5, tokenizer trigram), so that a part of a
/// word is found as quickly as its beginning. Throws DbError, Damaged where the file is no such index.
class FindIndex {
  public:
    /// An index that is there.
    static std::unique_ptr<FindIndex> open(const std::filesystem::path& file);
    /// A new one, in an empty file that is there; not durable until it is finished. Throws Failed when stopped.
    static std::unique_ptr<FindIndex> make(const std::filesystem::path& file, std::stop_token stop);

    IndexMark mark();
    /// Puts these into it, each in place of what it was before; takes out those that are gone.
    void put(const std::vector<FoundJob>& jobs, const std::vector<base::Id>& gone, const IndexMark& mark);
    /// Adds jobs to a new one, the oldest first.
    void add(const std::vector<FoundJob>& jobs);
    /// The new one is whole.
    void finish(const IndexMark& mark);

    std::int64_t count();
    /// At most `limit` of the wanted jobs, in their order.
    std::vector<base::Id> find(const Wanted& wanted, units::Date today, std::int64_t limit);
    /// The given ones that are open in any way and not lapsed before today, the newest first.
    std::vector<base::Id> findAsking(units::Date today);

    /// The statement that `find` runs, and the values it binds, for a comparison with the same in SQLite's own shell.
    struct Asked {
        std::string sql;
        std::vector<std::string> texts; ///< in the order of the places
    };
    static Asked asked(const Wanted& wanted, units::Date today, std::int64_t limit);

  private:
    explicit FindIndex(std::unique_ptr<sqlite::Connection> db)
        : m_db(std::move(db)) {}
    void insert(const FoundJob& job);
    void remove(const base::Id& job);

    std::unique_ptr<sqlite::Connection> m_db;
};

} // namespace sp::db::stores
