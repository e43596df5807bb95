// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "db/book/bench_queue.h"

#include <QObject>
#include <QTimer>

#include <optional>

namespace sp::counter {

/// What the bench can promise of the order at the Counter. What is to be made is read once the event loop is idle, and
/// anew after each change of the book; from then on it is answered with every key. Nothing is promised of what has no
/// price, nor of what is agreed to: that stands in the queue itself.
class BenchPromise : public QObject {
    Q_OBJECT

  public:
    explicit BenchPromise(CounterPresenter& presenter, QObject* parent = nullptr);

    const std::optional<db::BenchAnswer>& promise() const { return m_promise; }
    /// Why none can be given; only where that is to be said.
    const std::optional<base::Error>& whyNot() const { return m_whyNot; }
    /// Whether that is because no weekday has time at the bench yet.
    bool isWithoutHours() const;
    /// The queue that the promise is of.
    const db::BenchQueue& queue() const { return m_others ? *m_others : *m_queue; }

  Q_SIGNALS:
    void told(); ///< it is another one

  private:
    void ask();
    void readQueue();

    CounterPresenter& m_presenter;
    db::BenchReader m_reader;
    std::optional<db::BenchQueue> m_queue;
    std::optional<base::Error> m_unread;    ///< why it could not be read, until the book or the day is another
    std::optional<db::BenchQueue> m_others; ///< without the job that the order revises; none: it revises none
    std::optional<db::BenchAnswer> m_promise;
    std::optional<base::Error> m_whyNot;
    QTimer m_idle;
};

} // namespace sp::counter
