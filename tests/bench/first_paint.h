// SPDX-License-Identifier: MIT
#pragma once

#include <QApplication>
#include <QEvent>
#include <QMainWindow>
#include <QTimer>

namespace sp::bench {

/// Ends the program once a main window has been painted for the first time.
class QuitAtFirstPaint : public QObject {
  public:
    explicit QuitAtFirstPaint(QApplication& app)
        : m_app(app) {
        app.installEventFilter(this);
    }

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && qobject_cast<QMainWindow*>(watched) != nullptr)
            QTimer::singleShot(0, &m_app, &QApplication::quit); // after everything of this turn was painted
        return false;
    }

  private:
    QApplication& m_app;
};

} // namespace sp::bench
