// SPDX-License-Identifier: MIT
#include "app/backups/backup_keeper.h"

#include "app/session/settings.h"
#include "app/words/words.h"

#include <QDir>
#include <QStandardPaths>
#include <QStorageInfo>

#include <algorithm>

namespace sp::backups {

namespace fs = std::filesystem;

namespace {

constexpr std::chrono::minutes kEvery{30};
constexpr std::int64_t kLeastRoom = 200'000'000;
constexpr int kReminderDays = 7;

std::chrono::sys_seconds nowOf(const session::BookSession& session) {
    return std::chrono::floor<std::chrono::seconds>(session.book().environment().now());
}

QString pathOf(const fs::path& path) { return QString::fromStdString(path.string()); }

/// A folder of the owner's alone, made where it is missing.
bool makeFolder(const fs::path& folder) {
    std::error_code error;
    if (fs::is_directory(folder, error)) return true;
    if (!fs::create_directories(folder, error)) return false;
    fs::permissions(folder, fs::perms::owner_all, error);
    return true;
}

/// The folder of a backup's book in another root.
fs::path folderIn(const fs::path& root, const fs::path& backup) { return root / backup.parent_path().filename(); }

} // namespace

fs::path backupRoot() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("backups"))
        .toStdString();
}

BackupKeeper::BackupKeeper(session::BookSession& session, fs::path root, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_root(std::move(root))
    , m_second(nullptr, QThread::LowPriority) {
    m_clock.setInterval(kEvery);
    connect(&m_clock, &QTimer::timeout, this, [this] { makeNow(); });
}

void BackupKeeper::begin() { m_clock.start(); }

fs::path BackupKeeper::folder() {
    const auto mark = m_session.mark();
    if (!mark) return {};
    return db::backupFolder(m_root, m_session.book().file().stem().string(), *mark);
}

std::vector<db::Backup> BackupKeeper::backups() { return db::backupsIn(folder()); }

bool BackupKeeper::isDue(bool isAsked) {
    if (m_session.isReadOnly() || m_session.shop().isDemo || m_task.isBusy()) return false;
    const auto mark = m_session.mark();
    if (!mark) return false;
    const auto there = db::backupsIn(db::backupFolder(m_root, m_session.book().file().stem().string(), *mark));
    return isAsked || std::ranges::none_of(there, [&](const db::Backup& one) { return one.change == mark->change; });
}

std::unique_ptr<db::BookCopy> BackupKeeper::started() {
    const auto mark = m_session.mark();
    if (!mark) return nullptr;
    const auto name = m_session.book().file().stem().string();
    const auto folder = db::backupFolder(m_root, name, *mark);
    if (!makeFolder(folder)) {
        tellFailed(tr("No backup was made: the folder %1 cannot be written. See who may use it, or make room.")
                       .arg(QDir::toNativeSeparators(pathOf(folder))));
        return nullptr;
    }
    auto copy = m_session.startCopy(folder / db::backupName(name, *mark, nowOf(m_session)));
    if (copy) return std::move(*copy);
    // One of this very second is there already.
    if (copy.error().code != base::Code::Conflict) tellFailed(copy.error());
    return nullptr;
}

void BackupKeeper::makeNow(bool isAsked) {
    if (!isDue(isAsked)) return;
    if (auto copy = started()) m_task.start(std::move(copy), [this](auto outcome) { keep(std::move(outcome)); });
}

void BackupKeeper::finish() {
    m_clock.stop();
    m_task.stop();
    if (isDue(false)) {
        if (std::shared_ptr<db::BookCopy> copy = started()) {
            const auto whole = copy->step(-1);
            if (whole && *whole)
                keep({copy, copy->verify()});
            else if (!whole)
                tellFailed(whole.error());
        }
    }
    m_second.wait();
}

bool BackupKeeper::keep(CopyTask::Outcome outcome) {
    const auto& report = outcome.report;
    if (!report) {
        tellFailed(report.error());
        return false;
    }
    if (!report->damage.empty()) {
        tellFailed(tr("No backup was made, because this book is damaged; the earlier backups are kept. %1")
                       .arg(words::sentence(report->damage.front())));
        return false;
    }
    if (const auto done = outcome.copy->commit(); !done) {
        tellFailed(done.error());
        return false;
    }
    const auto file = outcome.copy->target();
    db::removeBackups(db::outdatedAmong(db::backupsIn(file.parent_path()), nowOf(m_session)));
    session::save(session::kBackupTrouble, QString());
    copyToSecondPlace(file);
    Q_EMIT made(pathOf(file));
    return true;
}

void BackupKeeper::tellFailed(const QString& sentence) {
    // Whoever closes the window does not see it any more: it is said at the next start.
    session::save(session::kBackupTrouble, sentence);
    Q_EMIT failed(sentence);
}

void BackupKeeper::tellFailed(const base::Error& error) {
    tellFailed(tr("No backup was made; the earlier ones are kept. %1").arg(words::sentence(error)));
}

db::BackupPlaces backupPlaces() { return {backupRoot(), BackupKeeper::secondPlace()}; }

fs::path BackupKeeper::secondPlace() { return session::kept(session::kSecondPlace).toStdString(); }

void BackupKeeper::setSecondPlace(const QString& folder) {
    session::save(session::kSecondPlace, folder);
    session::save(session::kSecondPlaceSeen, QDate::currentDate().toString(Qt::ISODate));
}

std::optional<QDate> BackupKeeper::secondPlaceMissingSince(QDate today) {
    const auto place = secondPlace();
    std::error_code error;
    if (place.empty() || fs::is_directory(place, error)) return std::nullopt;
    const auto seen = QDate::fromString(session::kept(session::kSecondPlaceSeen), Qt::ISODate);
    if (seen.isValid() && seen.daysTo(today) < kReminderDays) return std::nullopt;
    return seen.isValid() ? seen : today;
}

void BackupKeeper::copyToSecondPlace(const fs::path& backup) {
    const auto root = secondPlace();
    std::error_code error;
    // The place itself is not made: where its disk is away, that would fill the folder it is mounted on.
    if (root.empty() || !fs::is_directory(root, error)) return;
    session::save(session::kSecondPlaceSeen, QDate::currentDate().toString(Qt::ISODate));
    const auto folder = folderIn(root, backup);
    const auto now = nowOf(m_session);
    m_second.ask(
        [backup, folder, now](std::stop_token stop) -> base::Done {
            makeFolder(folder);
            auto done = db::Book::restore(backup, folder / backup.filename(), {std::move(stop), {}});
            if (done) db::removeBackups(db::outdatedAmong(db::backupsIn(folder), now));
            return done;
        },
        [this](const base::Done& done) {
            if (!done)
                Q_EMIT failed(
                    tr("The backup was made here, but not in the second place. %1").arg(words::sentence(done.error())));
        });
}

std::int64_t BackupKeeper::roomMissing() const {
    const auto& file = m_session.book().file();
    std::error_code error;
    const auto size = static_cast<std::int64_t>(fs::file_size(file, error));
    if (error) return 0;
    const auto wanted = std::max(kLeastRoom, 5 * size);
    std::int64_t missing = 0;
    for (auto place : {file.parent_path(), m_root}) {
        while (!fs::is_directory(place, error) && place.has_relative_path()) place = place.parent_path();
        const QStorageInfo disk(pathOf(place));
        if (disk.isValid() && disk.bytesAvailable() >= 0)
            missing = std::max(missing, wanted - static_cast<std::int64_t>(disk.bytesAvailable()));
    }
    return missing;
}

} // namespace sp::backups

#include "moc_backup_keeper.cpp"
