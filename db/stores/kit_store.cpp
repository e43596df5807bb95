// SPDX-License-Identifier: MIT
#include "db/stores/kit_store.h"

#include "db/records/record.h"
#include "db/stores/things.h"

namespace sp::db::stores {

using catalogue::Kit;

namespace {

const std::string kKitColumns =
    "name, supplier_id, made_for_id, price_micros, with_templates_micros, short_count_ppm, priced_on";

Kit takeKit(sqlite::Statement& row) {
    Kit kit;
    row >> kit.id >> kit.name >> kit.supplier;
    kit.design = takeIdOrNone(row);
    row >> kit.price >> kit.priceWithTemplates >> kit.shortCount >> kit.pricedOn;
    return kit;
}

std::vector<Kit> readKits(sqlite::Connection& db, const std::optional<base::Id>& only) {
    const sqlite::ReadTransaction reading(db);
    auto kits = takeThings<Kit>(db, "kit", kKitColumns, only, takeKit);
    takeParts(db, kits, "kit_item", "kit_id", "material_id, amount", [](sqlite::Statement& row, Kit& kit) {
        auto& item = kit.items.emplace_back();
        row >> item.material >> item.count;
    });
    takeParts(db, kits, "kit_tool", "kit_id", "name",
              [](sqlite::Statement& row, Kit& kit) { row >> kit.tools.emplace_back(); });
    for (const auto& kit : kits) throwDamaged(db, catalogue::fields::check(kit));
    return kits;
}

} // namespace

std::vector<Kit> KitStore::all() { return readKits(m_db, std::nullopt); }

std::optional<Kit> KitStore::find(const base::Id& id) { return firstOf(readKits(m_db, id)); }

void KitStore::write(const Kit& k, const Stamp& stamp) {
    static const std::string sql = upsert("kit", "id", kKitColumns);
    m_db.run(sql, k.id, k.name, k.supplier, orNull(k.design), k.price, k.priceWithTemplates, k.shortCount, k.pricedOn,
             stamp.seq);
    m_db.run("DELETE FROM kit_item WHERE kit_id = ?", k.id);
    for (std::size_t i = 0; i < k.items.size(); ++i)
        m_db.run("INSERT INTO kit_item (kit_id, position, material_id, amount) VALUES (?, ?, ?, ?)", k.id, i,
                 k.items[i].material, k.items[i].count);
    m_db.run("DELETE FROM kit_tool WHERE kit_id = ?", k.id);
    for (std::size_t i = 0; i < k.tools.size(); ++i)
        m_db.run("INSERT INTO kit_tool (kit_id, position, name) VALUES (?, ?, ?)", k.id, i, k.tools[i]);
}

void KitStore::remove(const base::Id& id, const Stamp& stamp) { markRemoved(m_db, "kit", id, stamp.seq, stamp.at); }

std::string KitStore::nameOfUser(const base::Id& id) {
    auto row = m_db.query("SELECT name FROM kit WHERE deleted_at IS NULL AND (supplier_id = ?1 OR made_for_id = ?1 OR "
                          "id IN (SELECT kit_id FROM kit_item WHERE material_id = ?1)) ORDER BY name, id LIMIT 1",
                          id);
    std::string name;
    if (row.step()) row >> name;
    return name;
}

} // namespace sp::db::stores
