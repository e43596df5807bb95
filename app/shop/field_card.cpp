// SPDX-License-Identifier: MIT
#include "app/shop/field_card.h"

#include "app/desk/field_box.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace sp::shop {

FieldCard::FieldCard(const QString& title, const QString& remark, QWidget* parent)
    : desk::Card(parent)
    , m_grid(new desk::FlowGrid(4)) {
    auto* inside = new QVBoxLayout(this);
    inside->setContentsMargins(desk::cardMargins());
    inside->setSpacing(8);
    inside->addWidget(desk::sectionTitle(title, this));
    if (!remark.isEmpty()) {
        auto* note = new desk::TextLabel(remark, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, this);
        note->setWordWrap(true);
        inside->addWidget(note);
    }
    inside->addLayout(m_grid);
}

void FieldCard::put(QWidget* field, const QString& label, const char* name, const QString& remark, int span) {
    field->setObjectName(QLatin1String(name));
    auto* box = new desk::FieldBox(label, field, this);
    if (!remark.isEmpty()) box->setRemark(remark);
    m_grid->add(box, span);
}

void FieldCard::putTick(QCheckBox* tick, const char* name) {
    tick->setObjectName(QLatin1String(name));
    m_grid->add(new desk::BesideFields(tick, this));
}

void FieldCard::fillLeft(QWidget* button) {
    auto* row = new QWidget(this);
    auto* inside = new QHBoxLayout(row);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->addWidget(button);
    inside->addStretch(1);
    fill(row);
}

void FieldCard::fill(QWidget* content) { m_grid->add(content, 4); }

} // namespace sp::shop

#include "moc_field_card.cpp"
