// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/formatter.h"
#include "core/catalogue/design.h"

#include <QAbstractListModel>
#include <QColor>

#include <vector>

namespace sp::designs {

/// A row of the list: what is shown, made by whoever knows the materials.
struct DesignRow {
    base::Id id;
    QString name;
    QString detail;
    std::vector<QColor> stones;

    friend bool operator==(const DesignRow&, const DesignRow&) = default;
};

class DesignListModel : public QAbstractListModel {
    Q_OBJECT

  public:
    enum Roles { DetailRole = Qt::UserRole + 1, StonesRole };

    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<DesignRow> rows);
    const DesignRow& row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }
    int indexOf(const base::Id& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<DesignRow> m_rows;
};

} // namespace sp::designs
