// SPDX-License-Identifier: MIT
#include "db/stores/material_store.h"

#include "db/db_error.h"
#include "db/records/record.h"
#include "db/stores/things.h"

namespace sp::db::stores {

using catalogue::Material;

namespace {

const std::string kMaterialColumns =
    "name, kind, basis, fixed_price_micros, colour, rgb, stone_size, loss_ppm, sheet_form, "
    "width_nm, height_nm, margin_nm, border_nm, gap_nm, is_one_way, share_basis, lifts, is_meant_as_nothing";

Material takeMaterial(sqlite::Statement& row) {
    Material m;
    row >> m.id >> m.name >> m.kind >> m.basis >> m.fixedPrice >> m.stone.colour >> m.stone.rgb >> m.stone.size >>
        m.stone.loss >> m.sheet.form >> m.sheet.width >> m.sheet.height >> m.sheet.margin >> m.sheet.border >>
        m.sheet.gap >> m.sheet.oneWay >> m.sheet.basis >> m.sheet.lifts >> m.meantAsNothing;
    return m;
}

std::vector<Material> readMaterials(sqlite::Connection& db, const std::optional<base::Id>& only) {
    const sqlite::ReadTransaction reading(db);
    auto materials = takeThings<Material>(db, "material", kMaterialColumns, only, takeMaterial);
    takeParts(db, materials, "blank_size", "material_id", "name, extra_cost_micros, surcharge_micros",
              [](sqlite::Statement& row, Material& material) {
                  auto& size = material.sizes.emplace_back();
                  row >> size.name >> size.extraCost >> size.surcharge;
              });
    for (const auto& material : materials) throwDamaged(db, catalogue::fields::check(material));
    return materials;
}

} // namespace

std::vector<Material> MaterialStore::all() { return readMaterials(m_db, std::nullopt); }

std::optional<Material> MaterialStore::find(const base::Id& id) { return firstOf(readMaterials(m_db, id)); }

void MaterialStore::write(const Material& m, const Stamp& stamp) {
    static const std::string sql = upsert("material", "id", kMaterialColumns);
    m_db.run(sql, m.id, m.name, m.kind, m.basis, m.fixedPrice, m.stone.colour, m.stone.rgb, m.stone.size, m.stone.loss,
             m.sheet.form, m.sheet.width, m.sheet.height, m.sheet.margin, m.sheet.border, m.sheet.gap, m.sheet.oneWay,
             m.sheet.basis, m.sheet.lifts, m.meantAsNothing, stamp.seq);
    m_db.run("DELETE FROM blank_size WHERE material_id = ?", m.id);
    for (std::size_t i = 0; i < m.sizes.size(); ++i)
        m_db.run("INSERT INTO blank_size (material_id, position, name, extra_cost_micros, surcharge_micros) "
                 "VALUES (?, ?, ?, ?, ?)",
                 m.id, i, m.sizes[i].name, m.sizes[i].extraCost, m.sizes[i].surcharge);
}

void MaterialStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "material", id, stamp.seq, stamp.at);
}

void MaterialStore::expectUnused(const base::Id& id) {
    std::string name;
    auto design = m_db.query("SELECT name FROM design WHERE deleted_at IS NULL AND (usual_base_id = ?1 OR id IN "
                             "(SELECT design_id FROM design_stone WHERE material_id = ?1 UNION "
                             "SELECT design_id FROM design_packing WHERE material_id = ?1)) ORDER BY name, id LIMIT 1",
                             id);
    if (design.step()) {
        design >> name;
        throwError(Fault::MaterialOfDesign, name, name);
    }
    auto packing = m_db.query("SELECT 1 FROM shop_packing WHERE material_id = ? LIMIT 1", id);
    if (packing.step()) throwError(Fault::MaterialOfPacking, {});
    auto usual = m_db.query("SELECT 1 FROM shop WHERE usual_tape_id = ?1 OR usual_template_id = ?1", id);
    if (usual.step()) throwError(Fault::MaterialIsUsual, {});
}

} // namespace sp::db::stores
