// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QTimer>

namespace sp::counter {

/// Says when nobody has pressed a key or a mouse button anywhere in the program for a while.
class IdleWatch : public QObject {
    Q_OBJECT

  public:
    explicit IdleWatch(QObject* parent = nullptr);
    ~IdleWatch() override;

    /// From now on, until it has been said once. 0 or less: never.
    void start(int seconds);
    void stop();

  Q_SIGNALS:
    void idle();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QTimer m_rest;
};

} // namespace sp::counter
