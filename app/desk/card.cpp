// SPDX-License-Identifier: MIT
#include "app/desk/card.h"

#include "app/desk/bench_style.h"

#include <QPainter>

namespace sp::desk {

Card::Card(QWidget* parent, Role ground)
    : QFrame(parent)
    , m_ground(ground) {}

void Card::setChosen(bool chosen) {
    m_chosen = chosen;
    update();
}

void Card::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = m_chosen ? 2 : 1;
    painter.setPen(QPen(colour(m_chosen ? Role::Jewel : Role::Hairline), line));
    painter.setBrush(colour(m_ground));
    const double inset = line / 2;
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), kCardRadius, kCardRadius);
}

Hairline::Hairline(QWidget* parent)
    : QWidget(parent) {
    setFixedHeight(1);
}

void Hairline::paintEvent(QPaintEvent*) { QPainter(this).fillRect(rect(), colour(Role::Hairline)); }

TextLabel* sectionTitle(const QString& text, QWidget* parent) {
    return new TextLabel(text, TextSize::Body, Role::Ink, Weight::Strong, parent);
}

TextLabel* pageTitle(const QString& text, QWidget* parent) {
    auto* title = new TextLabel(text, TextSize::Title, Role::Ink, Weight::Strong, parent);
    title->setElides(true);
    return title;
}

} // namespace sp::desk

#include "moc_card.cpp"
