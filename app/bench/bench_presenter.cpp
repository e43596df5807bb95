// SPDX-License-Identifier: MIT
#include "app/bench/bench_presenter.h"

#include "app/session/stage_move.h"

namespace sp::bench {

BenchPresenter::BenchPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    const auto outdate = [this] {
        m_isOutdated = true;
        Q_EMIT outdated();
    };
    connect(&session, &session::BookSession::changed, this, outdate);
    connect(&session, &session::BookSession::dayTurned, this, outdate);
}

void BenchPresenter::look() {
    if (!m_isOutdated) return;
    auto read = m_session.readInPlace([this](db::Book& book) { return m_reader.read(book); });
    m_isOutdated = !read; // what failed is tried again
    m_unread = read ? std::nullopt : std::optional(read.error());
    m_queue = read ? std::move(*read) : db::BenchQueue{};
    m_plan.reset();
    if (auto plan = m_queue.plan()) m_plan = std::move(*plan);
    if (!chosen()) m_chosen = m_queue.entries.empty() ? base::Id{} : m_queue.entries.front().job.id;
    Q_EMIT listed();
    Q_EMIT selected();
}

bool BenchPresenter::isLate(std::size_t at) const {
    return m_plan && at < m_queue.firstUnknown() && scheduling::isLate(m_queue.jobs[at], m_plan->ready[at]);
}

void BenchPresenter::choose(int row) {
    if (row < 0 || row >= static_cast<int>(m_queue.entries.size())) return;
    m_chosen = m_queue.entries[static_cast<std::size_t>(row)].job.id;
    Q_EMIT selected();
}

int BenchPresenter::chosenRow() const {
    for (std::size_t i = 0; i < m_queue.entries.size(); ++i)
        if (m_queue.entries[i].job.id == m_chosen) return static_cast<int>(i);
    return -1;
}

const db::BenchEntry* BenchPresenter::chosen() const {
    const int row = chosenRow();
    return row < 0 ? nullptr : &m_queue.entries[static_cast<std::size_t>(row)];
}

std::optional<base::Error> BenchPresenter::moveOn() {
    const auto* entry = chosen();
    const auto next = entry ? catalogue::nextStage(entry->job.stage) : std::nullopt;
    if (!next) return std::nullopt;
    const auto use = session::moveToStage(m_session, db::QuoteSummary(entry->job), *next);
    if (!use) return use.error();
    Q_EMIT movedOn(*use);
    return std::nullopt;
}

std::optional<units::Date> BenchPresenter::dayOfAnHour() const {
    db::BenchWork hour;
    hour.time = units::Duration::fromMinutes(60);
    const auto promise = m_queue.promise(hour, std::nullopt);
    return promise ? std::optional(promise->promise.first) : std::nullopt;
}

} // namespace sp::bench

#include "moc_bench_presenter.cpp"
