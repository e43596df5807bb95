// SPDX-License-Identifier: MIT
#include "app/desk/stone_list_model.h"

#include <algorithm>

namespace sp::desk {

void StoneListModel::setRows(std::vector<StoneListRow> rows) {
    if (rows == m_rows) return;
    m_hasStones = std::ranges::any_of(rows, [](const StoneListRow& row) { return !row.stones.empty(); });
    if (rows.size() == m_rows.size()) {
        m_rows = std::move(rows);
        if (!m_rows.empty()) Q_EMIT dataChanged(index(0), index(static_cast<int>(m_rows.size()) - 1));
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int StoneListModel::indexOf(const base::Id& id) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].id == id) return static_cast<int>(i);
    return -1;
}

int StoneListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant StoneListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= static_cast<int>(m_rows.size())) return {};
    const auto& shown = row(index.row());
    switch (role) {
    case Qt::DisplayRole: return shown.name;
    case Qt::AccessibleTextRole: return QStringLiteral("%1, %2").arg(shown.name, shown.detail);
    case DetailRole: return shown.detail;
    case StonesRole: {
        if (!m_hasStones) return {};
        QVariantList colours;
        for (const auto& colour : shown.stones) colours.push_back(colour);
        return colours;
    }
    default: return {};
    }
}

} // namespace sp::desk

#include "moc_stone_list_model.cpp"
