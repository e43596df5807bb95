// SPDX-License-Identifier: MIT
#include "db/sqlite/page_copy.h"

#include <sqlite3.h>

namespace sp::db::sqlite {

PageCopy::PageCopy(Connection& source, Connection& target)
    : m_target(target)
    , m_backup(sqlite3_backup_init(target.m_db.get(), "main", source.m_db.get(), "main")) {
    if (m_backup == nullptr) target.throwCode(sqlite3_errcode(target.m_db.get()));
}

PageCopy::~PageCopy() { sqlite3_backup_finish(m_backup); }

bool PageCopy::step(int pages) {
    if (m_isWhole) return true;
    const int code = sqlite3_backup_step(m_backup, pages);
    m_isWhole = code == SQLITE_DONE;
    const int basic = code & 0xFF;
    if (!m_isWhole && basic != SQLITE_OK && basic != SQLITE_BUSY && basic != SQLITE_LOCKED) m_target.throwCode(code);
    return m_isWhole;
}

void PageCopy::finish() {
    if (!step(-1)) m_target.throwCode(SQLITE_BUSY);
}

double PageCopy::share() const {
    const int all = sqlite3_backup_pagecount(m_backup);
    return all == 0 ? 0 : 1 - static_cast<double>(sqlite3_backup_remaining(m_backup)) / all;
}

} // namespace sp::db::sqlite
