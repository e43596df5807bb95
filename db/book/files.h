// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/if_there.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
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
    std::string synced;      ///< the folder above it that is kept alike on several computers, else empty
};

// All of this throws DbError, which names the file.

/// What the system says of a file (errno).
[[noreturn]] void throwSystemError(const std::filesystem::path& file, int error);

/// The existing regular file behind `file`, links resolved. Missing, or Foreign when it is something else.
std::filesystem::path resolved(const std::filesystem::path& file);
/// The path of a file to be made: its folder resolved. Missing when there is no such folder, Conflict when there is
/// something of that name.
std::filesystem::path resolvedNew(const std::filesystem::path& file);
FileFacts factsOf(const std::filesystem::path& file);

/// A file as it was left: which one it is and when it was written last (ns, by the file system's clock).
struct FileState {
    FileKey key;
    std::uint64_t size = 0;
    std::int64_t written = 0;
};
/// Nothing where there is no such file. Does not open it.
std::optional<FileState> stateOf(const std::filesystem::path& file);
/// Makes the names in a file's folder durable; false when the disk does not.
bool syncFolderOf(const std::filesystem::path& file);

/// The kind of network file system by the number that statfs gives (linux/magic.h); empty for others.
std::string shareNamed(std::uint64_t fileSystemType);
/// The kind of a folder that a program of its own serves (FUSE), from the system's table of mounts (proc(5),
/// mountinfo); empty for one on a disk, and for those that are one: fuseblk, an overlay of a container.
std::string servedBy(std::string_view mounts, const std::filesystem::path& file);
/// The folder above `file` that a program keeps alike on several computers: by the names such programs give it and the
/// files they mark it with. From memory; empty where there is none.
std::string syncedFolderAbove(const std::filesystem::path& file);

/// A folder that is its owner's alone, made where it is not there; and those above it.
void makeOwnFolder(const std::filesystem::path& folder);
/// Writes nothing but zeros over a file, as far as the disk lets it be said. Never throws.
void overwrite(const std::filesystem::path& file, std::uint64_t size);
/// Removes what programs that died left unfinished in a folder, ours or another's: see TempFile. Never throws.
void removeLeftovers(const std::filesystem::path& folder);

/// What is being made for `target` under a name beside it, or was left unfinished; see TempFile. Never throws.
std::vector<std::filesystem::path> unfinishedOf(const std::filesystem::path& target);

/// Who may read a file that is made. A book holds customers and certificates: it is its owner's alone.
enum class Readers { OwnerAlone, AsUsual };
/// A file that is being made for `target`, empty at first, under a name beside it; removed with its journal at the end
/// of its life.
class TempFile {
  public:
    explicit TempFile(const std::filesystem::path& target, Readers readers = Readers::OwnerAlone);
    ~TempFile();
    TempFile(const TempFile&) = delete;
    TempFile& operator=(const TempFile&) = delete;

    const std::filesystem::path& file() const { return m_file; }
    /// Makes the file; what is refused meanwhile names the target, which is what was asked for.
    void make(const std::function<void()>& work) const;
    /// Writes at its end. Full, or what the disk says.
    void write(std::string_view bytes) const;
    /// Gives the finished file the target's name and makes both durable. Conflict when the name is taken and may not be
    /// replaced; what is replaced is replaced at once.
    void commit(IfThere ifThere = IfThere::Refuse) const;

  private:
    std::filesystem::path m_target;
    std::filesystem::path m_file;
};

} // namespace sp::db
