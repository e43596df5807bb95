// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "db/book/bench_queue.h"

#include <QObject>

#include <optional>

namespace sp::bench {

/// What is to be made and when, as the Bench shows it.
class BenchPresenter : public QObject {
    Q_OBJECT

  public:
    explicit BenchPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    const db::BenchQueue& queue() const { return m_queue; }
    /// Why it is empty, where it could not be read.
    const std::optional<base::Error>& unread() const { return m_unread; }
    /// None where no weekday has time at the bench.
    const std::optional<scheduling::BenchPlan>& plan() const { return m_plan; }
    bool isLate(std::size_t at) const;

    /// Reads what is to be made, unless that was done and neither the book nor the day is another since.
    void look();
    void choose(int row);
    int chosenRow() const;
    const db::BenchEntry* chosen() const;
    /// Moves the chosen job on to the next stage: to being made, or to ready. Why not, where the book refuses.
    std::optional<base::Error> moveOn();
    /// The first day by which an hour more could be done; none where none can be told.
    std::optional<units::Date> dayOfAnHour() const;

  Q_SIGNALS:
    void outdated(); ///< the book or the day is another than what was read
    void listed();   ///< the queue was read
    void selected(); ///< another job is chosen, or the same as it is now
    /// A job went on to its next stage, and this was booked for it.
    void movedOn(const sp::db::ShelfUse& use);

  private:
    session::BookSession& m_session;
    db::BenchReader m_reader;
    db::BenchQueue m_queue;
    std::optional<scheduling::BenchPlan> m_plan;
    std::optional<base::Error> m_unread;
    bool m_isOutdated = true;
    base::Id m_chosen;
};

} // namespace sp::bench
