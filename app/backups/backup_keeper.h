// SPDX-License-Identifier: MIT
#pragma once

#include "app/backups/copy_task.h"
#include "app/session/book_session.h"
#include "db/book/backups.h"

#include <QDate>
#include <QString>

#include <filesystem>
#include <optional>

namespace sp::backups {

/// Where the backups of all books lie, unless a test says otherwise: in the folder for the program's data.
std::filesystem::path backupRoot();
/// That one, and the second place as it is chosen now.
db::BackupPlaces backupPlaces();

/// Makes backups of the open book without being asked: every 30 minutes and at the end, when something was changed;
/// each is opened and gone through before it counts. Keeps them by db::outdatedAmong, here and, where the shop chose
/// one, in a second place. The demo book, and a book that can only be read, have none.
class BackupKeeper : public QObject {
    Q_OBJECT

  public:
    BackupKeeper(session::BookSession& session, std::filesystem::path root, QObject* parent = nullptr);

    /// Begins to look every 30 minutes.
    void begin();
    /// Makes one beside the work at the screen, when something was changed since the last; `isAsked`: in any case.
    void makeNow(bool isAsked = false);
    /// Makes one when something was changed, and returns when it is there.
    void finish();

    /// Of this book, the newest first.
    std::vector<db::Backup> backups();
    std::filesystem::path folder();

    /// Where each backup is put as well; empty: nowhere else.
    static std::filesystem::path secondPlace();
    static void setSecondPlace(const QString& folder);
    /// Since when the second place was not there, once that is a week.
    static std::optional<QDate> secondPlaceMissingSince(QDate today);

    /// Bytes short of what a book needs to be kept with its backups (the larger of 200 MB and five times its size), on
    /// the disk where it is lowest; 0 when there is room.
    std::int64_t roomMissing() const;

  Q_SIGNALS:
    void made(const QString& file);
    /// Said once for each try; nothing was removed.
    void failed(const QString& sentence);

  private:
    bool isDue(bool isAsked);
    std::unique_ptr<db::BookCopy> started();
    bool keep(CopyTask::Outcome outcome);
    void copyToSecondPlace(const std::filesystem::path& backup);
    void tellFailed(const QString& sentence);
    void tellFailed(const base::Error& error);

    session::BookSession& m_session;
    std::filesystem::path m_root;
    QTimer m_clock;
    CopyTask m_task;
    async::LatestTask m_second;
};

} // namespace sp::backups
