// SPDX-License-Identifier: MIT
#include "app/desk/stone_list_delegate.h"

#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/desk/stone_swatches.h"

#include <QPainter>

#include <algorithm>

namespace sp::desk {

StoneListDelegate::StoneListDelegate(int detailRole, int stonesRole, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_detailRole(detailRole)
    , m_stonesRole(stonesRole) {}

QSize StoneListDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.rect.width(), scaled(48)};
}

void StoneListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF ground = QRectF(option.rect).adjusted(2, 1, -2, -1);
    const bool chosen = option.state & QStyle::State_Selected;
    if (chosen) {
        painter->setPen(option.state & QStyle::State_HasFocus ? QPen(colour(Role::Jewel), 2) : QPen(Qt::NoPen));
        painter->setBrush(colour(Role::JewelSoft));
        painter->drawRoundedRect(ground, 6, 6);
    }
    const int side = scaled(18);
    std::vector<QColor> stones;
    for (const auto& stone : index.data(m_stonesRole).toList()) stones.push_back(stone.value<QColor>());
    const QRect inner = ground.toRect().adjusted(8, 4, -8, -4);
    int stonesWidth = index.data(m_stonesRole).isValid() ? side * 3 : 0;
    const QColor under = colour(chosen ? Role::JewelSoft : Role::Bench);
    const QSize room(side * 3, inner.height());
    const auto picture =
        m_pictures ? m_pictures(index, room, under, painter->device()->devicePixelRatioF()) : QPixmap();
    if (!picture.isNull()) {
        painter->drawPixmap(inner.topLeft(), picture);
        stonesWidth = room.width() + 8;
    } else if (!stones.empty())
        stonesWidth =
            std::max(stonesWidth, 8 + paintStones(*painter, QRect(inner.left(), inner.top(), side * 3, inner.height()),
                                                  stones, side, 3, under));
    const QRect words = inner.adjusted(stonesWidth, 0, 0, 0);
    const auto detail = index.data(m_detailRole).toString();
    const QRect upper(words.left(), words.top(), words.width(), detail.isEmpty() ? words.height() : words.height() / 2);
    const QRect lower(words.left(), words.top() + words.height() / 2, words.width(), words.height() / 2);
    painter->setFont(textFont(TextSize::Body, chosen ? Weight::Strong : Weight::Plain));
    painter->setPen(colour(Role::Ink));
    painter->drawText(upper, Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, upper.width()));
    painter->setFont(textFont(TextSize::Small));
    painter->setPen(colour(Role::Muted));
    painter->drawText(lower, Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(detail, Qt::ElideRight, lower.width()));
    painter->restore();
}

} // namespace sp::desk

#include "moc_stone_list_delegate.cpp"
