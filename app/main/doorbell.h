// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QSocketNotifier>
#include <QString>

#include <memory>

namespace sp::program {

/// Where a second start of the program meets the first: a socket in the folder of the user's session, which nobody else
/// can reach.
class Doorbell : public QObject {
    Q_OBJECT

  public:
    /// Asks the program that runs already to come to the front and to open `file` (absolute; may be empty). False when
    /// none runs, or none answers within two seconds.
    static bool ring(const QString& file);

    explicit Doorbell(QObject* parent = nullptr);
    ~Doorbell() override;
    /// From now on other starts are heard. False where that cannot be; the program works all the same.
    bool listen();

  Q_SIGNALS:
    void rung(const QString& file);

  private:
    void answer();

    int m_handle = -1;
    std::unique_ptr<QSocketNotifier> m_notifier;
};

} // namespace sp::program
