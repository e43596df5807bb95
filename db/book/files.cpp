// SPDX-License-Identifier: MIT
#include "db/book/files.h"

#include "db/db_error.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <linux/magic.h>
#include <sstream>
#include <sys/stat.h>
#include <sys/statfs.h>
#include <unistd.h>
#include <vector>

namespace sp::db {

namespace fs = std::filesystem;

namespace {

void sync(const fs::path& path, int flags) {
    const int handle = ::open(path.c_str(), flags | O_CLOEXEC);
    if (handle < 0) throwSystemError(path, errno);
    const int error = ::fsync(handle) == 0 ? 0 : errno;
    ::close(handle);
    if (error != 0) throwSystemError(path, error);
}

} // namespace

void throwSystemError(const fs::path& file, int error) {
    const std::string name = file.filename().string();
    if (error == ENOSPC || error == EDQUOT || error == EFBIG) throwError(Fault::DiskFull, file.string(), name);
    if (error == EACCES || error == EPERM || error == EROFS) throwError(Fault::NotUsableHere, file.string(), name);
    throwError(Fault::NotUsable, file.string(), name, std::strerror(error));
}

fs::path resolved(const fs::path& file) {
    std::error_code error;
    const fs::path path = fs::canonical(file, error);
    if (error == std::errc::permission_denied) throwError(Fault::NotReadable, file.string(), file.filename().string());
    if (error) throwError(Fault::NoSuchBook, file.string(), file.string());
    if (!fs::is_regular_file(path, error)) throwError(Fault::FolderOrDevice, file.string(), file.string());
    return path;
}

fs::path resolvedNew(const fs::path& file) {
    std::error_code error;
    const fs::path folder = fs::canonical(file.has_parent_path() ? file.parent_path() : fs::path("."), error);
    if (error || !fs::is_directory(folder, error) || !file.has_filename())
        throwError(Fault::NoSuchFolder, file.string(), file.parent_path().string());
    const fs::path path = folder / file.filename();
    if (fs::exists(fs::symlink_status(path, error)))
        throwError(Fault::FileExists, file.string(), file.filename().string());
    return path;
}

std::string shareNamed(std::uint64_t type) {
    constexpr std::uint64_t kCifs = 0xFF534D42; // not in linux/magic.h before 5.19
    if (type == NFS_SUPER_MAGIC) return "NFS";
    if (type == SMB_SUPER_MAGIC || type == kCifs || type == 0xFE534D42) return "SMB";
    if (type == AFS_SUPER_MAGIC || type == AFS_FS_MAGIC) return "AFS";
    if (type == CODA_SUPER_MAGIC) return "Coda";
    return {};
}

namespace {

/// "\040" for a space, and so on.
std::string unescaped(std::string_view field) {
    std::string text;
    for (std::size_t i = 0; i < field.size(); ++i) {
        const auto digits = field.substr(i + 1, 3);
        if (field[i] == '\\' && digits.size() == 3) {
            int code = 0;
            std::from_chars(digits.data(), digits.data() + 3, code, 8);
            text += static_cast<char>(code);
            i += 3;
        } else {
            text += field[i];
        }
    }
    return text;
}

bool isAbove(const std::string& folder, const std::string& file) {
    return file.starts_with(folder) &&
           (folder.ends_with('/') || file.size() == folder.size() || file[folder.size()] == '/');
}

std::string mountsNow() {
    std::ifstream in("/proc/self/mountinfo");
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

} // namespace

std::string servedBy(std::string_view mounts, const fs::path& file) {
    std::string nearest;
    std::string kind;
    while (!mounts.empty()) {
        const auto end = std::min(mounts.find('\n'), mounts.size());
        std::vector<std::string> fields;
        std::istringstream line{std::string(mounts.substr(0, end))};
        for (std::string field; line >> field;) fields.push_back(field);
        mounts.remove_prefix(std::min(end + 1, mounts.size()));
        // ID, parent, device, root, mount point, options, optional fields, "-", kind, …
        const auto dash = std::find(fields.begin(), fields.end(), "-");
        if (fields.size() < 5 || fields.end() - dash < 2) continue;
        const auto point = unescaped(fields[4]);
        if (!isAbove(point, file.string()) || point.size() < nearest.size()) continue;
        nearest = point; // a later one of that place lies over the earlier
        kind = dash[1];
    }
    constexpr std::string_view kServed = "fuse.";
    if (kind == "fuse") return "FUSE";
    if (!kind.starts_with(kServed) || kind == "fuse.fuse-overlayfs") return {};
    return kind.substr(kServed.size());
}

std::string syncedFolderAbove(const fs::path& file) {
    constexpr std::array kNames{"Dropbox",      "OneDrive", "Nextcloud",   "ownCloud", "Google Drive", "GoogleDrive",
                                "iCloud Drive", "MEGA",     "pCloudDrive", "Seafile",  "Syncthing"};
    constexpr std::array kMarks{".dropbox", ".stfolder", ".owncloudsync.log", ".sync.ffs_db", ".nextcloudsync.log"};
    std::error_code ignored;
    for (auto folder = file.parent_path(); folder.has_relative_path(); folder = folder.parent_path()) {
        const auto name = folder.filename().string();
        const auto isNamed = [&](std::string_view known) {
            return name.starts_with(known) && (name.size() == known.size() || name[known.size()] == ' ');
        };
        if (std::ranges::any_of(kNames, isNamed)) return folder.string();
        for (const auto* mark : kMarks)
            if (fs::exists(folder / mark, ignored)) return folder.string();
    }
    return {};
}

FileFacts factsOf(const fs::path& file) {
    struct stat facts {};
    if (::stat(file.c_str(), &facts) != 0) throwSystemError(file, errno);
    struct statfs system {};
    const bool isKnown = ::statfs(file.c_str(), &system) == 0;
    const auto type = static_cast<std::uint64_t>(static_cast<std::uint32_t>(system.f_type));
    return {.key = {facts.st_dev, facts.st_ino},
            .size = static_cast<std::uint64_t>(facts.st_size),
            .names = facts.st_nlink,
            .canWrite = ::access(file.c_str(), W_OK) == 0 && ::access(file.parent_path().c_str(), W_OK | X_OK) == 0,
            .share = isKnown && !shareNamed(type).empty() ? shareNamed(type) : servedBy(mountsNow(), file),
            .synced = syncedFolderAbove(file)};
}

std::optional<FileState> stateOf(const fs::path& file) {
    struct stat facts {};
    if (::stat(file.c_str(), &facts) != 0) return std::nullopt;
    return FileState{.key = {facts.st_dev, facts.st_ino},
                     .size = static_cast<std::uint64_t>(facts.st_size),
                     .written = facts.st_mtim.tv_sec * 1'000'000'000 + facts.st_mtim.tv_nsec};
}

bool syncFolderOf(const fs::path& file) {
    return catchToResult([&] { sync(file.parent_path(), O_RDONLY | O_DIRECTORY); }).has_value();
}

namespace {

constexpr std::string_view kUnfinished = ".unfinished-";

/// The program that was making the file of this name; 0 when it is not named as such a file.
pid_t makerOf(const std::string& name) {
    const auto at = name.rfind(kUnfinished);
    if (!name.starts_with('.') || at == std::string::npos) return 0;
    std::string_view digits = std::string_view(name).substr(at + kUnfinished.size());
    if (digits.ends_with("-journal")) digits.remove_suffix(std::string_view("-journal").size());
    pid_t process = 0;
    const auto* end = digits.data() + digits.size();
    return std::from_chars(digits.data(), end, process).ptr == end && process > 0 ? process : 0;
}

bool hasEnded(pid_t process) { return ::kill(process, 0) != 0 && errno == ESRCH; }

} // namespace

void removeLeftovers(const fs::path& folder) {
    std::error_code error;
    std::vector<fs::path> left;
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
        const auto name = entry->path().filename().string();
        const auto maker = makerOf(name);
        // An earlier program's lock was taken under this name.
        const bool isOldLock = name.ends_with(".jobbook.lock.rmlock");
        if (!isOldLock && (maker == 0 || maker == ::getpid() || !hasEnded(maker))) continue;
        std::error_code ignored;
        if (fs::is_regular_file(entry->symlink_status(ignored))) left.push_back(entry->path());
    }
    for (const auto& path : left) fs::remove(path, error);
}

std::vector<fs::path> unfinishedOf(const fs::path& target) {
    std::error_code error;
    std::vector<fs::path> found;
    const auto start = fmt::format(".{}{}", target.filename().string(), kUnfinished);
    for (fs::directory_iterator entry(target.parent_path(), error), end; !error && entry != end; entry.increment(error))
        if (entry->path().filename().string().starts_with(start)) found.push_back(entry->path());
    return found;
}

void makeOwnFolder(const fs::path& folder) {
    std::error_code error;
    fs::create_directories(folder.parent_path(), error);
    if (error) throwSystemError(folder, error.value());
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) throwSystemError(folder, errno);
}

void overwrite(const fs::path& file, std::uint64_t size) {
    const int handle = ::open(file.c_str(), O_WRONLY | O_CLOEXEC | O_NOFOLLOW);
    if (handle < 0) return;
    const std::string zeros(1U << 16U, '\0');
    for (std::uint64_t done = 0; done < size;) {
        const auto taken = ::write(handle, zeros.data(), std::min<std::uint64_t>(zeros.size(), size - done));
        if (taken <= 0) break;
        done += static_cast<std::uint64_t>(taken);
    }
    ::fsync(handle);
    ::close(handle);
}

TempFile::TempFile(const fs::path& target, Readers readers)
    : m_target(target)
    , m_file(target.parent_path() / fmt::format(".{}{}{}", target.filename().string(), kUnfinished, ::getpid())) {
    std::error_code ignored;
    removeLeftovers(target.parent_path());
    fs::remove(m_file, ignored); // of a run of this number that was cut short
    const mode_t mode = readers == Readers::OwnerAlone ? 0600 : 0666;
    const int handle = ::open(m_file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, mode);
    // A folder of the system's own, such as /proc, says that there is none.
    if (handle < 0) throwSystemError(m_target, errno == ENOENT ? EACCES : errno);
    ::close(handle);
}

void TempFile::write(std::string_view bytes) const {
    const int handle = ::open(m_file.c_str(), O_WRONLY | O_APPEND | O_CLOEXEC | O_NOFOLLOW);
    if (handle < 0) throwSystemError(m_target, errno);
    int error = 0;
    while (!bytes.empty() && error == 0) {
        const auto taken = ::write(handle, bytes.data(), bytes.size());
        if (taken > 0)
            bytes.remove_prefix(static_cast<std::size_t>(taken));
        else if (errno != EINTR)
            error = taken == 0 ? ENOSPC : errno;
    }
    if (::close(handle) != 0 && error == 0) error = errno;
    if (error != 0) throwSystemError(m_target, error);
}

void TempFile::make(const std::function<void()>& work) const {
    try {
        work();
    } catch (const DbError& refusal) {
        auto error = refusal.error();
        const auto putAsked = [&](std::string& text) {
            if (text == m_file.string()) text = m_target.string();
            if (text == m_file.filename().string()) text = m_target.filename().string();
        };
        putAsked(error.subject);
        for (auto& value : error.values)
            if (auto* text = std::get_if<std::string>(&value.held)) putAsked(*text);
        throw DbError(std::move(error));
    }
}

void TempFile::commit(IfThere ifThere) const {
    const auto& finished = m_file;
    const auto& target = m_target;
    sync(finished, O_RDONLY);
    if (ifThere == IfThere::Replace) {
        if (::rename(finished.c_str(), target.c_str()) != 0) throwSystemError(target, errno);
    } else if (::renameat2(AT_FDCWD, finished.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE) != 0) {
        const int error = errno;
        if (error == EEXIST) throwError(Fault::FileExists, target.string(), target.filename().string());
        // Some file systems do not know the flag: then look first.
        if (error != EINVAL && error != ENOSYS) throwSystemError(target, error);
        resolvedNew(target);
        if (::rename(finished.c_str(), target.c_str()) != 0) throwSystemError(target, errno);
    }
    sync(target.parent_path(), O_RDONLY | O_DIRECTORY);
}

TempFile::~TempFile() {
    std::error_code ignored;
    fs::remove(m_file, ignored);
    fs::remove(fs::path(m_file.string() + "-journal"), ignored);
}

} // namespace sp::db
