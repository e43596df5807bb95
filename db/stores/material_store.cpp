// SPDX-License-Identifier: MIT
#include "db/stores/material_store.h"

#include "db/records/record.h"

#include <unordered_map>

namespace sp::db::stores {

using catalogue::BlankSize;
using catalogue::Material;

namespace {

const std::string kMaterialColumns =
    "name, kind, basis, fixed_price_micros, colour, rgb, stone_size, loss_ppm, sheet_form, "
    "width_nm, height_nm, margin_nm, border_nm, gap_nm, is_one_way, share_basis, lifts";

Material takeMaterial(sqlite::Statement& row) {
    Material m;
    row >> m.id >> m.name >> m.kind >> m.basis >> m.fixedPrice >> m.stone.colour >> m.stone.rgb >> m.stone.size >>
        m.stone.loss >> m.sheet.form >> m.sheet.width >> m.sheet.height >> m.sheet.margin >> m.sheet.border >>
        m.sheet.gap >> m.sheet.oneWay >> m.sheet.basis >> m.sheet.lifts;
    return m;
}

BlankSize takeSize(sqlite::Statement& row) {
    BlankSize size;
    row >> size.name >> size.extraCost >> size.surcharge;
    return size;
}

} // namespace

std::vector<Material> MaterialStore::all() {
    const sqlite::Reading reading(m_db);
    std::vector<Material> materials;
    std::unordered_map<base::Id, std::size_t> places;
    auto rows = m_db.query("SELECT id, " + kMaterialColumns +
                           " FROM material WHERE deleted_at IS NULL ORDER BY name COLLATE NOCASE, id");
    while (rows.step()) {
        materials.push_back(takeMaterial(rows));
        places[materials.back().id] = materials.size() - 1;
    }
    auto sizes = m_db.query("SELECT material_id, name, extra_cost_micros, surcharge_micros FROM blank_size "
                            "ORDER BY material_id, position");
    while (sizes.step()) {
        const auto place = places.find(sizes.takeId());
        if (place != places.end()) materials[place->second].sizes.push_back(takeSize(sizes));
    }
    for (const auto& material : materials) refuseDamaged(m_db, catalogue::fields::check(material));
    return materials;
}

std::optional<Material> MaterialStore::find(const base::Id& id) {
    const sqlite::Reading reading(m_db);
    auto row = m_db.query("SELECT id, " + kMaterialColumns + " FROM material WHERE id = ? AND deleted_at IS NULL", id);
    if (!row.step()) return std::nullopt;
    Material material = takeMaterial(row);
    auto sizes = m_db.query("SELECT name, extra_cost_micros, surcharge_micros FROM blank_size WHERE material_id = ? "
                            "ORDER BY position",
                            id);
    while (sizes.step()) material.sizes.push_back(takeSize(sizes));
    refuseDamaged(m_db, catalogue::fields::check(material));
    return material;
}

void MaterialStore::write(const Material& m, const Stamp& stamp) {
    static const std::string sql = upsert("material", "id", kMaterialColumns);
    m_db.run(sql, m.id, m.name, m.kind, m.basis, m.fixedPrice, m.stone.colour, m.stone.rgb, m.stone.size, m.stone.loss,
             m.sheet.form, m.sheet.width, m.sheet.height, m.sheet.margin, m.sheet.border, m.sheet.gap, m.sheet.oneWay,
             m.sheet.basis, m.sheet.lifts, stamp.seq);
    m_db.run("DELETE FROM blank_size WHERE material_id = ?", m.id);
    for (std::size_t i = 0; i < m.sizes.size(); ++i)
        m_db.run("INSERT INTO blank_size (material_id, position, name, extra_cost_micros, surcharge_micros) "
                 "VALUES (?, ?, ?, ?, ?)",
                 m.id, i, m.sizes[i].name, m.sizes[i].extraCost, m.sizes[i].surcharge);
}

void MaterialStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "material", id, stamp.seq, stamp.at);
}

std::string MaterialStore::usedBy(const base::Id& id) {
    std::string name;
    auto design = m_db.query("SELECT name FROM design WHERE deleted_at IS NULL AND (usual_base_id = ?1 OR id IN "
                             "(SELECT design_id FROM design_stone WHERE material_id = ?1)) ORDER BY name, id LIMIT 1",
                             id);
    if (design.step()) {
        design >> name;
        return "the design “" + name + "”";
    }
    auto packing = m_db.query("SELECT 1 FROM shop_packing WHERE material_id = ? LIMIT 1", id);
    if (packing.step()) return "the packing list of the shop";
    auto usual = m_db.query("SELECT 1 FROM shop WHERE usual_tape_id = ?1 OR usual_template_id = ?1", id);
    return usual.step() ? "the shop’s usual tape or template sheet" : std::string();
}

} // namespace sp::db::stores
