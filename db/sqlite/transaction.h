// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"

namespace sp::db::sqlite {

/// One BEGIN IMMEDIATE … COMMIT, or a savepoint when one is open already. Without `commit` everything is rolled back
/// at the end of its life, also when SQLite rolled back by itself. After `commit` returns, the work of the outermost
/// transaction is on disk.
class Transaction {
  public:
    explicit Transaction(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    void commit();

  private:
    Connection& m_connection;
    bool m_isNested;
    bool m_isOpen = true;
};

/// A consistent view for reading several tables: BEGIN … COMMIT without writing.
class ReadTransaction {
  public:
    explicit ReadTransaction(Connection& connection);
    ~ReadTransaction();
    ReadTransaction(const ReadTransaction&) = delete;
    ReadTransaction& operator=(const ReadTransaction&) = delete;

  private:
    Connection& m_connection;
    bool m_isOurs;
};

} // namespace sp::db::sqlite
