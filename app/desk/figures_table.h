// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/row_table.h"

class QStandardItemModel;

namespace sp::desk {

/// A column of a FiguresTable; figures stand at its right edge.
struct TableColumn {
    QString head;
    bool holdsFigures = false;
    bool takesSpare = true; ///< shares the width that is left; the others are as wide as what they hold
};

/// A table of which the rows are given as texts. The page that it lies on scrolls to the row that is gone to.
class FiguresTable : public RowTable {
    Q_OBJECT

  public:
    FiguresTable(const QString& name, std::vector<TableColumn> columns, QWidget* parent = nullptr);

    /// Shows these in place of the rows before; a row has as many cells as there are columns.
    void setRows(const std::vector<QStringList>& rows);
    /// As high as its rows: what it lies in scrolls, not the table.
    void showAllRows();

  Q_SIGNALS:
    void rowChosen();

  protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

  private:
    void showOnPage(const QRect& row);

    std::vector<TableColumn> m_columns;
    QStandardItemModel* m_model = nullptr;
};

} // namespace sp::desk
