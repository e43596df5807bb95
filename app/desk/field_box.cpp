// SPDX-License-Identifier: MIT
#include "app/desk/field_box.h"

#include <QAccessible>
#include <QVBoxLayout>

namespace sp::desk {

FieldBox::FieldBox(const QString& label, QWidget* field, QWidget* parent)
    : QWidget(parent)
    , m_label(new TextLabel(label, TextSize::Small, Role::Muted))
    , m_field(field)
    , m_note(new TextLabel({}, TextSize::Small, Role::Muted)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_label);
    column->addWidget(m_field);
    column->addWidget(m_note);
    column->addStretch(1);
    m_label->setBuddy(m_field);
    m_namesField = m_field->accessibleName().isEmpty();
    setLabel(label);
    m_note->setWordWrap(true);
    m_note->hide();
    if (auto* typed = qobject_cast<TypedField*>(m_field))
        connect(typed, &TypedField::statusChanged, this, &FieldBox::explain);
    explain();
}

void FieldBox::setLabel(const QString& label) {
    m_label->setText(label);
    if (m_namesField) m_field->setAccessibleName(QString(label).remove(QLatin1Char('&')));
}

void FieldBox::setRemark(const QString& sentence) {
    m_remark = sentence;
    explain();
}

QString FieldBox::note() const { return m_note->text(); }

void FieldBox::explain() {
    QString problem;
    QString echo;
    if (const auto* typed = qobject_cast<TypedField*>(m_field)) {
        problem = typed->shownProblem();
        echo = typed->echo();
    }
    const QString sentence = !problem.isEmpty() ? problem : !echo.isEmpty() ? echo : m_remark;
    m_note->setRole(problem.isEmpty() ? Role::Muted : Role::Warn);
    if (sentence == m_note->text()) return;
    m_note->setText(sentence);
    m_note->setVisible(!sentence.isEmpty());
    m_field->setAccessibleDescription(sentence);
    QAccessibleEvent said(m_field, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&said);
}

FieldBox* place(QGridLayout& grid, int row, int column, int span, const QString& label, QWidget* field,
                const char* name, const QString& remark) {
    field->setObjectName(QLatin1String(name));
    auto* box = new FieldBox(label, field, field->parentWidget());
    box->setRemark(remark);
    grid.addWidget(box, row, column, 1, span, Qt::AlignTop);
    return box;
}

} // namespace sp::desk

#include "moc_field_box.cpp"
