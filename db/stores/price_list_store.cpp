// SPDX-License-Identifier: MIT
#include "db/stores/price_list_store.h"

#include "db/records/record.h"

namespace sp::db::stores {

using catalogue::PriceListColumns;

std::vector<PriceListColumns> PriceListStore::all() {
    const sqlite::ReadTransaction reading(m_db);
    std::vector<base::Id> suppliers;
    {
        auto rows = m_db.query("SELECT supplier_id FROM csv_columns WHERE deleted_at IS NULL AND supplier_id IN "
                               "(SELECT id FROM supplier WHERE deleted_at IS NULL) ORDER BY supplier_id");
        while (rows.step()) rows >> suppliers.emplace_back();
    }
    std::vector<PriceListColumns> lists;
    for (const auto& supplier : suppliers) lists.push_back(find(supplier).value());
    return lists;
}

std::optional<PriceListColumns> PriceListStore::find(const base::Id& supplier) {
    const sqlite::ReadTransaction reading(m_db);
    auto row =
        m_db.query("SELECT has_decimal_comma FROM csv_columns WHERE supplier_id = ? AND deleted_at IS NULL", supplier);
    if (!row.step()) return std::nullopt;
    PriceListColumns list;
    list.supplier = supplier;
    row >> list.decimalComma;
    auto columns =
        m_db.query("SELECT meaning, heading FROM csv_column WHERE supplier_id = ? ORDER BY position", supplier);
    while (columns.step()) {
        auto& column = list.columns.emplace_back();
        columns >> column.column >> column.heading;
    }
    throwDamaged(m_db, catalogue::fields::check(list));
    return list;
}

void PriceListStore::write(const PriceListColumns& list, const Stamp& stamp) {
    static const std::string sql = upsert("csv_columns", "supplier_id", "has_decimal_comma");
    m_db.run(sql, list.supplier, list.decimalComma, stamp.seq);
    m_db.run("DELETE FROM csv_column WHERE supplier_id = ?", list.supplier);
    for (std::size_t i = 0; i < list.columns.size(); ++i)
        m_db.run("INSERT INTO csv_column (supplier_id, position, meaning, heading) VALUES (?, ?, ?, ?)", list.supplier,
                 i, list.columns[i].column, list.columns[i].heading);
}

void PriceListStore::remove(const base::Id& supplier, const Stamp& stamp) {
    markRemoved(m_db, "csv_columns", supplier, stamp.seq, stamp.at, "supplier_id");
}

} // namespace sp::db::stores
