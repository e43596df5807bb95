// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>

namespace sp::desk {

/// Keeps the wheel from changing what was entered: over a combo box, spin box or slider it scrolls the page instead.
/// Theme installs one on the application.
class WheelGuard : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace sp::desk
