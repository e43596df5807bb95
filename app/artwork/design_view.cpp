// SPDX-License-Identifier: MIT
#include "app/artwork/design_view.h"

#include "app/artwork/design_pictures.h"
#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/words/names.h"

#include <QEvent>
#include <QPainter>

#include <cmath>
#include <iterator>
#include <utility>

namespace sp::artwork {

namespace {

using desk::Role;

constexpr int kHigh = 220; ///< px at 100 %
constexpr int kRoom = 16;
constexpr int kGap = 10; ///< between the stones and the line beside them
constexpr int kTick = 4;
constexpr double kRulerStep = 1.6;        ///< mm, a sixteenth of an inch
constexpr double kSameProportions = 0.03; ///< of the one

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

/// Whether a drawing of that box is as wide for its height as what is called `width` by `height`. Both were rounded up
/// to a step of the ruler when they were taken from a drawing, which tells in a low row of stones.
bool hasProportions(const Box& box, units::Length width, units::Length height) {
    if (box.isEmpty() || width.isZero() || height.isZero()) return false;
    const double across = width.millimetres() - box.width();
    const double down = height.millimetres() - box.height();
    if (across >= 0 && across <= kRulerStep && down >= 0 && down <= kRulerStep) return true;
    const double one = width.millimetres() * box.height();
    const double other = height.millimetres() * box.width();
    return std::abs(one - other) <= kSameProportions * other;
}

} // namespace

DesignView::DesignView(QWidget* parent)
    : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DesignView::showDesign(const QString& name, std::shared_ptr<const Picture> picture, units::Length width,
                            units::Length height, const desk::Formatter& formatter) {
    const auto title = picture ? tr("Picture of %1").arg(name) : tr("No picture of %1").arg(name);
    const bool isMeasured = picture && hasProportions(picture->box(), width, height);
    const auto across = isMeasured ? formatter.length(width) : QString();
    const auto down = isMeasured ? formatter.length(height) : QString();
    QString description;
    if (picture) {
        const auto count = std::ssize(picture->stones);
        description = words::counted(words::Thing::Stone, count, formatter.count(units::Count::of(count)));
        if (isMeasured)
            description = tr("%1, %2 wide, %3 high", "522 stones, 5 in wide, 7 in high").arg(description, across, down);
    }
    if (title == accessibleName() && description == accessibleDescription() && picture == m_picture &&
        across == m_width && down == m_height)
        return;
    m_painted = {};
    m_picture = std::move(picture);
    m_width = across;
    m_height = down;
    setAccessibleName(title);
    setAccessibleDescription(description);
    updateGeometry();
    update();
}

QSize DesignView::sizeHint() const { return {desk::scaled(320), desk::scaled(m_picture ? kHigh : 56)}; }
QSize DesignView::minimumSizeHint() const { return {desk::scaled(160), sizeHint().height()}; }

void DesignView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange)
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
    const double beside = m_width.isEmpty() ? 0 : kGap + metrics.horizontalAdvance(m_height);
    const double below = m_width.isEmpty() ? kRoom / 2.0 : kGap + metrics.height();
    const QRectF room = QRectF(rect()).adjusted(kRoom + beside, kRoom, -kRoom - beside, -kRoom / 2.0 - below);
    m_sprites.setGround(desk::colour(Role::Paper), ratio);
    const QRectF box = paintStonesInto(painter, *m_picture, room, m_sprites);
    if (!box.isEmpty() && !m_width.isEmpty()) paintMeasures(painter, box);
    return pixmap;
}

void DesignView::paintEvent(QPaintEvent*) {
    if (m_painted.size() != size() * devicePixelRatioF()) m_painted = painted();
    QPainter(this).drawPixmap(0, 0, m_painted);
}

} // namespace sp::artwork

#include "moc_design_view.cpp"
