// SPDX-License-Identifier: MIT
#include "app/desk/icons.h"

#include <QIconEngine>
#include <QPixmap>
#include <QSvgRenderer>

namespace sp::desk {

namespace {

QString fileOf(Icon which) {
    const char* name = "";
    switch (which) {
    case Icon::Counter: name = "counter"; break;
    case Icon::Designs: name = "designs"; break;
    case Icon::Supplies: name = "supplies"; break;
    case Icon::Bench: name = "bench"; break;
    case Icon::Buying: name = "buying"; break;
    case Icon::Jobs: name = "jobs"; break;
    case Icon::Customers: name = "customers"; break;
    case Icon::Figures: name = "figures"; break;
    case Icon::Shop: name = "shop"; break;
    case Icon::FirstSteps: name = "first_steps"; break;
    case Icon::TurnOver: name = "turn_over"; break;
    case Icon::Print: name = "print"; break;
    case Icon::Add: name = "add"; break;
    case Icon::Remove: name = "remove"; break;
    case Icon::Undo: name = "undo"; break;
    case Icon::Redo: name = "redo"; break;
    case Icon::Stone: name = "stone"; break;
    case Icon::Find: name = "find"; break;
    case Icon::Close: name = "close"; break;
    case Icon::Open: name = "open"; break;
    case Icon::Save: name = "save"; break;
    }
    return QStringLiteral(":/icons/%1.svg").arg(QString::fromLatin1(name));
}

/// Paints the drawing as a mask in one colour, rendered at the device's own pixels.
QPixmap tinted(Icon which, QSize pixels, const QColor& ink) {
    QPixmap mask(pixels);
    mask.fill(Qt::transparent);
    QSvgRenderer drawing(fileOf(which));
    drawing.setAspectRatioMode(Qt::KeepAspectRatio);
    QPainter painter(&mask);
    drawing.render(&painter, QRectF(QPointF(), QSizeF(pixels)));
    painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
    painter.fillRect(mask.rect(), ink);
    return mask;
}

class TintedEngine : public QIconEngine {
  public:
    TintedEngine(Icon which, Role role)
        : m_which(which)
        , m_role(role) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        paintIcon(*painter, rect, m_which, ink(mode));
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State) override {
        return tinted(m_which, size, ink(mode));
    }
    QPixmap scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State state, qreal) override {
        return pixmap(size, mode, state);
    }
    QIconEngine* clone() const override { return new TintedEngine(m_which, m_role); }

  private:
    QColor ink(QIcon::Mode mode) const { return colour(mode == QIcon::Disabled ? Role::Muted : m_role); }

    Icon m_which;
    Role m_role;
};

} // namespace

QIcon icon(Icon which, Role role) { return QIcon(new TintedEngine(which, role)); }

void paintIcon(QPainter& painter, const QRectF& box, Icon which, const QColor& colour) {
    const double ratio = painter.device()->devicePixelRatioF();
    const QSize pixels = (box.size() * ratio).toSize();
    if (pixels.isEmpty()) return;
    QPixmap drawn = tinted(which, pixels, colour);
    drawn.setDevicePixelRatio(ratio);
    painter.drawPixmap(box.topLeft(), drawn);
}

} // namespace sp::desk
