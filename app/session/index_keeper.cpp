// SPDX-License-Identifier: MIT
#include "app/session/index_keeper.h"

#include "db/messages.h"

#include <QStandardPaths>

namespace sp::session {

std::filesystem::path indexFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation).toStdString() + "/stonepenny";
}

db::Environment seat() {
    auto environment = db::systemEnvironment();
    environment.cacheFolder = indexFolder();
    return environment;
}

IndexKeeper::IndexKeeper(BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_task(nullptr, QThread::LowPriority) {
    connect(&m_session, &BookSession::indexAsked, this, &IndexKeeper::look);
}

void IndexKeeper::look() {
    if (m_task.isBusy() || !m_session.wantsIndex()) return;
    m_task.ask(
        [file = m_session.book().file(), folder = m_session.book().environment().cacheFolder](std::stop_token stop) {
            return db::Book::makeIndex(file, folder, {std::move(stop), {}});
        },
        // What was not made is no harm: the book is looked through instead.
        [this](const base::Done& made) {
            if (made)
                m_session.takeIndex();
            else if (made.error().fault != idOf(db::Fault::Stopped) && made.error().code != base::Code::Busy)
                m_session.giveUpIndex();
        });
}

} // namespace sp::session

#include "moc_index_keeper.cpp"
