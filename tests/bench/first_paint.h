// SPDX-License-Identifier: MIT
#pragma once

#include <QApplication>
#include <QEvent>
#include <QMainWindow>

#include <chrono>
#include <cstdio>
#include <sys/resource.h>

namespace sp::bench {

inline bool isMainWindow(QObject* watched) { return qobject_cast<QMainWindow*>(watched) != nullptr; }

/// Says on standard output when a widget that is the one waited for has been painted for the first time (the steady
/// clock in nanoseconds) and what CPU time that took (microseconds), then ends the program.
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
            QMetaObject::invokeMethod(
                &m_app, [this] { end(); }, Qt::QueuedConnection);
        return false;
    }

  private:
    void end() {
        if (m_hasEnded) return;
        m_hasEnded = true;
        rusage usage{};
        getrusage(RUSAGE_SELF, &usage);
        const auto microseconds = [](const timeval& t) { return t.tv_sec * 1'000'000LL + t.tv_usec; };
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        std::printf("%lld %lld\n",
                    static_cast<long long>(std::chrono::duration_cast<std::chrono::nanoseconds>(now).count()),
                    static_cast<long long>(microseconds(usage.ru_utime) + microseconds(usage.ru_stime)));
        std::fflush(stdout);
        m_app.quit();
    }

    bool m_hasEnded = false;
    QApplication& m_app;
    bool (*m_isWaitedFor)(QObject*);
};

} // namespace sp::bench
