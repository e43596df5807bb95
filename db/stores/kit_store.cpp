// SPDX-License-Identifier: MIT
#include "db/stores/kit_store.h"

#include "db/records/record.h"

#include <unordered_map>

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

} // namespace

std::vector<Kit> KitStore::all() {
    const sqlite::Reading reading(m_db);
    std::vector<Kit> kits;
    std::unordered_map<base::Id, std::size_t> places;
    auto rows =
        m_db.query("SELECT id, " + kKitColumns + " FROM kit WHERE deleted_at IS NULL ORDER BY name COLLATE NOCASE, id");
    while (rows.step()) {
        kits.push_back(takeKit(rows));
        places[kits.back().id] = kits.size() - 1;
    }
    auto items = m_db.query("SELECT kit_id, material_id, amount FROM kit_item ORDER BY kit_id, position");
    while (items.step()) {
        const auto place = places.find(items.takeId());
        if (place == places.end()) continue;
        auto& item = kits[place->second].items.emplace_back();
        items >> item.material >> item.count;
    }
    auto tools = m_db.query("SELECT kit_id, name FROM kit_tool ORDER BY kit_id, position");
    while (tools.step()) {
        const auto place = places.find(tools.takeId());
        if (place != places.end()) tools >> kits[place->second].tools.emplace_back();
    }
    for (const auto& kit : kits) refuseDamaged(m_db, catalogue::fields::check(kit));
    return kits;
}

std::optional<Kit> KitStore::find(const base::Id& id) {
    const sqlite::Reading reading(m_db);
    auto row = m_db.query("SELECT id, " + kKitColumns + " FROM kit WHERE id = ? AND deleted_at IS NULL", id);
    if (!row.step()) return std::nullopt;
    Kit kit = takeKit(row);
    auto items = m_db.query("SELECT material_id, amount FROM kit_item WHERE kit_id = ? ORDER BY position", id);
    while (items.step()) {
        auto& item = kit.items.emplace_back();
        items >> item.material >> item.count;
    }
    auto tools = m_db.query("SELECT name FROM kit_tool WHERE kit_id = ? ORDER BY position", id);
    while (tools.step()) tools >> kit.tools.emplace_back();
    refuseDamaged(m_db, catalogue::fields::check(kit));
    return kit;
}

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
