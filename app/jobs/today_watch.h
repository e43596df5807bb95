// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"

#include <QObject>
#include <QTimer>

namespace sp::jobs {

/// What today asks, kept up with the book and the day: read again soon after something has changed, and when the
/// day has. Lives as long as the window.
class TodayWatch : public QObject {
    Q_OBJECT

  public:
    explicit TodayWatch(session::BookSession& session, QObject* parent = nullptr);

    const db::AskedToday& asked() const { return m_asked; }
    units::Date day() const { return m_day; }
    /// Reads it now.
    void look();

  Q_SIGNALS:
    void told(); ///< it was read

  private:
    session::BookSession& m_session;
    db::AskedToday m_asked;
    units::Date m_day;
    QTimer m_soon;
};

} // namespace sp::jobs
