// SPDX-License-Identifier: MIT
#include "app/figures/earned_delegate.h"

#include "app/desk/figures.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"

#include <QPainter>

#include <algorithm>

namespace sp::figures {

using desk::colour;
using desk::Role;
using desk::TextSize;
using desk::Weight;

namespace {

constexpr double kPad = 6;        ///< px between a mark's edge and the figure on it
constexpr double kBarHeight = 22; ///< at 100 %

/// Of a mark, before it is drawn to scale; nothing for what is below nothing.
double lengthOf(units::Money amount) { return std::max(0.0, static_cast<double>(amount.micros())); }

struct Mark {
    QRectF box;
    QString figure;
    QColor onIt;
    QColor behindIt;
    Weight weight;
};

/// Writes the figure on its mark; gives false where it has no room there.
bool writeOn(QPainter& painter, const Mark& mark) {
    painter.setFont(desk::textFont(TextSize::Small, mark.weight));
    const double wide = desk::figuresWidth(QFontMetricsF(painter.font()), mark.figure);
    if (wide + 2 * kPad > mark.box.width()) return false;
    painter.setPen(mark.onIt);
    desk::drawFigures(painter, mark.box.adjusted(kPad, 0, -kPad, 0), Qt::AlignRight | Qt::AlignVCenter, mark.figure);
    return true;
}

/// Writes it behind the bar, from `x` on; gives where it ends.
double writeBehind(QPainter& painter, const Mark& mark, double x) {
    painter.setFont(desk::textFont(TextSize::Small, mark.weight));
    const double wide = desk::figuresWidth(QFontMetricsF(painter.font()), mark.figure);
    painter.setPen(mark.behindIt);
    desk::drawFigures(painter, QRectF(x, mark.box.top(), wide, mark.box.height()), Qt::AlignLeft | Qt::AlignVCenter,
                      mark.figure);
    return x + wide + kPad;
}

} // namespace

void EarnedDelegate::setBars(std::vector<EarnedBar> bars) {
    m_bars = std::move(bars);
    m_most = 1;
    m_longest.clear();
    for (const auto& bar : m_bars) {
        m_most = std::max(m_most, lengthOf(bar.cost) + lengthOf(bar.left));
        for (const auto& figure : {bar.costFigure, bar.leftFigure})
            if (figure.size() > m_longest.size()) m_longest = figure;
    }
}

void EarnedDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    auto ground = option;
    initStyleOption(&ground, index);
    ground.text.clear();
    option.widget->style()->drawControl(QStyle::CE_ItemViewItem, &ground, painter, option.widget);
    if (index.row() >= static_cast<int>(m_bars.size())) return;
    const auto& bar = m_bars[static_cast<std::size_t>(index.row())];
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(desk::textFont(TextSize::Small, Weight::Strong));
    // Behind the longest bar there is room for its figures, should they not fit on it.
    const double behind = 2 * metrics.horizontalAdvance(m_longest) + 3 * kPad;
    const double room = std::max(20.0, option.rect.width() - 8 - behind);
    const auto wide = [&](units::Money amount) { return room * lengthOf(amount) / m_most; };
    const double high = std::min<double>(desk::scaled(static_cast<int>(kBarHeight)), option.rect.height() - 6);
    const double top = option.rect.center().y() - high / 2 + 0.5;
    const double start = option.rect.left() + 4.5;
    const Mark cost{QRectF(start, top, std::max(3.0, wide(bar.cost)), high), bar.costFigure, colour(Role::Muted),
                    colour(Role::Muted), Weight::Plain};
    painter->setPen(QPen(colour(Role::Muted), 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(cost.box, 3, 3);
    const bool isLoss = bar.left.isNegative();
    const double lost = std::min(cost.box.width(), wide(-bar.left));
    Mark left{isLoss ? QRectF(cost.box.right() - lost, top, lost, high)
                     : QRectF(cost.box.right() + 1.5, top, std::max(2.0, wide(bar.left)), high),
              bar.leftFigure, colour(Role::OnJewel), colour(isLoss ? Role::Warn : Role::Ink), Weight::Strong};
    painter->setPen(isLoss ? QPen(colour(Role::Warn), 1) : QPen(Qt::NoPen));
    painter->setBrush(isLoss ? QBrush(colour(Role::Warn), Qt::BDiagPattern) : QBrush(colour(Role::Jewel)));
    if (!bar.left.isZero()) painter->drawRoundedRect(left.box, 3, 3);
    double x = std::max(cost.box.right(), left.box.right()) + kPad;
    if (isLoss || !writeOn(*painter, left)) x = writeBehind(*painter, left, x);
    if (isLoss || !writeOn(*painter, cost)) writeBehind(*painter, cost, x);
    painter->restore();
}

QSize EarnedDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    auto size = QStyledItemDelegate::sizeHint(option, index);
    size.setHeight(std::max(size.height(), desk::scaled(static_cast<int>(kBarHeight)) + 10));
    return size;
}

} // namespace sp::figures

#include "moc_earned_delegate.cpp"
