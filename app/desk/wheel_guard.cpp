// SPDX-License-Identifier: MIT
#include "app/desk/wheel_guard.h"

#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>
#include <QScrollBar>

namespace sp::desk {

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel) return false;
    const bool slider = qobject_cast<QAbstractSlider*>(watched) && !qobject_cast<QScrollBar*>(watched);
    if (!slider && !qobject_cast<QComboBox*>(watched) && !qobject_cast<QAbstractSpinBox*>(watched)) return false;
    event->ignore();
    return true;
}

} // namespace sp::desk

#include "moc_wheel_guard.cpp"
