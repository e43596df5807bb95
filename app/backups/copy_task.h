// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "db/book/book_copy.h"

#include <QTimer>

#include <functional>
#include <memory>

namespace sp::backups {

/// Copies an open book beside the work at the screen: a piece at a time in the screen's thread whenever there is
/// nothing else to do, since the book belongs to it, then gone through in a thread of its own. One copy at a time.
class CopyTask : public QObject {
    Q_OBJECT

  public:
    /// The copy, whole and gone through but without its name yet, and what was found in it; or why there is none.
    struct Outcome {
        std::shared_ptr<db::BookCopy> copy;
        base::Result<db::CheckReport> report;
    };

    explicit CopyTask(QObject* parent = nullptr);

    /// Takes the copy to its end and calls `done`, unless `stop` comes before. `copy` is of a book that outlives this,
    /// or is stopped for before it goes.
    void start(std::unique_ptr<db::BookCopy> copy, std::function<void(Outcome)> done);
    /// Nothing comes of it.
    void stop();
    bool isBusy() const { return m_isBusy; }

  Q_SIGNALS:
    /// How far the work is, 0 to 1.
    void progressed(double share);

  private:
    void step();
    void verify();
    void end(base::Result<db::CheckReport> report);

    QTimer m_idle;
    std::shared_ptr<db::BookCopy> m_copy;
    std::function<void(Outcome)> m_done;
    bool m_isBusy = false;
    async::LatestTask m_reader;
};

} // namespace sp::backups
