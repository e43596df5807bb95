// SPDX-License-Identifier: MIT
#include "app/jobs/today_watch.h"

#include <chrono>

namespace sp::jobs {

using namespace std::chrono_literals;

TodayWatch::TodayWatch(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_day(session.today()) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(50ms); // several changes in a row are one
    connect(&m_soon, &QTimer::timeout, this, &TodayWatch::look);
    connect(&m_session, &session::BookSession::changed, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_session, &session::BookSession::dayTurned, this, &TodayWatch::look);
}

void TodayWatch::look() {
    m_soon.stop();
    m_day = m_session.today();
    auto asked = m_session.read([](db::Book& book) { return book.askedToday(); });
    m_asked = asked ? std::move(*asked) : db::AskedToday{};
    Q_EMIT told();
}

} // namespace sp::jobs

#include "moc_today_watch.cpp"
