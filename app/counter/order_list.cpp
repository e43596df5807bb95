// SPDX-License-Identifier: MIT
#include "app/counter/order_list.h"

#include "app/desk/figures.h"
#include "app/desk/palette.h"
#include "app/desk/stone_painter.h"
#include "app/desk/stone_swatches.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace sp::counter {

namespace {

using desk::Role;

constexpr int kCardHeight = 64;
constexpr int kCardGap = 8;
constexpr int kSwatchSide = 20;

} // namespace

OrderListModel::OrderListModel(CounterPresenter& presenter, const desk::Formatter& formatter, QObject* parent)
    : QAbstractListModel(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_rows(static_cast<int>(presenter.order().lines.size())) {}

int OrderListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_rows; }

void OrderListModel::refresh() {
    const int rows = static_cast<int>(m_presenter.order().lines.size());
    if (rows != m_rows) {
        beginResetModel();
        m_rows = rows;
        endResetModel();
        return;
    }
    if (m_rows > 0) Q_EMIT dataChanged(index(0), index(m_rows - 1));
}

QString OrderListModel::title(int row) const {
    const auto& line = m_presenter.order().lines[static_cast<std::size_t>(row)];
    const bool isUnread = m_presenter.isUnread(row, QStringLiteral("pieces"));
    return QStringLiteral("%1 × %2").arg(isUnread ? QStringLiteral("—") : m_formatter.count(line.quantity),
                                         QString::fromStdString(line.title));
}

QString OrderListModel::detail(int row) const {
    if (m_presenter.isUnread(row)) return tr("an entry cannot be read");
    const auto& line = m_presenter.order().lines[static_cast<std::size_t>(row)];
    QString baseMaterial = line.isCharge() ? QString() : tr("the customer’s garment");
    if (!line.customersGarment) {
        const auto* material = m_presenter.prices().find(line.baseMaterial);
        baseMaterial = material ? QString::fromStdString(material->material.name) : QString();
    }
    if (line.isCharge()) return baseMaterial;
    const auto size = line.places.size() == 1
                          ? m_formatter.size(line.first().width, line.first().height)
                          : tr("%1 places", nullptr, static_cast<int>(line.places.size())).arg(line.places.size());
    return baseMaterial.isEmpty() ? size : QStringLiteral("%1, %2").arg(baseMaterial, size);
}

QString OrderListModel::each(int row) const {
    if (!m_presenter.priced()) return QStringLiteral("—");
    return m_formatter.money(m_presenter.priced()->lines[static_cast<std::size_t>(row)].each);
}

QVariant OrderListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_rows) return {};
    const auto& line = m_presenter.order().lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case TitleRole: return title(index.row());
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3 each").arg(title(index.row()), detail(index.row()), each(index.row()));
    case DetailRole: return detail(index.row());
    case EachRole: return each(index.row());
    case StonesRole: {
        QVariantList colours;
        for (const auto& place : line.places)
            for (const auto& stone : place.stones)
                if (const auto* material = m_presenter.prices().find(stone.material))
                    colours.push_back(desk::stoneColour(material->material.stone.rgb));
        return colours;
    }
    default: return {};
    }
}

OrderListDelegate::OrderListDelegate(LinePicture pictures, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_pictures(std::move(pictures)) {}

int OrderListDelegate::paintLook(QPainter& painter, const QRect& inner, const QModelIndex& index) const {
    const int side = desk::scaled(kSwatchSide);
    const QRect room(inner.left(), inner.top(), side * 2, inner.height());
    const auto ground = desk::colour(Role::Card);
    if (const auto picture = m_pictures(index.row(), room.size(), ground, painter.device()->devicePixelRatioF());
        !picture.isNull()) {
        painter.drawPixmap(room.topLeft(), picture);
        return room.width();
    }
    std::vector<QColor> stones;
    for (const auto& colour : index.data(OrderListModel::StonesRole).toList()) stones.push_back(colour.value<QColor>());
    if (stones.empty()) return room.width();
    return std::max(room.width(), desk::paintStones(painter, room, stones, side, 2, ground));
}

QSize OrderListDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.rect.width(), desk::scaled(kCardHeight) + kCardGap};
}

void OrderListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool chosen = option.state & QStyle::State_Selected;
    const QRectF card = QRectF(option.rect).adjusted(1, 1, -1, -1 - kCardGap);
    painter->setPen(chosen ? QPen(desk::colour(Role::Jewel), 2) : QPen(desk::colour(Role::Hairline), 1));
    painter->setBrush(desk::colour(Role::Card));
    painter->drawRoundedRect(chosen ? card : card.adjusted(0.5, 0.5, -0.5, -0.5), 10, 10);

    const QRect inner = card.toRect().adjusted(12, 10, -12, -10);
    const int lookWidth = paintLook(*painter, inner, index);

    const auto each = index.data(OrderListModel::EachRole).toString();
    const QRect text = inner.adjusted(lookWidth + 6, 0, 0, 0);
    const auto strong = desk::textFont(desk::TextSize::Body, desk::Weight::Strong);
    const QFontMetrics metrics(strong);
    const int priceWidth = metrics.horizontalAdvance(each) + 12;
    const QRect upper(text.left(), text.top(), text.width(), text.height() / 2);
    const QRect lower(text.left(), text.top() + text.height() / 2, text.width(), text.height() / 2);
    painter->setFont(strong);
    painter->setPen(desk::colour(Role::Ink));
    painter->drawText(upper.adjusted(0, 0, -priceWidth, 0), Qt::AlignLeft | Qt::AlignVCenter,
                      metrics.elidedText(index.data(OrderListModel::TitleRole).toString(), Qt::ElideRight,
                                         upper.width() - priceWidth));
    desk::drawFigures(*painter, upper, Qt::AlignRight | Qt::AlignVCenter, each);
    const auto small = desk::textFont(desk::TextSize::Small);
    const QFontMetrics smallMetrics(small);
    const auto unit = tr("each");
    const int unitWidth = smallMetrics.horizontalAdvance(unit) + 8;
    painter->setFont(small);
    painter->setPen(desk::colour(Role::Muted));
    painter->drawText(lower, Qt::AlignRight | Qt::AlignVCenter, unit);
    painter->drawText(lower, Qt::AlignLeft | Qt::AlignVCenter,
                      smallMetrics.elidedText(index.data(OrderListModel::DetailRole).toString(), Qt::ElideRight,
                                              lower.width() - unitWidth));
    painter->restore();
}

OrderList::OrderList(LinePicture pictures, QWidget* parent)
    : QListView(parent) {
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setUniformItemSizes(true);
    setItemDelegate(new OrderListDelegate(std::move(pictures), this));
    setAccessibleName(tr("Lines of the order"));
}

void OrderList::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
        Q_EMIT removeAsked();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        Q_EMIT entered();
        return;
    }
    QListView::keyPressEvent(event);
}

} // namespace sp::counter

#include "moc_order_list.cpp"
