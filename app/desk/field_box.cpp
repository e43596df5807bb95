// SPDX-License-Identifier: MIT
#include "app/desk/field_box.h"

#include "app/desk/bench_style.h"

#include <QAccessible>
#include <QEvent>
#include <QFontMetrics>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kUnderLabel = 4;

} // namespace

FieldBox::FieldBox(const QString& label, QWidget* field, QWidget* parent)
    : QWidget(parent)
    , m_label(new TextLabel(label, TextSize::Small, Role::Muted))
    , m_field(field)
    , m_note(new TextLabel({}, TextSize::Small, Role::Muted)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kUnderLabel);
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

BesideFields::BesideFields(QWidget* control, QWidget* parent)
    : QWidget(parent)
    , m_control(control) {
    auto* column = new QVBoxLayout(this);
    column->setSpacing(0);
    column->addWidget(control, 0, Qt::AlignLeft);
    column->addStretch(1);
    align();
}

void BesideFields::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) align();
}

/// The middle of the control where the middle of a field is, under a label of one line.
void BesideFields::align() {
    const int label = QFontMetrics(textFont(TextSize::Small)).height() + kUnderLabel;
    const int above = label + (fieldHeight() - m_control->sizeHint().height()) / 2;
    layout()->setContentsMargins(0, std::max(0, above), 0, 0);
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
