// SPDX-License-Identifier: MIT
#include "app/desk/rail.h"

#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"

#include <QApplication>
#include <QRadioButton>
#include <QShortcut>

#include <algorithm>

namespace sp::desk {

namespace {

/// Lengths of a tile at the zoom in force, up to 150 %: all places are to stand below each other in a usual window.
int tile(int px) { return std::min(scaled(px), px * 3 / 2); }

constexpr int kWordTop = 38; ///< of a place's word below the top of its tile
constexpr int kIconTop = 9;  ///< likewise of its drawing
constexpr int kIconSide = 24;
constexpr int kLeastIcon = 14; ///< below it a drawing says nothing
constexpr int kBelowWord = 8;

/// One place: a radio button to the keyboard and to screen readers, a tile to the eye.
class PlaceButton : public QRadioButton {
  public:
    PlaceButton(Icon drawing, const QString& word)
        : QRadioButton(word)
        , m_drawing(drawing) {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
        setCursor(Qt::PointingHandCursor);
    }

    QSize sizeHint() const override {
        const QFontMetrics metrics(textFont(TextSize::Small, Weight::Strong));
        return {metrics.horizontalAdvance(text()) + 16, tile(kWordTop) + wordHeight()};
    }
    /// In a low window the drawing is smaller, then the word stands alone.
    QSize minimumSizeHint() const override { return {sizeHint().width(), wordHeight() + kBelowWord}; }

    void setNumber(int number, const QString& meaning) {
        m_number = number;
        setAccessibleDescription(number == 0 ? QString() : meaning);
        update();
    }

  protected:
    bool hitButton(const QPoint& at) const override { return rect().contains(at); }

    void enterEvent(QEnterEvent* event) override {
        QRadioButton::enterEvent(event);
        update();
    }

    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF box(rect());
        painter.setPen(Qt::NoPen);
        if (isChecked())
            painter.setBrush(colour(Role::JewelSoft));
        else if (underMouse())
            painter.setBrush(colour(Role::Bench));
        else
            painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, kFieldRadius + 2, kFieldRadius + 2);
        if (hasFocus()) {
            painter.setPen(QPen(colour(Role::Jewel), 2));
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), kFieldRadius + 1, kFieldRadius + 1);
        }
        const int wordTop = height() - wordHeight();
        const int side = std::min(tile(kIconSide), wordTop - 8);
        const double iconTop = (wordTop - side) * double(kIconTop) / (kWordTop - kIconSide);
        if (side >= kLeastIcon)
            paintIcon(painter, QRectF(box.center().x() - side / 2.0, iconTop, side, side), m_drawing,
                      colour(isChecked() ? Role::Jewel : Role::Muted));
        if (m_number > 0 && side >= kLeastIcon)
            paintNumber(painter, QPointF(box.center().x() + side * 0.8, iconTop + tile(3)));
        else if (m_number > 0)
            paintNumber(painter, QPointF(box.right() - tile(kBelowWord), box.center().y()));
        painter.setFont(textFont(TextSize::Small, isChecked() ? Weight::Strong : Weight::Plain));
        painter.setPen(colour(isChecked() ? Role::Ink : Role::Muted));
        painter.drawText(box.adjusted(0, wordTop, 0, 0), Qt::AlignHCenter | Qt::AlignTop | Qt::TextHideMnemonic,
                         text());
    }

  private:
    static int wordHeight() { return QFontMetrics(textFont(TextSize::Small, Weight::Strong)).height() + kBelowWord; }
    void paintNumber(QPainter& painter, const QPointF& centre) const {
        painter.setFont(textFont(TextSize::Small, Weight::Strong));
        const auto text = m_number < 100 ? QString::number(m_number) : QStringLiteral("99+");
        const QFontMetricsF metrics(painter.font());
        const double height = metrics.height();
        const double width = std::max(height, metrics.horizontalAdvance(text) + height * 0.6);
        const QRectF box(centre.x() - width / 2, centre.y() - height / 2, width, height);
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour(Role::Jewel));
        painter.drawRoundedRect(box, height / 2, height / 2);
        painter.setPen(colour(Role::OnJewel));
        painter.drawText(box, Qt::AlignCenter, text);
    }

    Icon m_drawing;
    int m_number = 0;
};

} // namespace

Rail::Rail(QWidget* parent)
    : QWidget(parent)
    , m_layout(new QVBoxLayout(this))
    , m_group(new QButtonGroup(this)) {
    m_layout->setContentsMargins(8, 12, 9, 12);
    m_layout->setSpacing(8);
    m_layout->addStretch(1);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    setAccessibleName(tr("Places"));
    connect(m_group, &QButtonGroup::idToggled, this, [this](int id, bool on) {
        if (!on || id == m_current) return;
        m_current = id;
        Q_EMIT chosen(id);
    });
}

int Rail::addPlace(Icon drawing, const QString& word, const QString& objectName) {
    const int index = count();
    auto* button = new PlaceButton(drawing, word);
    button->setObjectName(objectName);
    m_layout->insertWidget(index, button);
    if (index == 0) {
        m_current = 0;
        button->setChecked(true);
    }
    m_group->addButton(button, index);
    if (index < 9) {
        const QKeySequence keys(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + index));
        button->setToolTip(QStringLiteral("%1 (%2)").arg(word, keys.toString(QKeySequence::NativeText)));
        connect(new QShortcut(keys, this, nullptr, nullptr, Qt::WindowShortcut), &QShortcut::activated, this,
                [this, index] {
                    if (isShown(index)) setCurrent(index);
                });
    }
    updateGeometry();
    return index;
}

int Rail::count() const { return static_cast<int>(m_group->buttons().size()); }

int Rail::current() const { return m_current; }

void Rail::setShown(int index, bool shown) { m_group->button(index)->setVisible(shown); }

bool Rail::isShown(int index) const { return m_group->button(index)->isVisibleTo(this); }

void Rail::setNumber(int index, int number, const QString& meaning) {
    static_cast<PlaceButton*>(m_group->button(index))->setNumber(number, meaning);
}

void Rail::setCurrent(int index) {
    QAbstractButton* button = m_group->button(index);
    if (!button) return;
    const QWidget* focused = QApplication::focusWidget();
    if (focused && isAncestorOf(focused)) button->setFocus(Qt::ShortcutFocusReason); // the arrows go on from here
    button->setChecked(true);
}

QSize Rail::sizeHint() const {
    return {std::max(scaled(92), m_layout->sizeHint().width()), m_layout->sizeHint().height()};
}

void Rail::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colour(Role::Card));
    painter.fillRect(QRect(width() - 1, 0, 1, height()), colour(Role::Hairline));
}

} // namespace sp::desk

#include "moc_rail.cpp"
