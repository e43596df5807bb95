// SPDX-License-Identifier: MIT
#include "db/sqlite/transaction.h"

#include "db/db_error.h"

namespace sp::db::sqlite {

namespace {

/// Rolling back must not throw from a destructor; when it fails, SQLite has rolled back by itself, or will when the
/// file is next opened, or the next transaction does before it begins.
void quietly(Connection& connection, const char* sql) {
    try {
        connection.run(sql);
    } catch (const DbError&) { return; }
}

} // namespace

bool Connection::isWithinTransaction() {
    if (m_transactions == 0 && isInTransaction()) run("ROLLBACK");
    return isInTransaction();
}

Transaction::Transaction(Connection& connection)
    : m_connection(connection)
    , m_isNested(connection.isWithinTransaction()) {
    connection.run(m_isNested ? "SAVEPOINT step" : "BEGIN IMMEDIATE");
    ++connection.m_transactions;
}

Transaction::~Transaction() {
    --m_connection.m_transactions;
    if (!m_isOpen || !m_connection.isInTransaction()) return;
    if (m_isNested) {
        quietly(m_connection, "ROLLBACK TO step");
        quietly(m_connection, "RELEASE step");
    } else {
        quietly(m_connection, "ROLLBACK");
    }
}

void Transaction::commit() {
    m_connection.run(m_isNested ? "RELEASE step" : "COMMIT");
    m_isOpen = false;
}

ReadTransaction::ReadTransaction(Connection& connection)
    : m_connection(connection)
    , m_isOurs(!connection.isWithinTransaction()) {
    if (m_isOurs) connection.run("BEGIN");
    ++connection.m_transactions;
}

ReadTransaction::~ReadTransaction() {
    --m_connection.m_transactions;
    if (m_isOurs && m_connection.isInTransaction()) quietly(m_connection, "COMMIT");
}

} // namespace sp::db::sqlite
