// SPDX-License-Identifier: MIT
#include "app/desk/find_field.h"

#include <QAbstractItemView>
#include <QKeyEvent>

namespace sp::desk {

FindField::FindField(const Formatter& formatter, QWidget* parent)
    : WordField(formatter, {}, parent) {
    setEmptyAllowed(true);
}

void FindField::keyPressEvent(QKeyEvent* event) {
    const bool goesDown = event->key() == Qt::Key_Down && m_list && m_list->model() && m_list->model()->rowCount() > 0;
    if (!goesDown) return WordField::keyPressEvent(event);
    if (!m_list->currentIndex().isValid()) m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_list->setFocus(Qt::TabFocusReason);
    event->accept();
}

} // namespace sp::desk

#include "moc_find_field.cpp"
