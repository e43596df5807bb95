// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"

#include <memory>

struct sqlite3_backup;

namespace sp::db::sqlite {

/// A copy of all that `source` holds into `target`, page by page. What is changed through `source` meanwhile is changed
/// in the copy as well (sqlite.org/backup.html); what another program changes makes it begin again. Both must outlive
/// it; left unfinished, the target holds nothing. Throws DbError, which names the target's file.
class PageCopy {
  public:
    PageCopy(Connection& source, Connection& target);
    ~PageCopy();
    PageCopy(const PageCopy&) = delete;
    PageCopy& operator=(const PageCopy&) = delete;

    /// Copies up to `pages` more, all of them when that is negative; true once all are copied. False also where the
    /// file is being written just now: then it is tried again.
    bool step(int pages);
    /// All of them at once. Throws Busy while the file is being written.
    void finish();
    /// Of the pages there are, 0 to 1.
    double share() const;

  private:
    Connection& m_target;
    sqlite3_backup* m_backup;
    bool m_isWhole = false;
};

} // namespace sp::db::sqlite
