// SPDX-License-Identifier: MIT
#include "app/shop/field_card.h"

#include "app/desk/field_box.h"

#include <QVBoxLayout>

namespace sp::shop {

FieldCard::FieldCard(const QString& title, const QString& remark, QWidget* parent)
    : desk::Card(parent)
    , m_grid(new QGridLayout) {
    auto* inside = new QVBoxLayout(this);
    inside->setContentsMargins(desk::cardMargins());
    inside->setSpacing(8);
    inside->addWidget(desk::sectionTitle(title, this));
    if (!remark.isEmpty()) {
        auto* note = new desk::TextLabel(remark, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, this);
        note->setWordWrap(true);
        inside->addWidget(note);
    }
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(8);
    for (int i = 0; i < kColumns; ++i) m_grid->setColumnStretch(i, 1);
    inside->addLayout(m_grid);
}

void FieldCard::put(QWidget* field, const QString& label, const char* name, const QString& remark, int span) {
    field->setObjectName(QLatin1String(name));
    auto* box = new desk::FieldBox(label, field, this);
    if (!remark.isEmpty()) box->setRemark(remark);
    if (m_placed % kColumns + span > kColumns) m_placed += kColumns - m_placed % kColumns;
    m_grid->addWidget(box, m_placed / kColumns, m_placed % kColumns, 1, span, Qt::AlignTop);
    m_placed += span;
}

void FieldCard::putTick(QCheckBox* tick, const char* name) {
    tick->setObjectName(QLatin1String(name));
    m_grid->addWidget(tick, m_placed / kColumns, m_placed % kColumns, 1, 1, Qt::AlignBottom);
    ++m_placed;
}

void FieldCard::fill(QWidget* content) {
    m_grid->addWidget(content, m_placed / kColumns, 0, 1, kColumns);
    m_placed += kColumns;
}

} // namespace sp::shop

#include "moc_field_card.cpp"
