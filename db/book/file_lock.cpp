// SPDX-License-Identifier: MIT
#include "db/book/file_lock.h"

#include "db/db_error.h"

#include <QLockFile>
#include <QString>

#include <mutex>
#include <set>

namespace sp::db {

namespace fs = std::filesystem;

namespace {

// The one piece of state a process must share: which files it has open.
std::mutex openMutex;
std::set<FileKey> openHere;

} // namespace

bool FileLock::isOpenHere(const FileKey& key) {
    const std::lock_guard guard(openMutex);
    return openHere.contains(key);
}

FileLock::FileLock(const fs::path& file, const FileKey& key)
    : m_key(key) {
    const std::string name = file.filename().string();
    {
        const std::lock_guard guard(openMutex);
        if (!openHere.insert(key).second) throwError(Fault::OpenHere, file.string(), name);
    }
    const fs::path lockFile(file.string() + ".lock");
    std::error_code ignored;
    const bool wasThere = fs::exists(lockFile, ignored);
    m_lock = std::make_unique<QLockFile>(QString::fromStdString(lockFile.string()));
    m_lock->setStaleLockTime(0);
    if (m_lock->tryLock(0)) {
        m_wasLeftBehind = wasThere;
        return;
    }
    if (m_lock->error() != QLockFile::LockFailedError) {
        m_obstacle = base::makeError(Fault::NoLockInFolder, file.string(), name);
        return;
    }
    qint64 process = 0;
    QString host;
    QString program;
    m_obstacle =
        m_lock->getLockInfo(&process, &host, &program)
            ? base::makeError(Fault::HeldBy, file.string(), name, program.toStdString(), host.toStdString(), process)
            : base::makeError(Fault::HeldElsewhere, file.string(), name);
}

FileLock::~FileLock() {
    m_lock.reset();
    const std::lock_guard guard(openMutex);
    openHere.erase(m_key);
}

} // namespace sp::db
