// SPDX-License-Identifier: MIT
#include "db/stores/design_store.h"

#include "db/records/record.h"

#include <unordered_map>

namespace sp::db::stores {

using catalogue::Design;

namespace {

const std::string kDesignColumns =
    "name, width_nm, height_nm, has_templates_on_wall, planned_pieces, usual_base_id, art_time_ms, note";

Design takeDesign(sqlite::Statement& row) {
    Design d;
    row >> d.id >> d.name >> d.width >> d.height >> d.templatesOnWall >> d.plannedPieces;
    d.usualBase = takeIdOrNone(row);
    row >> d.artTime >> d.note;
    return d;
}

} // namespace

std::vector<Design> DesignStore::all() {
    const sqlite::Reading reading(m_db);
    std::vector<Design> designs;
    std::unordered_map<base::Id, std::size_t> places;
    auto rows = m_db.query("SELECT id, " + kDesignColumns +
                           " FROM design WHERE deleted_at IS NULL ORDER BY name COLLATE NOCASE, id");
    while (rows.step()) {
        designs.push_back(takeDesign(rows));
        places[designs.back().id] = designs.size() - 1;
    }
    auto stones = m_db.query("SELECT design_id, material_id, amount FROM design_stone ORDER BY design_id, position");
    while (stones.step()) {
        const auto place = places.find(stones.takeId());
        if (place == places.end()) continue;
        auto& stone = designs[place->second].stones.emplace_back();
        stones >> stone.material >> stone.count;
    }
    for (const auto& design : designs) refuseDamaged(m_db, catalogue::fields::check(design));
    return designs;
}

std::optional<Design> DesignStore::find(const base::Id& id) {
    const sqlite::Reading reading(m_db);
    auto row = m_db.query("SELECT id, " + kDesignColumns + " FROM design WHERE id = ? AND deleted_at IS NULL", id);
    if (!row.step()) return std::nullopt;
    Design design = takeDesign(row);
    auto stones = m_db.query("SELECT material_id, amount FROM design_stone WHERE design_id = ? ORDER BY position", id);
    while (stones.step()) {
        auto& stone = design.stones.emplace_back();
        stones >> stone.material >> stone.count;
    }
    refuseDamaged(m_db, catalogue::fields::check(design));
    return design;
}

void DesignStore::write(const Design& d, const Stamp& stamp) {
    static const std::string sql = upsert("design", "id", kDesignColumns);
    m_db.run(sql, d.id, d.name, d.width, d.height, d.templatesOnWall, d.plannedPieces, orNull(d.usualBase), d.artTime,
             d.note, stamp.seq);
    m_db.run("DELETE FROM design_stone WHERE design_id = ?", d.id);
    for (std::size_t i = 0; i < d.stones.size(); ++i)
        m_db.run("INSERT INTO design_stone (design_id, position, material_id, amount) VALUES (?, ?, ?, ?)", d.id, i,
                 d.stones[i].material, d.stones[i].count);
}

void DesignStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "design", id, stamp.seq, stamp.at);
}

} // namespace sp::db::stores
