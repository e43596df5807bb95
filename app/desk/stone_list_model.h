// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"

#include <QAbstractListModel>
#include <QColor>

#include <vector>

namespace sp::desk {

/// A row of a list of designs or supplies: what is shown, made by whoever knows the materials.
struct StoneListRow {
    base::Id id;
    QString name;
    QString detail;
    std::vector<QColor> stones;

    friend bool operator==(const StoneListRow&, const StoneListRow&) = default;
};

class StoneListModel : public QAbstractListModel {
    Q_OBJECT

  public:
    /// StonesRole is a list of colours; nothing where no row has stones.
    enum Roles { DetailRole = Qt::UserRole + 1, StonesRole };

    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<StoneListRow> rows);
    const StoneListRow& row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }
    int indexOf(const base::Id& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<StoneListRow> m_rows;
    bool m_hasStones = false; ///< any of them; else names need no room beside them
};

} // namespace sp::desk
