// SPDX-License-Identifier: MIT
#include "db/sqlite/statement.h"

#include "core/base/ensure.h"
#include "core/units/characters.h"
#include "db/db_error.h"
#include "db/sqlite/connection.h"

#include <sqlite3.h>

#include <algorithm>
#include <utility>

namespace sp::db::sqlite {

namespace {

/// The longest text of a field, in bytes: 100,000 characters of four each (catalogue::fields).
constexpr std::size_t kLongestText = 400'000;

} // namespace

Prepared::~Prepared() { sqlite3_finalize(m_statement); }

Statement::Statement(Connection& connection, Prepared& prepared)
    : m_connection(&connection)
    , m_prepared(&prepared) {
    base::ensure(!prepared.m_isLent, "a statement is not used twice at once");
    prepared.m_isLent = true;
}

Statement::Statement(Statement&& other) noexcept
    : m_connection(other.m_connection)
    , m_prepared(std::exchange(other.m_prepared, nullptr))
    , m_bound(other.m_bound)
    , m_column(other.m_column) {}

Statement::~Statement() {
    if (m_prepared == nullptr) return;
    sqlite3_reset(m_prepared->m_statement);
    sqlite3_clear_bindings(m_prepared->m_statement);
    m_prepared->m_isLent = false;
}

void Statement::bind(std::int64_t value) {
    if (const int code = sqlite3_bind_int64(m_prepared->m_statement, ++m_bound, value); code != SQLITE_OK)
        m_connection->throwCode(code);
}

void Statement::bind(std::string_view value) {
    const int code = sqlite3_bind_text64(m_prepared->m_statement, ++m_bound, value.empty() ? "" : value.data(),
                                         value.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
    if (code != SQLITE_OK) m_connection->throwCode(code);
}

void Statement::bind(const base::Id& value) {
    const auto& bytes = value.bytes();
    const int code = sqlite3_bind_blob(m_prepared->m_statement, ++m_bound, bytes.data(), static_cast<int>(bytes.size()),
                                       SQLITE_TRANSIENT);
    if (code != SQLITE_OK) m_connection->throwCode(code);
}

void Statement::bindBytes(std::string_view bytes) {
    const int code = sqlite3_bind_blob64(m_prepared->m_statement, ++m_bound, bytes.empty() ? "" : bytes.data(),
                                         bytes.size(), SQLITE_TRANSIENT);
    if (code != SQLITE_OK) m_connection->throwCode(code);
}

void Statement::bindNull() {
    if (const int code = sqlite3_bind_null(m_prepared->m_statement, ++m_bound); code != SQLITE_OK)
        m_connection->throwCode(code);
}

bool Statement::step() {
    m_column = 0;
    const int code = sqlite3_step(m_prepared->m_statement);
    if (code == SQLITE_ROW) return true;
    if (code == SQLITE_DONE) return false;
    m_connection->throwCode(code);
}

bool Statement::isNull() const { return sqlite3_column_type(m_prepared->m_statement, m_column) == SQLITE_NULL; }

std::int64_t Statement::takeInteger() {
    if (sqlite3_column_type(m_prepared->m_statement, m_column) != SQLITE_INTEGER) throwColumn();
    return sqlite3_column_int64(m_prepared->m_statement, m_column++);
}

// What SQLite has no memory for it gives as nothing, which is not what is there (sqlite.org/c3ref/column_blob.html).
const char* Statement::given(const void* bytes) const {
    if (bytes == nullptr && sqlite3_errcode(sqlite3_db_handle(m_prepared->m_statement)) == SQLITE_NOMEM)
        m_connection->throwCode(SQLITE_NOMEM);
    return static_cast<const char*>(bytes);
}

std::string Statement::takeAsText() { return takeHeld(given(sqlite3_column_text(m_prepared->m_statement, m_column))); }

std::string Statement::takeHeld(const char* bytes) {
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_prepared->m_statement, m_column));
    ++m_column;
    return bytes == nullptr ? std::string() : std::string(bytes, size);
}

std::string Statement::takeText() { return takeTextOf(kLongestText); }
std::string Statement::takeRecord() { return takeTextOf(kLongestRecord); }

std::string Statement::takeTextOf(std::size_t longest) {
    if (sqlite3_column_type(m_prepared->m_statement, m_column) != SQLITE_TEXT) throwColumn();
    // Before it is copied: a hostile file may hold as much as SQLite takes.
    if (static_cast<std::size_t>(sqlite3_column_bytes(m_prepared->m_statement, m_column)) > longest) throwColumn();
    std::string text = takeAsText();
    if (units::isText(text)) return text;
    throwTaken();
}

base::Id Statement::takeId() {
    if (sqlite3_column_type(m_prepared->m_statement, m_column) != SQLITE_BLOB) throwColumn();
    base::Id::Bytes bytes{};
    if (sqlite3_column_bytes(m_prepared->m_statement, m_column) != static_cast<int>(bytes.size())) throwColumn();
    std::copy_n(given(sqlite3_column_blob(m_prepared->m_statement, m_column)), bytes.size(), bytes.begin());
    ++m_column;
    return base::Id::fromBytes(bytes);
}

std::string Statement::takeBytes() {
    if (sqlite3_column_type(m_prepared->m_statement, m_column) != SQLITE_BLOB) throwColumn();
    return takeHeld(given(sqlite3_column_blob(m_prepared->m_statement, m_column)));
}

void Statement::take(bool& value) {
    if (isNull()) throwColumn();
    const auto stored = takeInteger();
    value = stored == 1;
    if (stored == 0 || stored == 1) return;
    throwTaken();
}

void Statement::throwTaken() {
    --m_column;
    throwColumn();
}

void Statement::throwColumn() const {
    const char* name = sqlite3_column_name(m_prepared->m_statement, m_column);
    const auto& file = m_connection->file();
    throwError(Fault::ColumnDamaged, file.string(), file.filename().string(), name == nullptr ? "?" : name);
}

} // namespace sp::db::sqlite
