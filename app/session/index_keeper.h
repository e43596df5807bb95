// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "app/session/book_session.h"

#include <QObject>

namespace sp::session {

/// Where the indexes lie by which jobs are found: in the folder for what can be thrown away.
std::filesystem::path indexFolder();
/// The computer's own clock and user, with that folder: what the program opens books with.
db::Environment seat();

/// Makes the index of the open book beside the screen's thread, when there is none or it was asked for.
class IndexKeeper : public QObject {
    Q_OBJECT

  public:
    explicit IndexKeeper(BookSession& session, QObject* parent = nullptr);

    /// Makes one where the book wants it. One that was stopped, or found the book busy, is tried again the next time it
    /// is asked for; one that cannot be made is given up.
    void look();
    bool isBusy() const { return m_task.isBusy(); }

  private:
    BookSession& m_session;
    async::LatestTask m_task;
};

} // namespace sp::session
