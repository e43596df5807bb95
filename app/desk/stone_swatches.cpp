// SPDX-License-Identifier: MIT
#include "app/desk/stone_swatches.h"

#include "app/desk/fonts.h"
#include "app/desk/stone_painter.h"

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kMaxShown = 4;

int stepOf(int side) { return side * 5 / 8; }

} // namespace

int paintStones(QPainter& painter, const QRect& box, const std::vector<QColor>& stones, int side, int most,
                const QColor& ground) {
    const auto shown = std::min(stones.size(), static_cast<std::size_t>(std::max(most, 0)));
    if (shown == 0) return 0;
    const int top = box.top() + (box.height() - side) / 2;
    int x = box.left();
    for (std::size_t i = 0; i < shown; ++i, x += stepOf(side))
        paintStone(painter, QRectF(x, top, side, side), stones[i], ground);
    int width = x - stepOf(side) + side - box.left();
    if (shown < stones.size()) {
        const QString more = QStringLiteral("+%1").arg(stones.size() - shown);
        painter.setFont(textFont(TextSize::Small));
        painter.setPen(colour(Role::Muted));
        painter.drawText(QRect(box.left() + width + 4, box.top(), 40, box.height()), Qt::AlignVCenter, more);
        width += 4 + painter.fontMetrics().horizontalAdvance(more);
    }
    return width;
}

StoneSwatches::StoneSwatches(QWidget* parent, int side)
    : QWidget(parent)
    , m_side(side) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void StoneSwatches::setStones(std::vector<QColor> stones) {
    m_stones = std::move(stones);
    updateGeometry();
    update();
}

QSize StoneSwatches::sizeHint() const {
    const int shown = std::min(static_cast<int>(m_stones.size()), kMaxShown);
    const bool more = static_cast<int>(m_stones.size()) > kMaxShown;
    return {shown == 0 ? 0 : (shown - 1) * stepOf(m_side) + m_side + (more ? scaled(24) : 0), m_side};
}

void StoneSwatches::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paintStones(painter, rect(), m_stones, m_side, kMaxShown, colour(Role::Card));
}

} // namespace sp::desk

#include "moc_stone_swatches.cpp"
