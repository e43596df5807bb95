// SPDX-License-Identifier: MIT
#include "app/artwork/design_view.h"

#include "app/artwork/design_pictures.h"
#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/words/names.h"

#include <QEvent>
#include <QPainter>

#include <utility>

namespace sp::artwork {

namespace {

using desk::Role;

constexpr int kHigh = 220; ///< px at 100 %
constexpr int kRoom = 16;
constexpr int kGap = 10; ///< between the stones and the line beside them
constexpr int kTick = 4;

/// A line from end to end with a tick on either, open in the middle for its words.
void paintMeasure(QPainter& painter, QPointF from, QPointF to, const QString& words) {
    const QRectF room = painter.fontMetrics().boundingRect(words);
    const QPointF middle = (from + to) / 2;
    const bool isLevel = from.y() == to.y();
    const QPointF along = isLevel ? QPointF(1, 0) : QPointF(0, 1);
    const QPointF across = QPointF(along.y(), along.x()) * kTick;
    const double open = (isLevel ? room.width() : room.height()) / 2 + 6;
    const double length = isLevel ? to.x() - from.x() : to.y() - from.y();
    painter.setPen(QPen(desk::colour(Role::Muted), 1));
    for (const QPointF end : {from, to}) painter.drawLine(end - across, end + across);
    if (length > 2 * open) {
        painter.drawLine(from, middle - along * open);
        painter.drawLine(middle + along * open, to);
    }
    painter.setPen(desk::colour(Role::Ink));
    painter.drawText(
        QRectF(middle.x() - room.width() / 2 - 2, middle.y() - room.height() / 2, room.width() + 4, room.height()),
        Qt::AlignCenter | Qt::TextDontClip, words);
}

} // namespace

DesignView::DesignView(QWidget* parent)
    : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DesignView::showDesign(const QString& name, std::shared_ptr<const Picture> picture, const QString& width,
                            const QString& height) {
    m_painted = {};
    m_picture = std::move(picture);
    m_width = width;
    m_height = height;
    setAccessibleName(m_picture ? tr("Picture of %1").arg(name) : tr("No picture of %1").arg(name));
    const auto stones = m_picture ? std::ssize(m_picture->stones) : 0;
    setAccessibleDescription(m_picture ? words::counted(words::Thing::Stone, stones, QString::number(stones))
                                       : QString());
    updateGeometry();
    update();
}

QSize DesignView::sizeHint() const { return {desk::scaled(320), desk::scaled(m_picture ? kHigh : 56)}; }
QSize DesignView::minimumSizeHint() const { return {desk::scaled(160), sizeHint().height()}; }

void DesignView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::FontChange)
        m_painted = {};
    QWidget::changeEvent(event);
}

void DesignView::paintMeasures(QPainter& painter, const QRectF& box) const {
    painter.setFont(desk::textFont(desk::TextSize::Small));
    const double right = box.right() + kGap + painter.fontMetrics().horizontalAdvance(m_height) / 2.0;
    paintMeasure(painter, {right, box.top()}, {right, box.bottom()}, m_height);
    const double below = box.bottom() + kGap + painter.fontMetrics().height() / 2.0;
    paintMeasure(painter, {box.left(), below}, {box.right(), below}, m_width);
}

QPixmap DesignView::painted() {
    const double ratio = devicePixelRatioF();
    QPixmap pixmap(size() * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(desk::colour(Role::Hairline), 1));
    painter.setBrush(desk::colour(Role::Paper));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), desk::kFieldRadius, desk::kFieldRadius);
    painter.setFont(desk::textFont(desk::TextSize::Small));
    if (!m_picture) {
        painter.setPen(desk::colour(Role::Muted));
        painter.drawText(rect().adjusted(kRoom, 0, -kRoom, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("No drawing is kept with this design."));
        return pixmap;
    }
    const auto metrics = painter.fontMetrics();
    const double beside = kGap + metrics.horizontalAdvance(m_height);
    const double below = kGap + metrics.height();
    const QRectF room = QRectF(rect()).adjusted(kRoom + beside, kRoom, -kRoom - beside, -kRoom / 2.0 - below);
    m_sprites.setGround(desk::colour(Role::Paper), ratio);
    const QRectF box = paintStonesInto(painter, *m_picture, room, m_sprites);
    if (!box.isEmpty()) paintMeasures(painter, box);
    return pixmap;
}

void DesignView::paintEvent(QPaintEvent*) {
    if (m_painted.size() != size() * devicePixelRatioF()) m_painted = painted();
    QPainter(this).drawPixmap(0, 0, m_painted);
}

} // namespace sp::artwork

#include "moc_design_view.cpp"
