// SPDX-License-Identifier: MIT
#include "db/sqlite/connection.h"

#include "core/base/ensure.h"
#include "db/db_error.h"
#include "db/sqlite/functions.h"
#include "db/sqlite/page_copy.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <cstring>

namespace sp::db::sqlite {

namespace {

struct Limit {
    int what;
    int value;
};

/// sqlite.org/security.html, tightened to what this program's own statements need; 65 MB holds the largest drawing
/// (catalogue::kMaxArtwork) with its key.
constexpr std::array kLimits{
    Limit{SQLITE_LIMIT_LENGTH, 65'000'000},
    Limit{SQLITE_LIMIT_SQL_LENGTH, 100'000},
    Limit{SQLITE_LIMIT_COLUMN, 100},
    Limit{SQLITE_LIMIT_EXPR_DEPTH, 30},
    Limit{SQLITE_LIMIT_COMPOUND_SELECT, 10},
    Limit{SQLITE_LIMIT_VDBE_OP, 25'000},
    Limit{SQLITE_LIMIT_FUNCTION_ARG, 8},
    Limit{SQLITE_LIMIT_ATTACHED, 0},
    Limit{SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 500},
    Limit{SQLITE_LIMIT_VARIABLE_NUMBER, 100},
    Limit{SQLITE_LIMIT_TRIGGER_DEPTH, 1},
    Limit{SQLITE_LIMIT_WORKER_THREADS, 0},
};

struct Setting {
    int what;
    int on;
};

constexpr std::array kSettings{
    Setting{SQLITE_DBCONFIG_DEFENSIVE, 1},
    Setting{SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
    Setting{SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
    Setting{SQLITE_DBCONFIG_ENABLE_VIEW, 0},
    Setting{SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0},
    Setting{SQLITE_DBCONFIG_DQS_DML, 0},
    Setting{SQLITE_DBCONFIG_DQS_DDL, 0},
    Setting{SQLITE_DBCONFIG_ENABLE_FKEY, 1},
};

/// The names by which SQLite knows databases that no file of ours holds.
constexpr std::string_view kInMemory = ":memory:";
constexpr std::string_view kTemporary{};

constexpr int kMake = SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
constexpr int kBusyMilliseconds = 5'000;
constexpr int kStepsBetweenLooks = 10'000;

/// When the disk does not give what is asked of it SQLite takes the file system for damaged, and a statement says that
/// the file is (rescode.html, SQLITE_IOERR_CORRUPTFS). The errno by which that is known; 0 when it was not so. It is
/// kept until something else fails, so that a disk that failed is blamed once too often; a check asks on its own
/// connection.
int readErrorOf(sqlite3* db) {
    int error = 0;
    if (db == nullptr || sqlite3_file_control(db, "main", SQLITE_FCNTL_LAST_ERRNO, &error) != SQLITE_OK) return 0;
    return error == EIO || error == ENXIO || error == ERANGE ? error : 0;
}

int lookAtTheClock(void* connection) {
    const auto& asked = *static_cast<Connection*>(connection);
    return asked.isOutOfTime() || asked.isStopped() ? 1 : 0;
}

} // namespace

base::Error errorOf(int code, int systemError, const std::filesystem::path& file) {
    const std::string name = file.filename().string();
    const auto say = [&](Fault fault) { return base::makeError(fault, file.string(), name); };
    const bool isFull = systemError == ENOSPC || systemError == EFBIG || systemError == EDQUOT;
    switch (code & 0xFF) {
    case SQLITE_FULL: return say(Fault::DiskFull);
    case SQLITE_IOERR:
        if (isFull) return say(Fault::DiskFull);
        if (code == SQLITE_IOERR_WRITE) return say(Fault::DiskFullOrFailing);
        if (code == SQLITE_IOERR_READ || code == SQLITE_IOERR_SHORT_READ || code == SQLITE_IOERR_CORRUPTFS)
            return say(Fault::NotReadFromDisk);
        break;
    case SQLITE_READONLY:
        if (code == SQLITE_READONLY_ROLLBACK || code == SQLITE_READONLY_RECOVERY) return say(Fault::NotClosedProperly);
        return say(Fault::FileNotWritable);
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_AUTH: return say(Fault::FolderNotWritable);
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return say(Fault::UsedElsewhere);
    case SQLITE_CORRUPT: return say(code == SQLITE_CORRUPT_INDEX ? Fault::IndexDamaged : Fault::BookDamaged);
    case SQLITE_NOTADB: return say(Fault::DamagedOrNoBook);
    case SQLITE_INTERRUPT: return say(Fault::ReadTooLong);
    case SQLITE_TOOBIG: return say(Fault::TooLargeForBook);
    case SQLITE_CONSTRAINT:
        if (code == SQLITE_CONSTRAINT_UNIQUE || code == SQLITE_CONSTRAINT_PRIMARYKEY) return say(Fault::AlreadyHeld);
        return say(Fault::ValueNotTaken);
    case SQLITE_NOMEM: return say(Fault::NotEnoughMemory);
    default: break;
    }
    return base::makeError(Fault::NotReadOrWritten, file.string(), name,
                           systemError != 0 ? std::strerror(systemError) : sqlite3_errstr(code), code);
}

void Connection::Close::operator()(sqlite3* db) const { sqlite3_close_v2(db); }

Connection::Connection(std::filesystem::path file, const std::string& name, Access access, int flags)
    : m_file(std::move(file))
    , m_journal(name == kInMemory ? "memory" : "delete")
    , m_isOnDisk(name != kInMemory && name != kTemporary)
    , m_access(access) {
    if (sqlite3_libversion_number() < 3'037'000) throwError(Fault::SqliteTooOld, "SQLite", sqlite3_libversion());
    sqlite3* db = nullptr;
    const int code = sqlite3_open_v2(name.c_str(), &db, flags | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOFOLLOW, nullptr);
    m_db.reset(db);
    if (code != SQLITE_OK) throwCode(code);
    // Where a file cannot be opened for writing SQLite opens it for reading, and says so at the first change only.
    if (access == Access::Write && sqlite3_db_readonly(db, "main") != 0) throwCode(SQLITE_READONLY);
    harden();
}

std::unique_ptr<Connection> Connection::open(const std::filesystem::path& file, Access access) {
    const int flags = access == Access::Read ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE;
    return std::unique_ptr<Connection>(new Connection(file, file.string(), access, flags));
}

std::unique_ptr<Connection> Connection::make(const std::filesystem::path& file) {
    const auto name = file.empty() ? std::string(kInMemory) : file.string();
    return std::unique_ptr<Connection>(new Connection(file, name, Access::Write, kMake));
}

std::unique_ptr<Connection> Connection::copyOf(Connection& source, CopyPlace place, const std::filesystem::path& file) {
    const std::string name(place == CopyPlace::Memory ? kInMemory : kTemporary);
    std::unique_ptr<Connection> copy(new Connection(file, name, Access::Write, kMake));
    PageCopy(source, *copy).finish();
    return copy;
}

Connection::~Connection() { m_statements.clear(); }

void Connection::harden() {
    for (const auto& [what, on] : kSettings) {
        int inForce = -1;
        const int code = sqlite3_db_config(m_db.get(), what, on, &inForce);
        if (code != SQLITE_OK || inForce != on) throwError(Fault::SettingNotTaken, "SQLite", what);
    }
    for (const auto& [what, value] : kLimits) {
        sqlite3_limit(m_db.get(), what, value);
        if (sqlite3_limit(m_db.get(), what, -1) > value) throwError(Fault::LimitNotTaken, "SQLite", what);
    }
    if (const int code = addFunctions(m_db.get()); code != SQLITE_OK) throwCode(code);
    sqlite3_busy_timeout(m_db.get(), kBusyMilliseconds);
    sqlite3_progress_handler(m_db.get(), kStepsBetweenLooks, lookAtTheClock, this);
}

void Connection::expectPragma(std::string_view name, std::string_view wanted) {
    auto row = query(fmt::format("PRAGMA {}", name));
    const std::string inForce = row.step() ? row.takeAsText() : std::string();
    if (inForce != wanted)
        throwError(Fault::NotSafeHere, m_file.string(), m_file.filename().string(), name, inForce, wanted);
}

void Connection::settle() {
    run("PRAGMA foreign_keys = ON");
    run("PRAGMA synchronous = EXTRA");
    run("PRAGMA cell_size_check = ON");
    run("PRAGMA mmap_size = 0");
    run("PRAGMA temp_store = MEMORY");
    if (m_access == Access::Inspect) {
        run("PRAGMA query_only = ON");
        expectPragma("query_only", "1");
    }
    if (canWrite()) {
        run("PRAGMA journal_mode = DELETE");
        expectPragma("journal_mode", m_journal);
    }
    if (m_isOnDisk) expectPragma("mmap_size", "0");
    expectPragma("foreign_keys", "1");
    expectPragma("synchronous", "3");
    expectPragma("cell_size_check", "1");
    expectPragma("temp_store", "2");
    expectPragma("busy_timeout", std::to_string(kBusyMilliseconds));
    expectPragma("encoding", "UTF-8");
}

void Connection::shred() {
    auto row = query("PRAGMA secure_delete = ON");
    while (row.step()) {}
}

std::int64_t Connection::numberOf(std::string_view sql) {
    auto row = query(sql);
    return row.step() ? row.takeInteger() : 0;
}

std::int64_t Connection::bytesBehindTheEnd() {
    if (!isOnDisk()) return 0;
    std::error_code error;
    const auto size = static_cast<std::int64_t>(std::filesystem::file_size(file(), error));
    const auto pages = numberOf("PRAGMA page_count") * numberOf("PRAGMA page_size");
    return error ? 0 : std::max<std::int64_t>(0, size - pages);
}

bool Connection::hasFreePages() { return numberOf("PRAGMA freelist_count") > 0; }

void Connection::vacuum() {
    // SQLite attaches the file that it copies the pages to and back from.
    sqlite3_limit(m_db.get(), SQLITE_LIMIT_ATTACHED, 1);
    try {
        run("VACUUM");
    } catch (...) {
        sqlite3_limit(m_db.get(), SQLITE_LIMIT_ATTACHED, 0);
        throw;
    }
    sqlite3_limit(m_db.get(), SQLITE_LIMIT_ATTACHED, 0);
}

Statement Connection::borrow(std::string_view sql) {
    if (isStopped()) throwError(Fault::Stopped, m_file.string());
    restartBudget();
    const std::string key(sql);
    auto found = m_statements.find(key);
    if (found == m_statements.end()) {
        sqlite3_stmt* statement = nullptr;
        const char* rest = nullptr;
        const int code = sqlite3_prepare_v3(m_db.get(), key.c_str(), static_cast<int>(key.size() + 1),
                                            SQLITE_PREPARE_PERSISTENT, &statement, &rest);
        if (code != SQLITE_OK) throwCode(code);
        base::ensure(rest == nullptr || *rest == '\0', "a statement is one statement");
        found = m_statements.emplace(key, std::make_unique<Prepared>(statement)).first;
    }
    return {*this, *found->second};
}

void Connection::script(const std::string& sql) {
    restartBudget();
    if (const int code = sqlite3_exec(m_db.get(), sql.c_str(), nullptr, nullptr, nullptr); code != SQLITE_OK)
        throwCode(code);
}

void Connection::allow(std::chrono::milliseconds budget) { m_budget = budget; }

void Connection::restartBudget() { m_started = std::chrono::steady_clock::now(); }

bool Connection::isOutOfTime() const { return std::chrono::steady_clock::now() - m_started > m_budget; }

bool Connection::isInTransaction() const { return sqlite3_get_autocommit(m_db.get()) == 0; }

void Connection::throwIfUnread(std::string_view found) const {
    // "unable to get the page. error code=266" stands among the damage and is none; of the list of free pages it says
    // no code.
    constexpr std::string_view kCode = "error code=";
    const auto at = found.find(kCode);
    if (at == std::string_view::npos) {
        if (found.find("failed") == std::string_view::npos || found.find("page") == std::string_view::npos) return;
        if (const int unread = readErrorOf(m_db.get()); unread != 0)
            throw DbError(errorOf(SQLITE_IOERR_READ, unread, m_file));
        return;
    }
    int code = 0;
    std::from_chars(found.data() + at + kCode.size(), found.data() + found.size(), code);
    if ((code & 0xFF) == SQLITE_CORRUPT || code == 0) return;
    throw DbError(errorOf(code, 0, m_file));
}

void Connection::throwCode(int code) const {
    if (code == SQLITE_INTERRUPT && isStopped()) throwError(Fault::Stopped, m_file.string());
    const int extended = m_db != nullptr && (sqlite3_errcode(m_db.get()) & 0xFF) == (code & 0xFF)
                             ? sqlite3_extended_errcode(m_db.get())
                             : code;
    if ((extended & 0xFF) == SQLITE_CORRUPT)
        if (const int unread = readErrorOf(m_db.get()); unread != 0)
            throw DbError(errorOf(SQLITE_IOERR_READ, unread, m_file));
    const int systemError = m_db != nullptr ? sqlite3_system_errno(m_db.get()) : 0;
    throw DbError(errorOf(extended, systemError, m_file));
}

} // namespace sp::db::sqlite
