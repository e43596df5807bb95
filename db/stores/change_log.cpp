// SPDX-License-Identifier: MIT
#include "db/stores/change_log.h"

namespace sp::db::stores {

std::int64_t ChangeLog::add(const base::Id& command, std::int64_t step, const std::string& at, const std::string& actor,
                            std::string_view kind, const Change& change) {
    auto row = m_db.query("INSERT INTO change (command_id, step, at, actor, kind, entity, entity_id, before, after) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING seq",
                          command, step, at, actor, kind, change.entity, change.id, change.before, change.after);
    std::int64_t seq = 0;
    while (row.step()) row >> seq;
    return seq;
}

std::string ChangeLog::newest(std::string_view entity, const base::Id& id) {
    auto row =
        m_db.query("SELECT after FROM change WHERE entity = ? AND entity_id = ? ORDER BY seq DESC LIMIT 1", entity, id);
    return row.step() ? row.takeText() : std::string();
}

} // namespace sp::db::stores
