// SPDX-License-Identifier: MIT
#include "app/counter/idle_watch.h"

#include <QCoreApplication>
#include <QEvent>

#include <algorithm>
#include <chrono>

namespace sp::counter {

namespace {

constexpr std::chrono::seconds kLongest = std::chrono::hours(24); ///< a timer counts milliseconds in an int

} // namespace

IdleWatch::IdleWatch(QObject* parent)
    : QObject(parent) {
    m_rest.setSingleShot(true);
    connect(&m_rest, &QTimer::timeout, this, [this] {
        stop();
        Q_EMIT idle();
    });
}

IdleWatch::~IdleWatch() { stop(); }

void IdleWatch::start(int seconds) {
    stop();
    if (seconds <= 0) return;
    m_rest.start(std::min(std::chrono::seconds(seconds), kLongest));
    qApp->installEventFilter(this);
}

void IdleWatch::stop() {
    m_rest.stop();
    if (qApp) qApp->removeEventFilter(this);
}

bool IdleWatch::eventFilter(QObject* watched, QEvent* event) {
    const auto type = event->type();
    if (type == QEvent::KeyPress || type == QEvent::ShortcutOverride || type == QEvent::MouseButtonPress ||
        type == QEvent::Wheel)
        m_rest.start();
    return QObject::eventFilter(watched, event);
}

} // namespace sp::counter

#include "moc_idle_watch.cpp"
