// SPDX-License-Identifier: MIT
#include "app/desk/row_table.h"

#include "app/desk/bench_style.h"
#include "app/desk/palette.h"

#include <QPainter>

namespace sp::desk {

RowTable::RowTable(QWidget* parent)
    : QTableView(parent) {
    setSelectionBehavior(SelectRows);
    setEditTriggers(NoEditTriggers);
    setTabKeyNavigation(false);
    setWordWrap(false);
}

void RowTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (!hasFocus() || !currentIndex().isValid()) return;
    const QRect cell = visualRect(currentIndex());
    const QRectF row(1, cell.top() + 1, viewport()->width() - 2, cell.height() - 2);
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour(Role::Jewel), 2));
    painter.drawRoundedRect(row, kFieldRadius, kFieldRadius);
}

void RowTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    viewport()->update(); // the outline lies across cells
}

/// Without an event the program chooses, and Qt would ask which keys are down: with Shift, on the way here by
/// Ctrl+Shift+F, no row would be chosen.
QItemSelectionModel::SelectionFlags RowTable::selectionCommand(const QModelIndex& index, const QEvent* event) const {
    if (event) return QTableView::selectionCommand(index, event);
    return QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows;
}

} // namespace sp::desk

#include "moc_row_table.cpp"
