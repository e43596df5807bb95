// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <map>
#include <random>
#include <string>
#include <vector>

// A disk that fails, and one whose power goes. It stands where the C library's own calls on files stand, so that it
// sees what SQLite does and what the program does beside SQLite, the renaming and syncing of new files among it. A
// program that links this has these calls replaced; without a WatchedDisk they do what they always do.
namespace sp::test {

/// The files of a folder by their name in it, with their bytes.
using Files = std::map<std::string, std::string>;

Files filesIn(const std::filesystem::path& folder);
void putFiles(const std::filesystem::path& folder, const Files& files);

/// What was done to the files of a folder.
struct DiskOperation {
    enum class Kind { Make, Write, Resize, Sync, Remove, Rename, SyncFolder };
    Kind kind;
    int file = -1;       ///< which, by a number that renaming does not change; none for SyncFolder
    std::string name;    ///< of Make, Remove and Rename
    std::string target;  ///< of Rename
    std::int64_t at = 0; ///< of Write: from which byte; of Resize: the new length
    std::string bytes;   ///< of Write
};

/// How a call fails.
struct DiskFault {
    std::size_t call = 0;   ///< the first that fails, from 0
    bool isLasting = false; ///< so do all after it, until `heal`
    int error = 0; ///< ENOSPC fails what needs room alone, anything else whatever reads, writes, makes or removes
};

/// Watches a folder without folders in it, from its making to its end; one at a time, and what one thread does. Nothing
/// is really synced meanwhile: the disk of the machine the test runs on does not matter.
class WatchedDisk {
  public:
    enum class Keep { Operations, Nothing };
    explicit WatchedDisk(const std::filesystem::path& folder, Keep keep = Keep::Nothing);
    ~WatchedDisk();
    WatchedDisk(const WatchedDisk&) = delete;
    WatchedDisk& operator=(const WatchedDisk&) = delete;

    const Files& before() const { return m_before; }
    const std::vector<DiskOperation>& operations() const { return m_operations; }

    void fail(const DiskFault& fault) { m_fault = fault, m_calls = 0, m_failed = 0; }
    void heal() { m_fault.error = 0; }
    /// Calls that the fault could have hit, since it was set; and those that it did.
    std::size_t calls() const { return m_calls; }
    std::size_t failed() const { return m_failed; }

    // What the replaced calls ask and tell.
    enum class Need { Room, Access };
    int errorOfCall(Need need);
    bool sees(const char* path) const;
    void opened(int handle, const char* path, bool wasMade, bool isEmptied);
    void closed(int handle) { m_handles.erase(handle); }
    bool knows(int handle) const { return m_handles.contains(handle); }
    void wrote(int handle, std::int64_t at, const void* bytes, std::size_t size);
    void resized(int handle, std::int64_t size);
    void synced(int handle);
    void removed(const char* path);
    void renamed(const char* from, const char* to);

  private:
    static constexpr int kFolder = -1;
    std::string nameOf(const char* path) const;

    std::string m_folder;
    Keep m_keep;
    Files m_before;
    std::vector<DiskOperation> m_operations;
    std::map<std::string, int> m_files;
    std::map<int, int> m_handles;
    int m_next = 0;
    DiskFault m_fault;
    std::size_t m_calls = 0;
    std::size_t m_failed = 0;
};

/// What a disk may hold that lost its power before an operation was begun: what was synced, and of the rest as much as
/// the damage says. Names are kept in the order in which they were given and taken, up to some point; the bytes of a
/// file, in any order. Goes through the operations one way.
class PowerCut {
  public:
    enum class Damage {
        Nothing,    ///< all that was not synced is lost
        Everything, ///< nothing is lost
        Prefix,     ///< all after some operation is lost
        Subset,     ///< some operations are lost
        Torn,       ///< some sectors of 512 bytes are lost
        Garbage     ///< and of those that are, some hold anything
    };
    static constexpr int kDamages = 6;
    /// What of syncing the disk only pretends; the controls.
    enum class Lie { None, OfFiles, OfFolders };

    PowerCut(Files before, std::vector<DiskOperation> operations, Lie lie = Lie::None);

    std::size_t size() const { return m_operations.size(); }
    std::size_t at() const { return m_at; }
    /// Does the next operation.
    void advance();
    Files files(Damage damage, std::mt19937_64& random) const;

  private:
    struct Content {
        std::string kept;
        std::vector<const DiskOperation*> open; ///< not synced
    };

    std::vector<DiskOperation> m_operations;
    Lie m_lie;
    std::size_t m_at = 0;
    std::map<std::string, int> m_names;
    std::map<int, Content> m_contents;
    std::vector<const DiskOperation*> m_openNames;
};

} // namespace sp::test
