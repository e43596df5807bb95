// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <utility>

namespace sp::db {

/// Which file it is, whatever it is called: device and inode.
using FileKey = std::pair<std::uint64_t, std::uint64_t>;

struct FileFacts {
    FileKey key;
    std::uint64_t size = 0;
    std::uint64_t names = 1; ///< hard links
    bool canWrite = false;   ///< the file and its folder, by this user
    std::string share;       ///< the kind of network folder it lies in, else empty
};

// All of this throws DbError, which names the file.

/// The existing regular file behind `file`, links resolved. Missing, or Foreign when it is something else.
std::filesystem::path resolved(const std::filesystem::path& file);
/// The path of a file to be made: its folder resolved. Missing when there is no such folder, Conflict when there is
/// something of that name.
std::filesystem::path resolvedNew(const std::filesystem::path& file);
FileFacts factsOf(const std::filesystem::path& file);

/// The kind of network file system by the number that statfs gives (linux/magic.h); empty for others.
std::string shareNamed(std::uint64_t fileSystemType);

/// A file that is being made for `target`, under a name beside it; removed with its journal at the end of its life.
class TempFile {
  public:
    explicit TempFile(const std::filesystem::path& target);
    ~TempFile();
    TempFile(const TempFile&) = delete;
    TempFile& operator=(const TempFile&) = delete;

    const std::filesystem::path& file() const { return m_file; }
    /// Makes the file; what is refused meanwhile names the target, which is what was asked for.
    void make(const std::function<void()>& work) const;
    /// Gives the finished file the target's name, never over another one, and makes both durable. Conflict when the
    /// name is taken.
    void commit() const;

  private:
    std::filesystem::path m_target;
    std::filesystem::path m_file;
};

} // namespace sp::db
