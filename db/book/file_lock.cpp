// SPDX-License-Identifier: MIT
#include "db/book/file_lock.h"

#include "db/db_error.h"

#include <QByteArray>
#include <QString>
#include <QSysInfo>

#include <fmt/format.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <fcntl.h>
#include <mutex>
#include <set>
#include <sys/file.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace sp::db {

namespace fs = std::filesystem;

namespace {

// The one piece of state a process must share: which files it has open.
std::mutex openMutex;
std::set<FileKey> openHere;

/// Who holds a book, as the lock file has it: a line each for process, program, computer and the computer's number,
/// which is what QLockFile writes and earlier programs read.
struct Holder {
    std::int64_t process = 0;
    std::string program;
    std::string computer;
    std::string machine;

    /// Whether it is told at all.
    explicit operator bool() const { return process > 0; }
    bool isOfThisComputer() const;
};

std::string machineHere() { return QSysInfo::machineUniqueId().toStdString(); }

std::string computerHere() { return QSysInfo::machineHostName().toStdString(); }

bool Holder::isOfThisComputer() const {
    // A computer can be given another name while a lock lies about; its number stays.
    if (!machine.empty() && !machineHere().empty()) return machine == machineHere();
    return computer.empty() || computer == computerHere();
}

std::string programHere() {
    std::error_code ignored;
    const auto self = fs::read_symlink("/proc/self/exe", ignored);
    return self.empty() ? "stonepenny" : self.filename().string();
}

Holder holderIn(int handle) {
    std::array<char, 1024> bytes{};
    const auto size = ::pread(handle, bytes.data(), bytes.size(), 0);
    std::string_view rest(bytes.data(), size > 0 ? static_cast<std::size_t>(size) : 0);
    const auto line = [&]() -> std::string {
        const auto end = rest.find('\n');
        if (end == std::string_view::npos) return {}; // cut off
        std::string found(rest.substr(0, end));
        rest.remove_prefix(end + 1);
        return found;
    };
    Holder holder;
    const auto process = line();
    const auto* end = process.data() + process.size();
    if (std::from_chars(process.data(), end, holder.process).ptr != end || holder.process <= 0) return {};
    holder.program = line();
    holder.computer = line();
    holder.machine = line();
    return holder;
}

bool isStillThere(int handle, const fs::path& path) {
    struct stat ours {};
    struct stat there {};
    return ::fstat(handle, &ours) == 0 && ::lstat(path.c_str(), &there) == 0 && ours.st_dev == there.st_dev &&
           ours.st_ino == there.st_ino;
}

} // namespace

bool FileLock::isOpenHere(const FileKey& key) {
    const std::lock_guard guard(openMutex);
    return openHere.contains(key);
}

FileLock::FileLock(const fs::path& file, const FileKey& key)
    : m_key(key)
    , m_lockFile(file.string() + ".lock") {
    const std::string name = file.filename().string();
    {
        const std::lock_guard guard(openMutex);
        if (!openHere.insert(key).second) throwError(Fault::OpenHere, file.string(), name);
    }
    take(file);
}

void FileLock::take(const fs::path& file) {
    // Another program may be just making, telling or giving up its lock; that takes it no time.
    for (int tries = 0; tries < 50; ++tries) {
        if (tryToTake(file)) return;
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
    }
    m_obstacle = base::makeError(Fault::HeldElsewhere, file.string(), file.filename().string());
}

bool FileLock::tryToTake(const fs::path& file) {
    constexpr int kAnyway = O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK;
    const int made = ::open(m_lockFile.c_str(), O_RDWR | O_CREAT | O_EXCL | kAnyway, 0644);
    if (made >= 0) return makeOwn(made);
    const auto obstacle = [&](Fault fault) {
        m_obstacle = base::makeError(fault, file.string(), file.filename().string());
        return true;
    };
    if (errno != EEXIST) return obstacle(Fault::NoLockInFolder);
    const int there = ::open(m_lockFile.c_str(), O_RDONLY | kAnyway);
    if (there < 0) {
        if (errno == ENOENT) return false;
        return obstacle(errno == EACCES ? Fault::HeldElsewhere : Fault::NoLockInFolder);
    }
    const bool isSettled = meetAnother(file, there);
    ::close(there);
    return isSettled;
}

bool FileLock::makeOwn(int handle) {
    const bool isLocked = ::flock(handle, LOCK_EX | LOCK_NB) == 0;
    // Between making and locking it somebody may have taken it for one that was left behind.
    if (!isLocked || !isStillThere(handle, m_lockFile)) {
        ::close(handle);
        return false;
    }
    m_handle = handle;
    const auto told = fmt::format("{}\n{}\n{}\n{}\n", ::getpid(), programHere(), computerHere(), machineHere());
    // On a full disk nothing is told; it is held all the same.
    [[maybe_unused]] const auto written = ::pwrite(handle, told.data(), told.size(), 0);
    return true;
}

bool FileLock::meetAnother(const fs::path& file, int handle) {
    const auto name = file.filename().string();
    const bool isHeld = ::flock(handle, LOCK_EX | LOCK_NB) != 0;
    if (isHeld && errno != EWOULDBLOCK) {
        m_obstacle = base::makeError(Fault::NoLockInFolder, file.string(), name);
        return true;
    }
    if (!isStillThere(handle, m_lockFile)) return false;
    const auto holder = holderIn(handle);
    if (holder && (isHeld || !holder.isOfThisComputer())) {
        m_obstacle =
            base::makeError(Fault::HeldBy, file.string(), name, holder.program, holder.computer, holder.process);
        return true;
    }
    if (isHeld) return false; // who it is will be told in a moment
    m_wasLeftBehind = true;
    if (::unlink(m_lockFile.c_str()) == 0 || errno == ENOENT) return false;
    m_obstacle = base::makeError(Fault::NoLockInFolder, file.string(), name);
    return true;
}

FileLock::~FileLock() {
    if (m_handle >= 0) {
        if (isStillThere(m_handle, m_lockFile)) ::unlink(m_lockFile.c_str());
        ::close(m_handle);
    }
    const std::lock_guard guard(openMutex);
    openHere.erase(m_key);
}

} // namespace sp::db
