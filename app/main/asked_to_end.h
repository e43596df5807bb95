// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>

class QSocketNotifier;

namespace sp::program {

/// Notices that the system or a shell asks the program to end (SIGTERM, SIGHUP, SIGINT: logging out, shutting down,
/// Ctrl+C), so that it can close as if its window were closed. One at a time.
class AskedToEnd : public QObject {
    Q_OBJECT

  public:
    AskedToEnd();
    ~AskedToEnd() override;

  Q_SIGNALS:
    void asked();

  private:
    QSocketNotifier* m_notifier = nullptr;
};

} // namespace sp::program
