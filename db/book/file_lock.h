// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"
#include "db/book/files.h"

#include <filesystem>
#include <memory>
#include <optional>

class QLockFile;

namespace sp::db {

/// That this program has a book open. A book is open once in a process, found by device and inode. Towards other
/// processes a file NAME.jobbook.lock beside the book says who holds it; that of a program that has died is taken
/// over.
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
    FileKey m_key;
    std::unique_ptr<QLockFile> m_lock;
    std::optional<base::Error> m_obstacle;
    bool m_wasLeftBehind = false;
};

} // namespace sp::db
