// SPDX-License-Identifier: MIT
#pragma once

#include <QAccessible>
#include <QWidget>

#include <private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

#include <functional>
#include <utility>

namespace sp::test {

/// A program that reads the screen, as long as it lives: it hears what the application tells those. Off screen Qt never
/// hears of one by itself, and tells nothing then.
class ScreenReader {
  public:
    using Heard = std::function<void(QAccessible::Event, const QString& name, const QObject& teller)>;

    explicit ScreenReader(Heard heard) {
        s_heard = std::move(heard);
        setActive(true);
        m_before = QAccessible::installUpdateHandler(hear);
    }
    ~ScreenReader() {
        QAccessible::installUpdateHandler(m_before);
        setActive(false);
        s_heard = {};
    }
    ScreenReader(const ScreenReader&) = delete;
    ScreenReader& operator=(const ScreenReader&) = delete;

  private:
    static void setActive(bool active) {
        QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(active);
    }
    static void hear(QAccessibleEvent* event) {
        if (!event->object()) return;
        const auto* teller = event->accessibleInterface();
        s_heard(event->type(), teller ? teller->text(QAccessible::Name) : QString(), *event->object());
    }

    static inline Heard s_heard;
    QAccessible::UpdateHandler m_before = nullptr;
};

} // namespace sp::test
