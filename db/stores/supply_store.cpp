// SPDX-License-Identifier: MIT
#include "db/stores/supply_store.h"

#include "db/records/record.h"

#include <unordered_map>

namespace sp::db::stores {

using catalogue::Pack;
using catalogue::PriceBreak;
using catalogue::Supplier;

namespace {

const std::string kSupplierColumns = "name, lead_days, shipping_micros, free_from_micros, minimum_micros";
const std::string kPackColumns = "material_id, supplier_id, name, amount, is_usual, priced_on";

Supplier takeSupplier(sqlite::Statement& row) {
    Supplier s;
    row >> s.id >> s.name >> s.leadDays >> s.shipping >> s.freeFrom >> s.minimum;
    return s;
}

Pack takePack(sqlite::Statement& row) {
    Pack p;
    row >> p.id >> p.material >> p.supplier >> p.name >> p.amount >> p.usual >> p.pricedOn;
    return p;
}

} // namespace

std::vector<Supplier> SupplierStore::all() {
    std::vector<Supplier> suppliers;
    auto rows = m_db.query("SELECT id, " + kSupplierColumns +
                           " FROM supplier WHERE deleted_at IS NULL ORDER BY name COLLATE NOCASE, id");
    while (rows.step()) suppliers.push_back(takeSupplier(rows));
    for (const auto& supplier : suppliers) refuseDamaged(m_db, catalogue::fields::check(supplier));
    return suppliers;
}

std::optional<Supplier> SupplierStore::find(const base::Id& id) {
    auto row = m_db.query("SELECT id, " + kSupplierColumns + " FROM supplier WHERE id = ? AND deleted_at IS NULL", id);
    if (!row.step()) return std::nullopt;
    Supplier supplier = takeSupplier(row);
    refuseDamaged(m_db, catalogue::fields::check(supplier));
    return supplier;
}

void SupplierStore::write(const Supplier& s, const Stamp& stamp) {
    static const std::string sql = upsert("supplier", "id", kSupplierColumns);
    m_db.run(sql, s.id, s.name, s.leadDays, s.shipping, s.freeFrom, s.minimum, stamp.seq);
}

void SupplierStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "supplier", id, stamp.seq, stamp.at);
}

std::vector<Pack> PackStore::all() {
    const sqlite::Reading reading(m_db);
    std::vector<Pack> packs;
    std::unordered_map<base::Id, std::size_t> places;
    auto rows = m_db.query("SELECT id, " + kPackColumns +
                           " FROM pack WHERE deleted_at IS NULL "
                           "AND material_id IN (SELECT id FROM material WHERE deleted_at IS NULL) "
                           "AND supplier_id IN (SELECT id FROM supplier WHERE deleted_at IS NULL) "
                           "ORDER BY name COLLATE NOCASE, id");
    while (rows.step()) {
        packs.push_back(takePack(rows));
        places[packs.back().id] = packs.size() - 1;
    }
    auto prices = m_db.query("SELECT pack_id, from_count, each_micros FROM pack_price ORDER BY pack_id, position");
    while (prices.step()) {
        const auto place = places.find(prices.takeId());
        if (place == places.end()) continue;
        auto& price = packs[place->second].prices.emplace_back();
        prices >> price.from >> price.each;
    }
    for (const auto& pack : packs) refuseDamaged(m_db, catalogue::fields::check(pack));
    return packs;
}

std::optional<Pack> PackStore::one(sqlite::Statement row) {
    if (!row.step()) return std::nullopt;
    Pack pack = takePack(row);
    auto prices =
        m_db.query("SELECT from_count, each_micros FROM pack_price WHERE pack_id = ? ORDER BY position", pack.id);
    while (prices.step()) {
        auto& price = pack.prices.emplace_back();
        prices >> price.from >> price.each;
    }
    refuseDamaged(m_db, catalogue::fields::check(pack));
    return pack;
}

std::optional<Pack> PackStore::find(const base::Id& id) {
    const sqlite::Reading reading(m_db);
    return one(m_db.query("SELECT id, " + kPackColumns + " FROM pack WHERE id = ? AND deleted_at IS NULL", id));
}

std::optional<Pack> PackStore::usualOf(const base::Id& material) {
    const sqlite::Reading reading(m_db);
    return one(m_db.query("SELECT id, " + kPackColumns +
                              " FROM pack WHERE material_id = ? AND is_usual = 1 AND deleted_at IS NULL",
                          material));
}

void PackStore::write(const Pack& p, const Stamp& stamp) {
    static const std::string sql = upsert("pack", "id", kPackColumns);
    m_db.run(sql, p.id, p.material, p.supplier, p.name, p.amount, p.usual, p.pricedOn, stamp.seq);
    m_db.run("DELETE FROM pack_price WHERE pack_id = ?", p.id);
    for (std::size_t i = 0; i < p.prices.size(); ++i)
        m_db.run("INSERT INTO pack_price (pack_id, position, from_count, each_micros) VALUES (?, ?, ?, ?)", p.id, i,
                 p.prices[i].from, p.prices[i].each);
}

void PackStore::remove(const base::Id& id, const Stamp& stamp) { markRemoved(m_db, "pack", id, stamp.seq, stamp.at); }

} // namespace sp::db::stores
