// SPDX-License-Identifier: MIT
#include "tests/support/weak_disk.h"

#include "core/base/ensure.h"
#include "tests/support/temp_folder.h"

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace sp::test {

namespace {

WatchedDisk* watched = nullptr;

constexpr std::size_t kSector = 512;

} // namespace

Files filesIn(const std::filesystem::path& folder) {
    Files files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.is_regular_file()) files[entry.path().filename().string()] = bytesOf(entry.path());
    return files;
}

void putFiles(const std::filesystem::path& folder, const Files& files) {
    for (const auto& entry : std::filesystem::directory_iterator(folder)) std::filesystem::remove(entry.path());
    for (const auto& [name, bytes] : files) writeBytes(folder / name, bytes);
}

// ------------------------------------------------------------------------------------------------------- what is seen

WatchedDisk::WatchedDisk(const std::filesystem::path& folder, Keep keep)
    : m_folder(folder.string())
    , m_keep(keep) {
    base::ensure(watched == nullptr, "one disk is watched at a time");
    if (keep == Keep::Operations) m_before = filesIn(folder);
    for (const auto& [name, bytes] : m_before) m_files[name] = m_next++;
    watched = this;
}

WatchedDisk::~WatchedDisk() { watched = nullptr; }

int WatchedDisk::errorOfCall(Need need) {
    if (m_fault.error == 0 || (m_fault.error == ENOSPC && need != Need::Room)) return 0;
    const auto call = m_calls++;
    if (call < m_fault.call || (call > m_fault.call && !m_fault.isLasting)) return 0;
    ++m_failed;
    return m_fault.error;
}

bool WatchedDisk::sees(const char* path) const {
    const std::string_view asked(path);
    return asked.starts_with(m_folder) && (asked.size() == m_folder.size() || asked[m_folder.size()] == '/');
}

std::string WatchedDisk::nameOf(const char* path) const {
    const std::string_view asked(path);
    return std::string(asked.size() <= m_folder.size() + 1 ? std::string_view() : asked.substr(m_folder.size() + 1));
}

void WatchedDisk::opened(int handle, const char* path, bool wasMade, bool isEmptied) {
    const auto name = nameOf(path);
    if (name.empty()) {
        m_handles[handle] = kFolder;
        return;
    }
    auto found = m_files.find(name);
    if (wasMade || found == m_files.end()) {
        const int file = m_next++;
        found = m_files.insert_or_assign(name, file).first;
        if (m_keep == Keep::Operations) m_operations.push_back({DiskOperation::Kind::Make, file, name, {}, 0, {}});
    }
    m_handles[handle] = found->second;
    if (isEmptied && !wasMade) resized(handle, 0);
}

void WatchedDisk::wrote(int handle, std::int64_t at, const void* bytes, std::size_t size) {
    if (m_keep == Keep::Operations)
        m_operations.push_back({DiskOperation::Kind::Write,
                                m_handles.at(handle),
                                {},
                                {},
                                at,
                                std::string(static_cast<const char*>(bytes), size)});
}

void WatchedDisk::resized(int handle, std::int64_t size) {
    if (m_keep == Keep::Operations)
        m_operations.push_back({DiskOperation::Kind::Resize, m_handles.at(handle), {}, {}, size, {}});
}

void WatchedDisk::synced(int handle) {
    if (m_keep != Keep::Operations) return;
    const int file = m_handles.at(handle);
    const auto kind = file == kFolder ? DiskOperation::Kind::SyncFolder : DiskOperation::Kind::Sync;
    m_operations.push_back({kind, file, {}, {}, 0, {}});
}

void WatchedDisk::removed(const char* path) {
    const auto name = nameOf(path);
    if (m_keep == Keep::Operations)
        m_operations.push_back({DiskOperation::Kind::Remove, m_files[name], name, {}, 0, {}});
    m_files.erase(name);
}

void WatchedDisk::renamed(const char* from, const char* to) {
    const auto name = nameOf(from);
    const int file = m_files[name];
    m_files.erase(name);
    m_files[nameOf(to)] = file;
    if (m_keep == Keep::Operations)
        m_operations.push_back({DiskOperation::Kind::Rename, file, name, nameOf(to), 0, {}});
}

// -------------------------------------------------------------------------------------------------- what may be left

namespace {

using Kind = DiskOperation::Kind;

void apply(std::string& content, const DiskOperation& operation, std::size_t from, std::size_t size,
           std::string_view bytes) {
    const auto at = static_cast<std::size_t>(operation.at) + from;
    if (content.size() < at + size) content.resize(at + size, '\0');
    content.replace(at, size, bytes);
}

void apply(std::string& content, const DiskOperation& operation) {
    if (operation.kind == Kind::Resize)
        content.resize(static_cast<std::size_t>(operation.at), '\0');
    else
        apply(content, operation, 0, operation.bytes.size(), operation.bytes);
}

void apply(std::map<std::string, int>& names, const DiskOperation& operation) {
    if (operation.kind == Kind::Make) {
        names[operation.name] = operation.file;
        return;
    }
    names.erase(operation.name);
    if (operation.kind == Kind::Rename) names[operation.target] = operation.file;
}

bool heads(std::mt19937_64& random) { return (random() & 1U) != 0; }

/// Sector by sector, as the disk counts them.
void tear(std::string& content, const DiskOperation& operation, bool withGarbage, std::mt19937_64& random) {
    const auto start = static_cast<std::size_t>(operation.at);
    std::size_t from = 0;
    while (from < operation.bytes.size()) {
        const auto size = std::min(kSector - (start + from) % kSector, operation.bytes.size() - from);
        if (heads(random)) {
            apply(content, operation, from, size, std::string_view(operation.bytes).substr(from, size));
        } else if (withGarbage && heads(random)) {
            std::string anything(size, '\0');
            for (auto& byte : anything) byte = static_cast<char>(random());
            apply(content, operation, from, size, anything);
        }
        from += size;
    }
}

std::size_t upTo(std::size_t most, std::mt19937_64& random) {
    return std::uniform_int_distribution<std::size_t>(0, most)(random);
}

} // namespace

PowerCut::PowerCut(Files before, std::vector<DiskOperation> operations, Lie lie)
    : m_operations(std::move(operations))
    , m_lie(lie) {
    int file = 0;
    for (auto& [name, bytes] : before) {
        m_names[name] = file;
        m_contents[file++].kept = std::move(bytes);
    }
}

void PowerCut::advance() {
    const auto& operation = m_operations.at(m_at++);
    switch (operation.kind) {
    case Kind::Make:
    case Kind::Remove:
    case Kind::Rename: m_openNames.push_back(&operation); break;
    case Kind::Write:
    case Kind::Resize: m_contents[operation.file].open.push_back(&operation); break;
    case Kind::Sync: {
        if (m_lie == Lie::OfFiles) break;
        auto& content = m_contents[operation.file];
        for (const auto* done : content.open) apply(content.kept, *done);
        content.open.clear();
        break;
    }
    case Kind::SyncFolder:
        if (m_lie != Lie::None) break;
        for (const auto* done : m_openNames) apply(m_names, *done);
        m_openNames.clear();
        break;
    }
}

Files PowerCut::files(Damage damage, std::mt19937_64& random) const {
    auto names = m_names;
    const auto named = damage == Damage::Nothing      ? 0
                       : damage == Damage::Everything ? m_openNames.size()
                                                      : upTo(m_openNames.size(), random);
    for (std::size_t i = 0; i < named; ++i) apply(names, *m_openNames[i]);
    Files files;
    for (const auto& [name, file] : names) {
        const auto found = m_contents.find(file);
        if (found == m_contents.end()) {
            files[name];
            continue;
        }
        const auto& open = found->second.open;
        auto content = found->second.kept;
        const auto prefix = damage == Damage::Prefix ? upTo(open.size(), random) : open.size();
        for (std::size_t i = 0; damage != Damage::Nothing && i < prefix; ++i) {
            const bool isByParts = damage == Damage::Torn || damage == Damage::Garbage;
            if (isByParts && open[i]->kind == Kind::Write)
                tear(content, *open[i], damage == Damage::Garbage, random);
            else if ((damage != Damage::Subset && !isByParts) || heads(random))
                apply(content, *open[i]);
        }
        files[name] = std::move(content);
    }
    return files;
}

} // namespace sp::test

// ---------------------------------------------------------------------------------------------- the library's own
// calls

namespace {

using sp::test::watched;
using sp::test::WatchedDisk;
using Need = WatchedDisk::Need;

/// Whether the call fails; errno says why.
bool fails(Need need) {
    const int error = watched->errorOfCall(need);
    if (error != 0) errno = error;
    return error != 0;
}

bool isThere(const char* path) {
    struct stat facts {};
    return ::lstat(path, &facts) == 0;
}

int openFile(const char* path, int flags, mode_t mode) {
    const auto open = [&] { return static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path, flags, mode)); };
    if (watched == nullptr || !watched->sees(path)) return open();
    const bool isMade = (flags & O_CREAT) != 0 && !isThere(path);
    if (fails(isMade ? Need::Room : Need::Access)) return -1;
    const int handle = open();
    if (handle >= 0) watched->opened(handle, path, isMade, (flags & O_TRUNC) != 0);
    return handle;
}

mode_t modeIn(int flags, std::va_list more) { return (flags & O_CREAT) != 0 ? va_arg(more, mode_t) : 0; }

bool isWatched(int handle) { return watched != nullptr && watched->knows(handle); }

ssize_t writeAt(int handle, const void* bytes, std::size_t size, off_t at) {
    if (!isWatched(handle)) return ::syscall(SYS_pwrite64, handle, bytes, size, at);
    if (fails(Need::Room)) return -1;
    const auto written = ::syscall(SYS_pwrite64, handle, bytes, size, at);
    if (written > 0) watched->wrote(handle, at, bytes, static_cast<std::size_t>(written));
    return written;
}

ssize_t readAt(int handle, void* bytes, std::size_t size, off_t at) {
    if (isWatched(handle) && fails(Need::Access)) return -1;
    return ::syscall(SYS_pread64, handle, bytes, size, at);
}

int resize(int handle, off_t size) {
    if (!isWatched(handle)) return static_cast<int>(::syscall(SYS_ftruncate, handle, size));
    if (fails(Need::Access)) return -1;
    const auto done = static_cast<int>(::syscall(SYS_ftruncate, handle, size));
    if (done == 0) watched->resized(handle, size);
    return done;
}

int sync(int handle, long call) {
    if (!isWatched(handle)) return static_cast<int>(::syscall(call, handle));
    if (fails(Need::Room)) return -1;
    watched->synced(handle);
    return 0;
}

int removeFile(const char* path) {
    const auto remove = [&] { return static_cast<int>(::syscall(SYS_unlink, path)); };
    if (watched == nullptr || !watched->sees(path)) return remove();
    if (fails(Need::Access)) return -1;
    const int done = remove();
    if (done == 0) watched->removed(path);
    return done;
}

int renameFile(const char* from, const char* to, unsigned flags) {
    const auto rename = [&] { return static_cast<int>(::syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, flags)); };
    if (watched == nullptr || !watched->sees(from)) return rename();
    if (fails(Need::Access)) return -1;
    const int done = rename();
    if (done == 0) watched->renamed(from, to);
    return done;
}

} // namespace

extern "C" {

int open(const char* path, int flags, ...) {
    std::va_list more;
    va_start(more, flags);
    const auto mode = modeIn(flags, more);
    va_end(more);
    return openFile(path, flags, mode);
}

int open64(const char* path, int flags, ...) {
    std::va_list more;
    va_start(more, flags);
    const auto mode = modeIn(flags, more);
    va_end(more);
    return openFile(path, flags, mode);
}

int close(int handle) {
    if (isWatched(handle)) watched->closed(handle);
    return static_cast<int>(::syscall(SYS_close, handle));
}

ssize_t write(int handle, const void* bytes, std::size_t size) {
    if (!isWatched(handle)) return ::syscall(SYS_write, handle, bytes, size);
    if (fails(Need::Room)) return -1;
    const auto written = ::syscall(SYS_write, handle, bytes, size);
    if (written > 0)
        watched->wrote(handle, ::lseek(handle, 0, SEEK_CUR) - written, bytes, static_cast<std::size_t>(written));
    return written;
}

ssize_t pwrite(int handle, const void* bytes, std::size_t size, off_t at) { return writeAt(handle, bytes, size, at); }
ssize_t pwrite64(int handle, const void* bytes, std::size_t size, off64_t at) {
    return writeAt(handle, bytes, size, at);
}

ssize_t read(int handle, void* bytes, std::size_t size) {
    if (isWatched(handle) && fails(Need::Access)) return -1;
    return ::syscall(SYS_read, handle, bytes, size);
}

ssize_t pread(int handle, void* bytes, std::size_t size, off_t at) { return readAt(handle, bytes, size, at); }
ssize_t pread64(int handle, void* bytes, std::size_t size, off64_t at) { return readAt(handle, bytes, size, at); }

int ftruncate(int handle, off_t size) noexcept { return resize(handle, size); }
int ftruncate64(int handle, off64_t size) noexcept { return resize(handle, size); }
int fsync(int handle) { return sync(handle, SYS_fsync); }
int fdatasync(int handle) { return sync(handle, SYS_fdatasync); }
int unlink(const char* path) noexcept { return removeFile(path); }
int rename(const char* from, const char* to) noexcept { return renameFile(from, to, 0); }

int renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) noexcept {
    if (from[0] != '/') return static_cast<int>(::syscall(SYS_renameat2, fromFolder, from, toFolder, to, flags));
    return renameFile(from, to, flags);
}

int remove(const char* path) noexcept {
    const int done = removeFile(path);
    return done != 0 && errno == EISDIR ? ::rmdir(path) : done;
}

} // extern "C"
