// SPDX-License-Identifier: MIT
#pragma once

#include "tests/app/format/format_fixture.h"

#include <QApplication>
#include <QtTest/QTest>
#include <gtest/gtest.h>

namespace sp::desk::test {

/// Shows a window and gives the field the focus, as a person who tabs into it would.
inline void enter(QWidget& window, QWidget& field) {
    window.show();
    window.activateWindow();
    field.setFocus(Qt::TabFocusReason);
    QApplication::processEvents();
}

} // namespace sp::desk::test
