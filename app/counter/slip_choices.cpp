// SPDX-License-Identifier: MIT
#include "app/counter/slip_choices.h"

#include "app/desk/figures.h"
#include "app/desk/fonts.h"
#include "app/desk/palette.h"
#include "app/words/shown.h"

#include <QEvent>
#include <QGridLayout>
#include <QPainter>
#include <QRegularExpression>

namespace sp::counter {

namespace {

using desk::Role;
using desk::TextSize;
using desk::Weight;
using words::shown;

constexpr int kInARow = 2;
constexpr int kPadding = 8;
constexpr int kCorner = 6;

int lineOf(TextSize size) { return QFontMetrics(desk::textFont(size)).lineSpacing(); }

} // namespace

ChoiceCard::ChoiceCard(QWidget* parent)
    : QAbstractButton(parent) {
    setCheckable(true);
    setAutoExclusive(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void ChoiceCard::setContent(const quoting::SheetContent& sheet, const quoting::SheetChoice& choice, bool isLookedAt) {
    m_name = shown(choice.name);
    m_difference = shown(choice.difference);
    m_each = choice.lines.empty() ? QString() : tr("%1 each").arg(shown(choice.lines.front().each));
    m_toPay = shown(choice.toPay.text);
    setChecked(isLookedAt);
    setAccessibleName(QStringList{m_name, m_difference, m_each, shown(sheet.labels.toPay) + QLatin1Char(' ') + m_toPay}
                          .filter(QRegularExpression(QStringLiteral(".")))
                          .join(QStringLiteral(", ")));
    setToolTip(m_difference);
    updateGeometry();
    update();
}

QSize ChoiceCard::sizeHint() const {
    return {desk::scaled(160), 2 * desk::scaled(kPadding) + lineOf(TextSize::Body) + 2 * lineOf(TextSize::Small)};
}

QSize ChoiceCard::minimumSizeHint() const { return {desk::scaled(80), sizeHint().height()}; }

bool ChoiceCard::event(QEvent* event) {
    if (event->type() == QEvent::FontChange) updateGeometry();
    return QAbstractButton::event(event);
}

void ChoiceCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double half = isChecked() ? 1 : 0.5;
    const QRectF edge = QRectF(rect()).adjusted(half, half, -half, -half);
    painter.setPen(QPen(desk::colour(isChecked() ? Role::Jewel : Role::Hairline), 2 * half));
    painter.setBrush(isChecked() ? QBrush(desk::colour(Role::JewelSoft)) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(edge, kCorner, kCorner);
    if (hasFocus() && !isChecked()) {
        painter.setPen(QPen(desk::colour(Role::Jewel), 1, Qt::DashLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(edge.adjusted(2, 2, -2, -2), kCorner, kCorner);
    }
    const int padding = desk::scaled(kPadding);
    QRect row(padding, padding, width() - 2 * padding, lineOf(TextSize::Body));
    const auto write = [&](const QString& words, TextSize size, Weight weight, Role role, Qt::Alignment side,
                           int room) {
        const auto font = desk::textFont(size, weight);
        painter.setFont(font);
        painter.setPen(desk::colour(role));
        const auto fitting = QFontMetrics(font).elidedText(words, Qt::ElideRight, room);
        painter.drawText(row, static_cast<int>((side | Qt::AlignVCenter).toInt()), fitting);
    };
    const int figure = QFontMetrics(desk::textFont(TextSize::Body, Weight::Strong)).horizontalAdvance(m_toPay);
    write(m_name, TextSize::Body, Weight::Strong, Role::Ink, Qt::AlignLeft, row.width() - figure - padding);
    painter.setFont(desk::textFont(TextSize::Body, Weight::Strong));
    desk::drawFigures(painter, row, Qt::AlignRight | Qt::AlignVCenter, m_toPay);
    row = QRect(padding, row.bottom() + 1, row.width(), lineOf(TextSize::Small));
    write(m_difference, TextSize::Small, Weight::Plain, Role::Ink, Qt::AlignLeft, row.width());
    row.translate(0, row.height());
    write(m_each, TextSize::Small, Weight::Plain, Role::Muted, Qt::AlignLeft, row.width());
}

SlipChoices::SlipChoices(QWidget* parent)
    : QWidget(parent)
    , m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(24, 8, 24, 0);
    m_grid->setSpacing(8);
    for (int i = 0; i < static_cast<int>(catalogue::kMaxChoices); ++i) {
        auto* card = new ChoiceCard(this);
        card->setObjectName(QStringLiteral("choice%1").arg(i + 1));
        connect(card, &QAbstractButton::clicked, this, [this, i] { Q_EMIT chosen(i); });
        m_grid->addWidget(card, i / kInARow, i % kInARow);
        m_cards.push_back(card);
    }
    for (int column = 0; column < kInARow; ++column) m_grid->setColumnStretch(column, 1);
    hide();
}

void SlipChoices::setContent(const quoting::SheetContent& sheet) {
    const auto choices = quoting::choicesOf(sheet);
    setVisible(choices.size() > 1);
    for (std::size_t i = 0; i < m_cards.size(); ++i) {
        m_cards[i]->setVisible(i < choices.size());
        if (i < choices.size())
            m_cards[i]->setContent(sheet, *choices[i], static_cast<std::int64_t>(i) == sheet.choice);
    }
}

} // namespace sp::counter

#include "moc_slip_choices.cpp"
