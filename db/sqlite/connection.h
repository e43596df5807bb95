// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"
#include "db/sqlite/statement.h"

#include <chrono>
#include <filesystem>
#include <memory>
#include <stop_token>
#include <string>
#include <string_view>
#include <unordered_map>

struct sqlite3;

namespace sp::db::sqlite {

enum class Access {
    Read,    ///< a file or folder that cannot be written
    Inspect, ///< nothing is written but what a crash left to roll back; SQLite checks CHECKs only on such a handle
    Write
};

/// Where a private copy lies: small ones in memory at either.
enum class CopyPlace { TemporaryFolder, Memory };

/// One connection to one file, hardened against hostile content: no views, triggers, extensions or quoted-name
/// strings, small limits, and a time after which a query is stopped. Every setting is read back; one that is not in
/// force is an error. Everything here throws DbError, which names the file.
class Connection {
  public:
    /// Opens an existing file. The settings that touch it are made by `settle`.
    static std::unique_ptr<Connection> open(const std::filesystem::path& file, Access access);
    /// A new file, or in memory when `file` is empty.
    static std::unique_ptr<Connection> make(const std::filesystem::path& file);
    /// A private copy of all that `source` holds, to be changed at will, gone at the end of its life. What it
    /// refuses names `file`.
    static std::unique_ptr<Connection> copyOf(Connection& source, CopyPlace place, const std::filesystem::path& file);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// Brings journal, synchronous, foreign keys and the rest into force and reads each back.
    void settle();

    /// The statement of that text from the cache, bound to `values` in order, not yet stepped. At most one of a text
    /// is in use at a time.
    template<class... Values>
    Statement query(std::string_view sql, const Values&... values) {
        Statement statement = borrow(sql);
        statement.bindAll(values...);
        return statement;
    }
    /// Runs a statement that gives no rows.
    template<class... Values>
    void run(std::string_view sql, const Values&... values) {
        auto statement = query(sql, values...);
        while (statement.step()) {}
    }
    /// Runs several statements without binds, as a migration has them.
    void script(const std::string& sql);

    /// What a query of one number gives; 0 where it gives no row.
    std::int64_t numberOf(std::string_view sql);
    /// From now on what is taken out of a page is overwritten with zeros.
    void shred();
    /// Writes all pages anew, so that nothing lies in them but what is in a row; outside of transactions alone. Memory
    /// holds the book for that long.
    void vacuum();
    /// Whether the file has pages that nothing is in, which hold what was in them before.
    bool hasFreePages();
    /// Bytes of the file after its last page; 0 in memory.
    std::int64_t bytesBehindTheEnd();

    /// From now on a query is stopped, as Damaged, when it runs longer than this.
    void allow(std::chrono::milliseconds budget);
    /// From now on a query is stopped, as Failed, and none begun, when that is asked for.
    void heed(std::stop_token stop) { m_stop = std::move(stop); }
    bool isStopped() const { return m_stop.stop_requested(); }
    /// Starts a new query's time; called by `borrow`.
    void restartBudget();
    bool isOutOfTime() const;

    /// False for a private copy, which has the name of what it is a copy of.
    bool isOnDisk() const { return m_isOnDisk; }
    bool canWrite() const { return m_access == Access::Write; }
    const std::filesystem::path& file() const { return m_file; }
    /// Whether a transaction is open; false after SQLite rolled one back by itself.
    bool isInTransaction() const;
    /// The same for a transaction that is to begin. One that nobody holds any more is open because ending it failed,
    /// for want of memory, say: it is taken back first, else what follows would be a part of it, be said to be done and
    /// never be on disk. Throws when it cannot be taken back.
    bool isWithinTransaction();

    /// Throws when a line that SQLite's own checks found says that the disk did not give a page.
    void throwIfUnread(std::string_view found) const;
    /// Throws what an SQLite result code means to a person.
    [[noreturn]] void throwCode(int code) const;

  private:
    friend class Transaction;
    friend class ReadTransaction;

    /// `name` is what SQLite opens, `file` what errors name.
    Connection(std::filesystem::path file, const std::string& name, Access access, int flags);
    friend class PageCopy;
    Statement borrow(std::string_view sql);
    void harden();
    void expectPragma(std::string_view name, std::string_view wanted);

    struct Close {
        void operator()(sqlite3* db) const;
    };

    std::filesystem::path m_file;
    std::string m_journal; ///< the journal mode that must be in force
    bool m_isOnDisk;
    Access m_access;
    std::unique_ptr<sqlite3, Close> m_db;
    std::unordered_map<std::string, std::unique_ptr<Prepared>> m_statements;
    std::stop_token m_stop;
    std::chrono::milliseconds m_budget{10'000};
    std::chrono::steady_clock::time_point m_started{};
    int m_transactions = 0; ///< that somebody holds, one within another
};

/// The error for an SQLite result code on that file; `systemError` is errno as SQLite kept it.
base::Error errorOf(int code, int systemError, const std::filesystem::path& file);

} // namespace sp::db::sqlite
