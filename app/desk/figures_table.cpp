// SPDX-License-Identifier: MIT
#include "app/desk/figures_table.h"

#include <QHeaderView>
#include <QScrollArea>
#include <QScrollBar>
#include <QStandardItemModel>

#include <algorithm>

namespace sp::desk {

FiguresTable::FiguresTable(const QString& name, std::vector<TableColumn> columns, QWidget* parent)
    : RowTable(parent)
    , m_columns(std::move(columns))
    , m_model(new QStandardItemModel(0, static_cast<int>(m_columns.size()), this)) {
    setAccessibleName(name);
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        auto* head = new QStandardItem(m_columns[i].head);
        if (m_columns[i].holdsFigures) head->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        m_model->setHorizontalHeaderItem(static_cast<int>(i), head);
    }
    setModel(m_model);
    setSelectionMode(SingleSelection);
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        horizontalHeader()->setSectionResizeMode(
            static_cast<int>(i), m_columns[i].takesSpare ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
}

void FiguresTable::setRows(const std::vector<QStringList>& rows) {
    m_model->setRowCount(0);
    for (const auto& cells : rows) {
        QList<QStandardItem*> items;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            auto* item = new QStandardItem(cells[static_cast<int>(i)]);
            item->setToolTip(item->text()); // whole where the column is too narrow for it
            if (m_columns[i].holdsFigures) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            items << item;
        }
        m_model->appendRow(items);
    }
}

void FiguresTable::showAllRows() {
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    ensurePolished();
    setFixedHeight(horizontalHeader()->sizeHint().height() + verticalHeader()->length());
}

/// A table without a scroll bar, or half below the edge of a page, is scrolled by the page.
void FiguresTable::showOnPage(const QRect& row) {
    for (auto* up = parentWidget(); up; up = up->parentWidget()) {
        auto* page = qobject_cast<QScrollArea*>(up);
        if (!page || !page->widget()) continue;
        const QPoint at = viewport()->mapTo(page->widget(), row.center());
        page->ensureVisible(page->horizontalScrollBar()->value(), at.y(), 0, row.height() * 2);
    }
}

void FiguresTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    RowTable::currentChanged(current, previous);
    if (!current.isValid()) return;
    if (hasFocus()) showOnPage(visualRect(current));
    Q_EMIT rowChosen();
}

} // namespace sp::desk

#include "moc_figures_table.cpp"
