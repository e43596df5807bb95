// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"

#include <QPushButton>
#include <QToolButton>
#include <QWidget>

#include <functional>

namespace sp::desk {

enum class Tone { Good, Warn, Jewel };

/// One message above the content it concerns, which moves down to make room; hidden while there is none. A message
/// has a sentence, at most one action and a way to close it, and is announced to screen readers (alert).
class MessageBar : public QWidget {
    Q_OBJECT

  public:
    explicit MessageBar(QWidget* parent = nullptr);

    /// Replaces what stood there. An empty `action` means no button; `act` is called once, after the bar closed.
    void tell(Tone tone, const QString& sentence, const QString& action = {}, std::function<void()> act = {});
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

  Q_SIGNALS:
    void dismissed();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    TextLabel* m_sentence;
    TextLabel* m_detail;
    QPushButton* m_action;
    QToolButton* m_close;
    std::function<void()> m_act;
    QMetaObject::Connection m_until;
    Tone m_tone = Tone::Jewel;
};

} // namespace sp::desk
