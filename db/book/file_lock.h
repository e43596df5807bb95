// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"
#include "db/book/files.h"

#include <filesystem>
#include <optional>

namespace sp::db {

/// That this program has a book open. A book is open once in a process, found by device and inode. Towards other
/// processes a file NAME.jobbook.lock beside the book says who holds it. It is held as long as the system keeps it
/// locked (flock) for a running program; one that nobody holds, whatever stands in it, is taken over, unless it names
/// another computer, whose programs cannot be seen from here.
class FileLock {
  public:
    /// Throws Busy when this process has the book open already.
    FileLock(const std::filesystem::path& file, const FileKey& key);
    ~FileLock();
    FileLock(const FileLock&) = delete;
    FileLock& operator=(const FileLock&) = delete;

    /// Nothing when the book is ours to write; else who holds it or why no lock could be made.
    const std::optional<base::Error>& obstacle() const { return m_obstacle; }
    /// The lock of a program that died was taken over: the book was not closed properly.
    bool wasLeftBehind() const { return m_wasLeftBehind; }

    static bool isOpenHere(const FileKey& key);

  private:
    void take(const std::filesystem::path& file);
    /// False when it has to be tried again.
    bool tryToTake(const std::filesystem::path& file);
    bool makeOwn(int handle);
    bool meetAnother(const std::filesystem::path& file, int handle);

    FileKey m_key;
    std::filesystem::path m_lockFile;
    int m_handle = -1; ///< of the lock file, while it is ours
    std::optional<base::Error> m_obstacle;
    bool m_wasLeftBehind = false;
};

} // namespace sp::db
