// SPDX-License-Identifier: MIT
#include "app/desk/message_bar.h"

#include "app/desk/bench_style.h"
#include "app/desk/icons.h"

#include <QAccessible>
#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>
#include <vector>

namespace sp::desk {

namespace {

Role roleOf(Tone tone) {
    switch (tone) {
    case Tone::Good: return Role::Good;
    case Tone::Warn: return Role::Warn;
    case Tone::Jewel: return Role::Jewel;
    }
    return Role::Jewel;
}

} // namespace

MessageBar::MessageBar(QWidget* parent)
    : QWidget(parent)
    , m_sentence(new TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong))
    , m_detail(new TextLabel)
    , m_action(new QPushButton)
    , m_close(new QToolButton) {
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_sentence);
    words->addWidget(m_detail);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(20, 8, 8, 8);
    row->setSpacing(8);
    row->addLayout(words, 1);
    row->addWidget(m_action);
    row->addWidget(m_close);

    m_sentence->setWordWrap(true);
    m_detail->setWordWrap(true);
    m_sentence->setObjectName(QStringLiteral("messageSentence"));
    m_action->setObjectName(QStringLiteral("messageAction"));
    m_close->setObjectName(QStringLiteral("messageClose"));
    m_close->setIcon(icon(Icon::Close, Role::Muted));
    m_close->setAccessibleName(tr("Close message"));
    m_close->setToolTip(tr("Close message"));
    m_close->setAutoRaise(true);
    m_close->setFocusPolicy(Qt::StrongFocus);
    makeQuiet(*m_action);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kQuietStays);
    connect(&m_rest, &QTimer::timeout, this, &MessageBar::rest);
    m_room = parent;
    if (m_room) m_room->installEventFilter(this);
    connect(m_close, &QToolButton::clicked, this, &MessageBar::dismiss);
    connect(m_action, &QPushButton::clicked, this, [this] {
        const auto act = std::exchange(m_act, {});
        dismiss();
        if (act) act();
    });
    hide();
}

void MessageBar::tell(Tone tone, const QString& sentence, const QString& action, std::function<void()> act) {
    disconnect(m_until);
    m_tone = tone;
    m_act = std::move(act);
    m_sentence->setText(sentence);
    m_sentence->setRole(tone == Tone::Jewel ? Role::Ink : roleOf(tone));
    m_detail->hide();
    m_detail->clear();
    m_action->setText(action);
    m_action->setVisible(!action.isEmpty());
    static std::int64_t turns = 0;
    m_turn = ++turns;
    m_isTold = true;
    settle();
    update();
    if (action.isEmpty() && tone != Tone::Warn)
        m_rest.start();
    else
        m_rest.stop();
    QAccessibleEvent alert(m_sentence, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void MessageBar::tellAll(Tone tone, const QStringList& sentences) {
    if (sentences.isEmpty()) return;
    tell(tone, sentences.front());
    setDetail(sentences.mid(1).join(QLatin1Char(' ')));
}

void MessageBar::setDetail(const QString& sentence) {
    m_detail->setText(sentence);
    m_detail->setVisible(!sentence.isEmpty());
}

void MessageBar::dismiss() {
    if (!m_isTold) return;
    m_isTold = false;
    m_rest.stop();
    hide();
    settle();
    disconnect(m_until);
    m_act = {};
    Q_EMIT dismissed();
}

/// Shows the newest of those in the window whose page is seen, and hides the others.
void MessageBar::settle() {
    if (m_standsApart) return setVisible(m_isTold);
    auto* all = window();
    std::vector<MessageBar*> told;
    for (auto* bar : all->findChildren<MessageBar*>()) {
        const auto* room = bar->parentWidget();
        if (bar->m_isTold && !bar->m_standsApart && (room == all || room->isVisibleTo(all))) told.push_back(bar);
    }
    std::ranges::sort(told, {}, [](const MessageBar* bar) { return -bar->m_turn; });
    for (std::size_t i = 0; i < told.size(); ++i) told[i]->setVisible(i == 0);
}

/// Not from under the eyes of whoever is at it.
void MessageBar::rest() {
    if (underMouse() || isAncestorOf(QApplication::focusWidget()))
        m_rest.start();
    else
        dismiss();
}

bool MessageBar::event(QEvent* event) {
    if (event->type() == QEvent::ParentChange) {
        if (m_room) m_room->removeEventFilter(this);
        m_room = parentWidget();
        if (m_room) m_room->installEventFilter(this);
    }
    return QWidget::event(event);
}

bool MessageBar::eventFilter(QObject* watched, QEvent* event) {
    const bool comesOrGoes = event->type() == QEvent::Show || event->type() == QEvent::Hide;
    if (watched == m_room && comesOrGoes && !event->spontaneous() && m_isTold) settle();
    return QWidget::eventFilter(watched, event);
}

QString MessageBar::sentence() const { return m_isTold ? m_sentence->text() : QString(); }

void MessageBar::setClosable(bool closable) { m_close->setVisible(closable); }

void MessageBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = colour(roleOf(m_tone));
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_tone == Tone::Jewel ? colour(Role::JewelSoft) : blended(ink, colour(Role::Card), 0.1));
    const QRectF ground = contentsRect();
    painter.drawRoundedRect(ground, kFieldRadius + 2, kFieldRadius + 2);
    painter.setBrush(ink);
    painter.drawRoundedRect(QRectF(ground.left() + 8, ground.top() + 10, 3, ground.height() - 20), 1.5, 1.5);
}

} // namespace sp::desk

#include "moc_message_bar.cpp"
