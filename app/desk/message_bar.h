// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"

#include <QPointer>
#include <QPushButton>
#include <QStringList>
#include <QTimer>
#include <QToolButton>
#include <QWidget>

#include <chrono>
#include <cstdint>
#include <functional>

namespace sp::desk {

enum class Tone { Good, Warn, Jewel };

inline constexpr std::chrono::seconds kQuietStays{10};

/// One message above the content it concerns, which moves down to make room; hidden while there is none. A message
/// has a sentence, at most one action and a way to close it, and is announced to screen readers (alert). In a window at
/// most one bar is seen, the one that was told last; when it is gone, or its page, the one before it is back. A quiet
/// message, with nothing wrong and nothing to do, goes by itself.
class MessageBar : public QWidget {
    Q_OBJECT

  public:
    explicit MessageBar(QWidget* parent = nullptr);

    /// Replaces what stood there. An empty `action` means no button; `act` is called once, after the bar closed.
    void tell(Tone tone, const QString& sentence, const QString& action = {}, std::function<void()> act = {});
    /// Tells the first of them, with the others below it; nothing where there are none.
    void tellAll(Tone tone, const QStringList& sentences);
    /// What it says now is true, and its action means what it says, only until that signal comes.
    template<class Sender, class Signal>
    void staysUntil(const Sender* sender, Signal signal) {
        disconnect(m_until);
        m_until = connect(sender, signal, this, &MessageBar::dismiss);
    }
    /// A second, plainer sentence under the first.
    void setDetail(const QString& sentence);
    void dismiss();
    /// What it says; empty while hidden.
    QString sentence() const;
    /// A standing message has no way to close it. Default: it has.
    void setClosable(bool closable);
    /// It is a part of its page and is seen beside another one. Default: no.
    void setStandsApart(bool apart) { m_standsApart = apart; }
    /// How long a quiet message stays, longer while the pointer or the focus is on it. Default: kQuietStays.
    void setQuietStays(std::chrono::milliseconds stays) { m_rest.setInterval(stays); }

  Q_SIGNALS:
    void dismissed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void settle();
    void rest();

    TextLabel* m_sentence;
    TextLabel* m_detail;
    QPushButton* m_action;
    QToolButton* m_close;
    std::function<void()> m_act;
    QMetaObject::Connection m_until;
    Tone m_tone = Tone::Jewel;
    QTimer m_rest;
    QPointer<QWidget> m_room; ///< the parent, which is watched: it comes and goes
    std::int64_t m_turn = 0;  ///< of all messages told so far
    bool m_isTold = false;    ///< it has something to say, seen or not
    bool m_standsApart = false;
};

} // namespace sp::desk
