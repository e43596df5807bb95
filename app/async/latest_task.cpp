// SPDX-License-Identifier: MIT
#include "app/async/latest_task.h"

namespace sp::async {

void LatestTask::Run::tell(std::function<void()> say) const {
    // A stop is asked for in the task's thread alone, so that one asked for before `say` is called is seen there.
    QMetaObject::invokeMethod(
        m_task,
        [stop = m_stop, say = std::move(say)] {
            if (!stop.stop_requested()) say();
        },
        Qt::QueuedConnection);
}

LatestTask::LatestTask(QObject* parent, QThread::Priority priority)
    : QObject(parent) {
    m_pool.setMaxThreadCount(1);
    m_pool.setThreadPriority(priority);
}

LatestTask::~LatestTask() {
    drop();
    m_pool.waitForDone();
}

void LatestTask::start(std::function<void(const Run&)> work) {
    drop();
    m_newest = std::stop_source();
    m_busy = true;
    m_pool.start([this, run = Run(*this, m_newest.get_token()), work = std::move(work)]() noexcept {
        if (run.isStopped()) return;
        work(run);
        run.tell([this] { m_busy = false; });
    });
}

void LatestTask::drop() {
    m_newest.request_stop();
    m_pool.clear();
    m_busy = false;
}

} // namespace sp::async

#include "moc_latest_task.cpp"
