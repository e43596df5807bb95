// SPDX-License-Identifier: MIT
#include "db/stores/shop_store.h"

#include "db/db_error.h"
#include "db/records/record.h"
#include "db/stores/record_store.h"

namespace sp::db::stores {

using catalogue::BenchStandards;
using catalogue::Shop;
using sqlite::Digest;

namespace {

constexpr std::int64_t kOnlyRow = 1;

/// The one value of a table with one row, from its record.
template<class T>
std::optional<T> findOnly(sqlite::Connection& db, const char* sql) {
    const sqlite::ReadTransaction reading(db);
    Digest digest;
    {
        auto row = db.query(sql);
        if (!row.step()) return std::nullopt;
        row >> digest;
    }
    auto value = records::read<T>(RecordStore(db).find(digest));
    if (!value) throwDamaged(db, base::fail(value.error()));
    return std::move(*value);
}

/// The usual rate of tax, then the further ones.
catalogue::TaxRate rateOf(const catalogue::TaxRule& tax, std::size_t position) {
    return position == 0 ? catalogue::TaxRate{tax.name, tax.rate} : tax.others[position - 1];
}

} // namespace

std::optional<Shop> ShopStore::find() { return findOnly<Shop>(m_db, "SELECT digest FROM shop WHERE only_row = 1"); }

void ShopStore::write(const Shop& s, const Stamp& stamp) {
    static const std::string sql = upsert("shop", "only_row", "digest, usual_tape_id, usual_template_id", false);
    m_db.run(sql, kOnlyRow, RecordStore(m_db).save(records::write(s)), orNull(s.usualTape), orNull(s.usualTemplate),
             stamp.seq);
    m_db.run("DELETE FROM tax_rate");
    for (std::size_t i = 0; i <= s.rules.tax.others.size(); ++i) {
        const auto rate = rateOf(s.rules.tax, i);
        m_db.run("INSERT INTO tax_rate (position, name, rate_ppm) VALUES (?, ?, ?)", i, rate.name, rate.rate);
    }
    m_db.run("DELETE FROM shop_packing");
    for (std::size_t i = 0; i < s.packing.size(); ++i)
        m_db.run("INSERT INTO shop_packing (position, material_id, amount, per) VALUES (?, ?, ?, ?)", i,
                 s.packing[i].material, s.packing[i].amount, s.packing[i].per);
}

void ShopStore::expectColumns(const Shop& shop) {
    const auto expect = [&](bool holds) {
        if (!holds) throwError(Fault::ShopNotAsKept, "shop");
    };
    {
        auto row = m_db.query("SELECT usual_tape_id, usual_template_id FROM shop WHERE only_row = ?", kOnlyRow);
        expect(row.step());
        const auto tape = takeIdOrNone(row);
        expect(tape == shop.usualTape && takeIdOrNone(row) == shop.usualTemplate);
    }
    {
        auto row = m_db.query("SELECT position, name, rate_ppm FROM tax_rate ORDER BY position");
        std::size_t found = 0;
        for (; row.step(); ++found) {
            const auto position = row.takeInteger();
            catalogue::TaxRate rate;
            row >> rate.name >> rate.rate;
            expect(found <= shop.rules.tax.others.size() && position == static_cast<std::int64_t>(found) &&
                   rate == rateOf(shop.rules.tax, found));
        }
        expect(found == shop.rules.tax.others.size() + 1);
    }
    auto rows = m_db.query("SELECT position, material_id, amount, per FROM shop_packing ORDER BY position");
    std::size_t found = 0;
    for (; rows.step(); ++found) {
        const auto position = rows.takeInteger();
        catalogue::PackingUse use;
        rows >> use.material >> use.amount >> use.per;
        expect(found < shop.packing.size() && position == static_cast<std::int64_t>(found) &&
               use == shop.packing[found]);
    }
    expect(found == shop.packing.size());
}

std::optional<BenchStandards> BenchStore::find() {
    return findOnly<BenchStandards>(m_db, "SELECT digest FROM bench WHERE only_row = 1");
}

void BenchStore::write(const BenchStandards& bench, const Stamp& stamp) {
    static const std::string sql = upsert("bench", "only_row", "digest", false);
    m_db.run(sql, kOnlyRow, RecordStore(m_db).save(records::write(bench)), stamp.seq);
}

} // namespace sp::db::stores
