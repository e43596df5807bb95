// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>
#include <QEvent>
#include <QTest>

#include <utility>

namespace sp::test {

/// Handles events until `isSo()`, which is asked first of all. False after ten minutes: then it never comes, however
/// busy the machine is.
template<class Condition>
bool waitFor(Condition isSo) {
    constexpr int kCeiling = 600'000; // ms
    return QTest::qWaitFor(std::move(isSo), kCeiling);
}

/// Does what this thread has queued for itself: calls, layout, deletes. What a timer or another thread brings is
/// waited for with waitFor.
inline void handleQueued() {
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
    // What another thread brought meanwhile is shown, and its layout done with it.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
}

} // namespace sp::test
