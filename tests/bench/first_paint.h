// SPDX-License-Identifier: MIT
#pragma once

#include <QApplication>
#include <QEvent>
#include <QMainWindow>

namespace sp::bench {

inline bool isMainWindow(QObject* watched) { return qobject_cast<QMainWindow*>(watched) != nullptr; }

/// Ends the program once a widget that is the one waited for has been painted for the first time.
class QuitAtFirstPaint : public QObject {
  public:
    QuitAtFirstPaint(QApplication& app, bool (*isWaitedFor)(QObject*))
        : m_app(app)
        , m_isWaitedFor(isWaitedFor) {
        app.installEventFilter(this);
    }

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && m_isWaitedFor(watched))
            // After everything of this turn was painted, before anything further is begun.
            QMetaObject::invokeMethod(&m_app, &QApplication::quit, Qt::QueuedConnection);
        return false;
    }

  private:
    QApplication& m_app;
    bool (*m_isWaitedFor)(QObject*);
};

} // namespace sp::bench
