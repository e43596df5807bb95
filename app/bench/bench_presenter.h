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
    /// None where no weekday has time at the bench, see `whyNoPlan`.
    const std::optional<scheduling::BenchPlan>& plan() const { return m_plan; }
    const std::optional<base::Error>& whyNoPlan() const { return m_whyNoPlan; }
    bool isLate(std::size_t at) const;

    /// Reads what is to be made.
    void look();
    void choose(int row);
    int chosenRow() const;
    const db::BenchEntry* chosen() const;
    /// Moves the chosen job on to the next stage: to being made, or to ready. Why not, where the book refuses.
    std::optional<base::Error> moveOn();
    /// The first day by which an hour more could be done; none where none can be told.
    std::optional<units::Date> dayOfAnHour() const;

  Q_SIGNALS:
    void listed();   ///< the queue was read
    void selected(); ///< another job is chosen, or the same as it is now

  private:
    session::BookSession& m_session;
    db::BenchReader m_reader;
    db::BenchQueue m_queue;
    std::optional<scheduling::BenchPlan> m_plan;
    std::optional<base::Error> m_whyNoPlan;
    base::Id m_chosen;
};

} // namespace sp::bench
