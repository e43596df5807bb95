// SPDX-License-Identifier: MIT
#include "db/stores/supply_store.h"

#include "db/records/record.h"
#include "db/stores/things.h"

namespace sp::db::stores {

using catalogue::Pack;
using catalogue::Supplier;

namespace {

const std::string kSupplierColumns = "name, lead_days, shipping_micros, free_from_micros, minimum_micros, "
                                     "freight, freight_ppm, usual_order_micros";
const std::string kPackColumns = "material_id, supplier_id, name, amount, is_usual, priced_on, item";

Supplier takeSupplier(sqlite::Statement& row) {
    Supplier s;
    row >> s.id >> s.name >> s.leadDays >> s.shipping >> s.freeFrom >> s.minimum >> s.freight >> s.freightShare >>
        s.usualOrder;
    return s;
}

Pack takePack(sqlite::Statement& row) {
    Pack p;
    row >> p.id >> p.material >> p.supplier >> p.name >> p.amount >> p.usual >> p.pricedOn >> p.item;
    return p;
}

std::vector<Supplier> readSuppliers(sqlite::Connection& db, const std::optional<base::Id>& only) {
    auto suppliers = takeThings<Supplier>(db, "supplier", kSupplierColumns, only, takeSupplier);
    for (const auto& supplier : suppliers) throwDamaged(db, catalogue::fields::check(supplier));
    return suppliers;
}

/// The packs of these rows, with their prices.
std::vector<Pack> readPacks(sqlite::Connection& db, sqlite::Statement rows) {
    auto packs = takeAll<Pack>(std::move(rows), takePack);
    takeParts(db, packs, "pack_price", "pack_id", "from_count, each_micros", [](sqlite::Statement& row, Pack& pack) {
        auto& price = pack.prices.emplace_back();
        row >> price.from >> price.each;
    });
    for (const auto& pack : packs) throwDamaged(db, catalogue::fields::check(pack));
    return packs;
}

} // namespace

std::vector<Supplier> SupplierStore::all() { return readSuppliers(m_db, std::nullopt); }

std::optional<Supplier> SupplierStore::find(const base::Id& id) { return firstOf(readSuppliers(m_db, id)); }

void SupplierStore::write(const Supplier& s, const Stamp& stamp) {
    static const std::string sql = upsert("supplier", "id", kSupplierColumns);
    m_db.run(sql, s.id, s.name, s.leadDays, s.shipping, s.freeFrom, s.minimum, s.freight, s.freightShare, s.usualOrder,
             stamp.seq);
}

void SupplierStore::remove(const base::Id& id, const Stamp& stamp) {
    markRemoved(m_db, "supplier", id, stamp.seq, stamp.at);
}

std::vector<Pack> PackStore::all() {
    const sqlite::ReadTransaction reading(m_db);
    return readPacks(m_db, m_db.query("SELECT id, " + kPackColumns +
                                      " FROM pack WHERE +deleted_at IS NULL " // see things.h
                                      "AND material_id IN (SELECT id FROM material WHERE deleted_at IS NULL) "
                                      "AND supplier_id IN (SELECT id FROM supplier WHERE deleted_at IS NULL) "
                                      "ORDER BY +name COLLATE COUNTING, id"));
}

std::optional<Pack> PackStore::find(const base::Id& id) {
    const sqlite::ReadTransaction reading(m_db);
    return firstOf(readPacks(
        m_db, m_db.query("SELECT id, " + kPackColumns + " FROM pack WHERE id = ? AND deleted_at IS NULL", id)));
}

std::optional<Pack> PackStore::usualOf(const base::Id& material) {
    const sqlite::ReadTransaction reading(m_db);
    return firstOf(
        readPacks(m_db, m_db.query("SELECT id, " + kPackColumns +
                                       " FROM pack WHERE material_id = ? AND is_usual = 1 AND deleted_at IS NULL",
                                   material)));
}

void PackStore::write(const Pack& p, const Stamp& stamp) {
    static const std::string sql = upsert("pack", "id", kPackColumns);
    m_db.run(sql, p.id, p.material, p.supplier, p.name, p.amount, p.usual, p.pricedOn, p.item, stamp.seq);
    m_db.run("DELETE FROM pack_price WHERE pack_id = ?", p.id);
    for (std::size_t i = 0; i < p.prices.size(); ++i)
        m_db.run("INSERT INTO pack_price (pack_id, position, from_count, each_micros) VALUES (?, ?, ?, ?)", p.id, i,
                 p.prices[i].from, p.prices[i].each);
}

void PackStore::remove(const base::Id& id, const Stamp& stamp) { markRemoved(m_db, "pack", id, stamp.seq, stamp.at); }

} // namespace sp::db::stores
