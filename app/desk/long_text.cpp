// SPDX-License-Identifier: MIT
#include "app/desk/long_text.h"

#include "app/desk/fonts.h"

#include <QKeyEvent>

namespace sp::desk {

LongText::LongText(QWidget* parent)
    : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setFixedHeight(scaled(84));
}

void LongText::setText(const QString& text) {
    m_kept = text;
    if (toPlainText() != text) setPlainText(text);
}

void LongText::keyPressEvent(QKeyEvent* event) {
    if (event->modifiers() == Qt::AltModifier) return event->ignore(); // a letter that belongs to nobody
    QPlainTextEdit::keyPressEvent(event);
}

void LongText::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    if (toPlainText() == m_kept) return;
    m_kept = toPlainText();
    Q_EMIT committed();
}

} // namespace sp::desk

#include "moc_long_text.cpp"
