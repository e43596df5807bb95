// SPDX-License-Identifier: MIT
#include "app/backups/copy_task.h"

#include <utility>

namespace sp::backups {

namespace {

constexpr int kPages = 128;         ///< half a megabyte, a few milliseconds
constexpr double kCopyShare = 0.35; ///< of the whole work; going through it takes longer

} // namespace

CopyTask::CopyTask(QObject* parent)
    : QObject(parent)
    , m_reader(nullptr, QThread::LowPriority) {
    m_idle.setInterval(0);
    connect(&m_idle, &QTimer::timeout, this, &CopyTask::step);
}

void CopyTask::start(std::unique_ptr<db::BookCopy> copy, std::function<void(Outcome)> done) {
    stop();
    m_copy = std::move(copy);
    m_done = std::move(done);
    m_isBusy = true;
    m_idle.start();
}

void CopyTask::stop() {
    m_idle.stop();
    m_reader.drop();
    m_copy.reset();
    m_done = {};
    m_isBusy = false;
}

void CopyTask::step() {
    const auto whole = m_copy->step(kPages);
    if (!whole) return end(base::fail(whole.error()));
    Q_EMIT progressed(kCopyShare * m_copy->share());
    if (!*whole) return;
    m_idle.stop();
    verify();
}

void CopyTask::verify() {
    m_reader.start([this, copy = m_copy](const async::LatestTask::Run& run) {
        const auto told = [this, &run](double share) {
            run.tell([this, share] { Q_EMIT progressed(kCopyShare + (1 - kCopyShare) * share); });
        };
        auto report = std::make_shared<base::Result<db::CheckReport>>(copy->verify({run.stopToken(), told}));
        run.tell([this, report] { end(std::move(*report)); });
    });
}

void CopyTask::end(base::Result<db::CheckReport> report) {
    m_idle.stop();
    Outcome outcome{std::exchange(m_copy, {}), std::move(report)};
    const auto done = std::exchange(m_done, {});
    m_isBusy = false;
    done(std::move(outcome));
}

} // namespace sp::backups

#include "moc_copy_task.cpp"
