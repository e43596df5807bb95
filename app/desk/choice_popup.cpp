// SPDX-License-Identifier: MIT
#include "app/desk/choice_popup.h"

#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/desk/popup_corners.h"
#include "app/desk/stone_swatches.h"

#include <QPainter>
#include <QScreen>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kDetail = Qt::UserRole;
constexpr int kStones = Qt::UserRole + 1;
constexpr int kAction = Qt::UserRole + 2;
constexpr int kPicture = Qt::UserRole + 3;
constexpr int kMaxRows = 8;
constexpr int kWidest = 420; ///< of a list that is wider than its field, px at 100 %

int rowHeight() { return fieldHeight(); }

using ChoicePicture = decltype(Choice::picture);

/// The picture of a row in a square at the left of `room`; null where it has none.
QPixmap pictureIn(const QPainter& painter, const QRect& room, const QModelIndex& index, const QColor& ground) {
    const auto picture = index.data(kPicture).value<ChoicePicture>();
    const int side = room.height() - 4;
    return picture ? picture({side, side}, ground, painter.device()->devicePixelRatioF()) : QPixmap();
}

/// A row: stones, text, the detail muted at the right; an action in the jewel.
class RowDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override { return {80, rowHeight()}; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const bool marked = option.state & (QStyle::State_Selected | QStyle::State_MouseOver);
        const QColor ground = colour(marked ? Role::JewelSoft : Role::Field);
        if (marked) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(ground);
            painter->drawRoundedRect(QRectF(option.rect), kFieldRadius - 2, kFieldRadius - 2);
        }
        QRect room = option.rect.adjusted(10, 0, -10, 0);
        const auto stones = index.data(kStones).value<std::vector<QColor>>();
        if (const auto picture = pictureIn(*painter, room, index, ground); !picture.isNull()) {
            painter->drawPixmap(room.topLeft() + QPoint(0, 2), picture);
            room.setLeft(room.left() + room.height() + 4);
        } else if (!stones.empty())
            room.setLeft(room.left() + 8 + paintStones(*painter, room, stones, 18, 4, ground));

        const bool action = index.data(kAction).toBool();
        painter->setFont(textFont(TextSize::Small));
        const QString detail = index.data(kDetail).toString();
        const int detailWidth = std::min(painter->fontMetrics().horizontalAdvance(detail) + 2, room.width() / 2);
        painter->setPen(colour(Role::Muted));
        painter->drawText(room, Qt::AlignRight | Qt::AlignVCenter,
                          painter->fontMetrics().elidedText(detail, Qt::ElideRight, detailWidth));
        if (!detail.isEmpty()) room.setRight(room.right() - detailWidth - 12);

        painter->setFont(textFont(TextSize::Body, action ? Weight::Strong : Weight::Plain));
        painter->setPen(colour(action ? Role::Jewel : Role::Ink));
        painter->drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                          painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, room.width()));
        painter->restore();
    }
};

} // namespace

ChoicePopup::ChoicePopup(QWidget* field)
    : QFrame(field, Qt::ToolTip | Qt::FramelessWindowHint)
    , m_list(new QListView)
    , m_model(new QStandardItemModel(this)) {
    setAttribute(Qt::WA_ShowWithoutActivating);
    roundCorners(*this);
    setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    column->addWidget(m_list);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setFocusPolicy(Qt::NoFocus);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new RowDelegate(m_list));
    m_list->setMouseTracking(true);
    m_list->setUniformItemSizes(true);
    m_list->setMinimumHeight(1); // one row is no higher than a row
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setAccessibleName(tr("Choices"));
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex& index) { Q_EMIT taken(index.row()); });
}

void ChoicePopup::fill(const std::vector<Choice>& rows, const QString& action) {
    m_model->clear();
    for (const Choice& choice : rows) {
        auto* item = new QStandardItem(choice.text);
        item->setData(choice.detail, kDetail);
        item->setData(QVariant::fromValue(choice.stones), kStones);
        if (choice.picture) item->setData(QVariant::fromValue(choice.picture), kPicture);
        item->setData(choice.text + QLatin1Char(' ') + choice.detail, Qt::AccessibleTextRole);
        m_model->appendRow(item);
    }
    m_hasAction = !action.isEmpty();
    if (m_hasAction) {
        auto* item = new QStandardItem(action);
        item->setData(true, kAction);
        m_model->appendRow(item);
    }
}

int ChoicePopup::rowCount() const { return m_model->rowCount(); }

bool ChoicePopup::isAction(int row) const { return m_hasAction && row == rowCount() - 1; }

int ChoicePopup::marked() const { return m_list->currentIndex().row(); }

void ChoicePopup::mark(int row) {
    const QModelIndex index = m_model->index(row, 0);
    m_list->setCurrentIndex(index);
    if (index.isValid()) m_list->scrollTo(index);
}

void ChoicePopup::showUnder(const QWidget& field) {
    const int rows = std::clamp(rowCount(), 1, kMaxRows);
    // What Enter would do is read whole.
    const QString action = m_hasAction ? m_model->index(rowCount() - 1, 0).data().toString() : QString();
    const QFontMetrics strong(textFont(TextSize::Body, Weight::Strong));
    const int widest = std::max(field.width(), scaled(kWidest));
    const int wide = std::clamp(strong.horizontalAdvance(action) + 34, std::max(field.width(), scaled(220)), widest);
    const int high = rows * rowHeight() + 8;
    QPoint at = field.mapToGlobal(QPoint(0, field.height() + 2));
    if (const QScreen* screen = field.screen()) {
        const QRect room = screen->availableGeometry();
        if (at.y() + high > room.bottom()) at.setY(field.mapToGlobal(QPoint(0, -2)).y() - high);
        at.setX(std::clamp(at.x(), room.left(), std::max(room.left(), room.right() - wide)));
    }
    setGeometry(QRect(at, QSize(wide, high)));
    show();
}

void ChoicePopup::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour(Role::FieldOutline), 1));
    painter.setBrush(colour(Role::Field));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), kFieldRadius, kFieldRadius);
}

} // namespace sp::desk

#include "moc_choice_popup.cpp"
