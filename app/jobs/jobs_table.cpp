// SPDX-License-Identifier: MIT
#include "app/jobs/jobs_table.h"

#include "app/desk/bench_style.h"
#include "app/desk/figures.h"
#include "app/desk/palette.h"
#include "app/jobs/jobs_table_model.h"

#include <QPainter>

namespace sp::jobs {

namespace {

/// Cells without an outline of their own; money in cells of figures.
class CellDelegate : public desk::FigureDelegate {
  public:
    using FigureDelegate::FigureDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        auto plain = option;
        plain.state &= ~QStyle::State_HasFocus;
        if (index.column() == JobsTableModel::Total)
            FigureDelegate::paint(painter, plain, index);
        else
            QStyledItemDelegate::paint(painter, plain, index);
    }
};

} // namespace

JobsTable::JobsTable(QWidget* parent)
    : QTableView(parent) {
    setObjectName(QStringLiteral("jobs"));
    setAccessibleName(tr("Quotes, newest first"));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setItemDelegate(new CellDelegate(this));
}

void JobsTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (!hasFocus() || !currentIndex().isValid()) return;
    const QRect cell = visualRect(currentIndex());
    const QRectF row(1, cell.top() + 1, viewport()->width() - 2, cell.height() - 2);
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(desk::colour(desk::Role::Jewel), 2));
    painter.drawRoundedRect(row, desk::kFieldRadius, desk::kFieldRadius);
}

void JobsTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    viewport()->update(); // the outline lies across cells
}

} // namespace sp::jobs
