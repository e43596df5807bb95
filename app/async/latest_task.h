// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QThreadPool>

#include <functional>
#include <memory>
#include <stop_token>
#include <type_traits>
#include <utility>

namespace sp::async {

/// Work beside the screen's thread of which only the newest counts. One work runs at a time; a newer one, drop() and
/// the destructor ask the one before to stop, and nothing is heard of it any more, not even what it has already said.
/// Work is handed to another thread: it owns what it looks at, looks at its stop token now and then or is bounded, and
/// does not throw (the program would end). The destructor waits until the work under way has returned.
class LatestTask : public QObject {
    Q_OBJECT

  public:
    /// What a work knows of its being wanted. Belongs to the work's thread; the task outlives it.
    class Run {
      public:
        bool isStopped() const { return m_stop.stop_requested(); }
        const std::stop_token& stopToken() const { return m_stop; }
        /// Calls `say` in the task's thread, in the order told, unless the work is stopped by then.
        void tell(std::function<void()> say) const;

      private:
        friend LatestTask;
        Run(LatestTask& task, std::stop_token stop)
            : m_task(&task)
            , m_stop(std::move(stop)) {}

        LatestTask* m_task;
        std::stop_token m_stop;
    };

    explicit LatestTask(QObject* parent = nullptr, QThread::Priority priority = QThread::InheritPriority);
    ~LatestTask() override;

    /// `work(run)` tells as often as it likes; busy until it has returned.
    void start(std::function<void(const Run&)> work);

    /// One answer: `take(work())`, or `take(work(stopToken))`. No longer busy when `take` is called. `work` and `take`
    /// can be copied.
    template<class Work, class Take>
    void ask(Work work, Take take) {
        start([this, work = std::move(work), take = std::move(take)](const Run& run) {
            const auto answered = [&] {
                if constexpr (std::is_invocable_v<const Work&, std::stop_token>)
                    return work(run.stopToken());
                else
                    return work();
            };
            auto answer = std::make_shared<decltype(answered())>(answered());
            run.tell([this, answer, take] {
                m_busy = false;
                take(std::move(*answer));
            });
        });
    }

    /// Nothing is asked any more.
    void drop();
    /// Returns once the work under way has; what it told is said later.
    void wait() { m_pool.waitForDone(); }
    bool isBusy() const { return m_busy; }

  private:
    QThreadPool m_pool;
    std::stop_source m_newest;
    bool m_busy = false;
};

} // namespace sp::async
