// SPDX-License-Identifier: MIT
#pragma once

#include <QTableView>

namespace sp::desk {

/// A table to be read: rows are chosen as a whole with the arrow keys, the one looked at has the jewel outline while
/// the table has the focus, and Tab goes on to what comes after the table.
class RowTable : public QTableView {
    Q_OBJECT

  public:
    explicit RowTable(QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    QItemSelectionModel::SelectionFlags selectionCommand(const QModelIndex& index, const QEvent* event) const override;
};

} // namespace sp::desk
