// SPDX-License-Identifier: MIT
#include "app/desk/stone_list.h"

#include "app/desk/field_box.h"
#include "app/desk/stone_list_delegate.h"

#include <QVBoxLayout>

namespace sp::desk {

StoneList::StoneList(const StoneListWords& words, const Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_find(new FindField(formatter, this))
    , m_nothing(new TextLabel(words.nothing, TextSize::Body, Role::Muted, Weight::Plain, this))
    , m_rows(new QListView(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(new FieldBox(words.find, m_find, this));
    m_nothing->setObjectName(QStringLiteral("nothingFound"));
    m_nothing->setWordWrap(true);
    column->addWidget(m_nothing);
    m_rows->setAccessibleName(words.name);
    m_rows->setFrameShape(QFrame::NoFrame);
    m_rows->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_rows->viewport()->setAutoFillBackground(false);
    m_rows->setModel(&m_model);
    m_rows->setItemDelegate(new StoneListDelegate(StoneListModel::DetailRole, StoneListModel::StonesRole, m_rows));
    column->addWidget(m_rows, 1);
    m_find->setList(m_rows);
    connect(m_find, &TypedField::edited, this, &StoneList::searched);
    connect(m_rows->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
        if (index.isValid()) Q_EMIT chosen(base::Id(m_model.row(index.row()).id)); // a copy: the rows may change now
    });
}

void StoneList::setRows(std::vector<StoneListRow> rows, const base::Id& open) {
    m_nothing->setVisible(rows.empty() && !m_find->isBlank());
    m_model.setRows(std::move(rows));
    if (const int at = m_model.indexOf(open); at >= 0) m_rows->setCurrentIndex(m_model.index(at));
}

void StoneList::setPictures(Picture pictures) {
    auto* delegate = qobject_cast<StoneListDelegate*>(m_rows->itemDelegate());
    delegate->setPictures(
        [this, of = std::move(pictures)](const QModelIndex& row, QSize room, const QColor& ground, double ratio) {
            return of(m_model.row(row.row()).id, room, ground, ratio);
        });
}

} // namespace sp::desk

#include "moc_stone_list.cpp"
