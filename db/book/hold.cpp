// SPDX-License-Identifier: MIT
#include "db/book/hold.h"

#include "db/refusal.h"

#include <QLockFile>
#include <QString>
#include <fmt/format.h>

#include <mutex>
#include <set>

namespace sp::db {

namespace fs = std::filesystem;

namespace {

// The one piece of state a process must share: which files it has open.
std::mutex openMutex;
std::set<FileKey> openHere;

} // namespace

bool Hold::isOpenHere(const FileKey& key) {
    const std::lock_guard guard(openMutex);
    return openHere.contains(key);
}

Hold::Hold(const fs::path& file, const FileKey& key)
    : m_key(key) {
    const std::string name = file.filename().string();
    {
        const std::lock_guard guard(openMutex);
        if (!openHere.insert(key).second)
            refuse(base::Code::Busy, file.string(), fmt::format("“{}” is open in this window already.", name));
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
        m_obstacle = fmt::format("“{}” is open for reading only, because nothing can be written in its folder; "
                                 "move it to a folder of your own to change it.",
                                 name);
        return;
    }
    qint64 process = 0;
    QString host;
    QString program;
    m_obstacle = m_lock->getLockInfo(&process, &host, &program)
                     ? fmt::format("“{}” is open for reading only, because {} on {} (process {}) has it open; "
                                   "close it there to change it here.",
                                   name, program.toStdString(), host.toStdString(), process)
                     : fmt::format("“{}” is open for reading only, because another program has it open; close it "
                                   "there to change it here.",
                                   name);
}

Hold::~Hold() {
    m_lock.reset();
    const std::lock_guard guard(openMutex);
    openHere.erase(m_key);
}

} // namespace sp::db
