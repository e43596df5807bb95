// SPDX-License-Identifier: MIT
#include "db/stores/design_store.h"

#include "db/records/record.h"
#include "db/stores/things.h"

namespace sp::db::stores {

using catalogue::Design;

namespace {

const std::string kDesignColumns = "name, width_nm, height_nm, has_templates_on_wall, planned_pieces, usual_base_id, "
                                   "art_time_ms, note, has_own_packing, set_templates_micros, set_work_micros";

std::optional<catalogue::SetCost> takeSetCost(sqlite::Statement& row) {
    std::optional<units::Money> templates;
    std::optional<units::Money> work;
    row >> templates >> work;
    if (templates.has_value() != work.has_value()) row.throwTaken();
    if (!templates) return std::nullopt;
    return catalogue::SetCost{*templates, *work};
}

Design takeDesign(sqlite::Statement& row) {
    Design d;
    row >> d.id >> d.name >> d.width >> d.height >> d.templatesOnWall >> d.plannedPieces;
    d.usualBase = takeIdOrNone(row);
    bool hasOwnPacking = false;
    row >> d.artTime >> d.note >> hasOwnPacking;
    if (hasOwnPacking) d.packing.emplace();
    d.setCost = takeSetCost(row);
    return d;
}

std::vector<Design> readDesigns(sqlite::Connection& db, const std::optional<base::Id>& only) {
    const sqlite::ReadTransaction reading(db);
    auto designs = takeThings<Design>(db, "design", kDesignColumns, only, takeDesign);
    takeParts(db, designs, "design_stone", "design_id", "material_id, amount",
              [](sqlite::Statement& row, Design& design) {
                  auto& stone = design.stones.emplace_back();
                  row >> stone.material >> stone.count;
              });
    takeParts(db, designs, "design_packing", "design_id", "material_id, amount, per",
              [](sqlite::Statement& row, Design& design) {
                  if (!design.packing) row.throwTaken();
                  auto& use = design.packing->emplace_back();
                  row >> use.material >> use.amount >> use.per;
              });
    for (const auto& design : designs) throwDamaged(db, catalogue::fields::check(design));
    return designs;
}

} // namespace

std::vector<Design> DesignStore::all() { return readDesigns(m_db, std::nullopt); }

std::optional<Design> DesignStore::find(const base::Id& id) { return firstOf(readDesigns(m_db, id)); }

void DesignStore::write(const Design& d, const Stamp& stamp) {
    static const std::string sql = upsert("design", "id", kDesignColumns);
    using SetMoney = std::optional<units::Money>;
    m_db.run(sql, d.id, d.name, d.width, d.height, d.templatesOnWall, d.plannedPieces, orNull(d.usualBase), d.artTime,
             d.note, d.packing.has_value(), d.setCost ? SetMoney(d.setCost->templates) : std::nullopt,
             d.setCost ? SetMoney(d.setCost->work) : std::nullopt, stamp.seq);
    m_db.run("DELETE FROM design_stone WHERE design_id = ?", d.id);
    for (std::size_t i = 0; i < d.stones.size(); ++i)
        m_db.run("INSERT INTO design_stone (design_id, position, material_id, amount) VALUES (?, ?, ?, ?)", d.id, i,
                 d.stones[i].material, d.stones[i].count);
    m_db.run("DELETE FROM design_packing WHERE design_id = ?", d.id);
    if (!d.packing) return;
    for (std::size_t i = 0; i < d.packing->size(); ++i) {
        const auto& use = (*d.packing)[i];
        m_db.run("INSERT INTO design_packing (design_id, position, material_id, amount, per) VALUES (?, ?, ?, ?, ?)",
                 d.id, i, use.material, use.amount, use.per);
    }
}

std::unordered_map<base::Id, catalogue::DesignSet> DesignStore::sets() {
    std::unordered_map<base::Id, catalogue::DesignSet> sets;
    auto rows = m_db.query("SELECT id, set_templates_micros, set_work_micros FROM design "
                           "WHERE planned_pieces IS NOT NULL AND deleted_at IS NULL");
    while (rows.step()) {
        const auto id = rows.takeId();
        sets[id] = {id, {}, takeSetCost(rows)};
    }
    return sets;
}

void DesignStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "design", id, stamp.seq, stamp.at);
}

} // namespace sp::db::stores
