// SPDX-License-Identifier: MIT
#include "app/desk/popup_corners.h"

#include "app/desk/bench_style.h"

#include <QEvent>
#include <QPainterPath>
#include <QRegion>
#include <QWidget>

namespace sp::desk {

namespace {

/// Belongs to the window it cuts.
class CornerCutter : public QObject {
  public:
    explicit CornerCutter(QWidget& popup)
        : QObject(&popup)
        , m_popup(popup) {
        setObjectName(QStringLiteral("cornerCutter"));
        popup.installEventFilter(this);
        cut();
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (watched == &m_popup && event->type() == QEvent::Resize) cut();
        return QObject::eventFilter(watched, event);
    }

  private:
    void cut() {
        QPainterPath shape;
        shape.addRoundedRect(QRectF(m_popup.rect()), kFieldRadius, kFieldRadius);
        m_popup.setMask(QRegion(shape.toFillPolygon().toPolygon()));
    }

    QWidget& m_popup;
};

} // namespace

void roundCorners(QWidget& popup) {
    if (!popup.findChild<QObject*>(QStringLiteral("cornerCutter"), Qt::FindDirectChildrenOnly)) new CornerCutter(popup);
}

} // namespace sp::desk
