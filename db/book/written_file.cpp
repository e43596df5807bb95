// SPDX-License-Identifier: MIT
#include "db/book/written_file.h"

#include "db/book/file_lock.h"
#include "db/book/files.h"
#include "db/db_error.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <fcntl.h>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

namespace sp::db {

namespace fs = std::filesystem;

namespace {

/// What SQLite's files begin with: fileformat2.html, 1.3 (a database), 3 (a journal), 4.1 (a write-ahead log, of either
/// byte order).
constexpr std::array<std::string_view, 4> kBeginnings{"SQLite format 3", "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7",
                                                      "\x37\x7f\x06\x82", "\x37\x7f\x06\x83"};
/// What the names of files beside a book end in.
constexpr std::array<std::string_view, 4> kBeside{"-journal", "-wal", "-shm", ".lock"};

bool beginsAsABook(const fs::path& file) {
    const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
    if (handle < 0) return false;
    std::array<char, 16> bytes{};
    const auto size = ::read(handle, bytes.data(), bytes.size());
    ::close(handle);
    const std::string_view held(bytes.data(), size > 0 ? static_cast<std::size_t>(size) : 0);
    return std::ranges::any_of(kBeginnings, [&](std::string_view beginning) { return held.starts_with(beginning); });
}

/// A file is looked into only where no book is open here: closing it would drop the locks that SQLite has on it
/// (sqlite.org/howtocorrupt.html, 2.2).
bool isBook(const fs::path& file) {
    struct stat facts {};
    if (::lstat(file.c_str(), &facts) != 0 || !S_ISREG(facts.st_mode)) return false;
    return FileLock::isOpenHere({facts.st_dev, facts.st_ino}) || beginsAsABook(file);
}

bool isBookOrBelongsToOne(const fs::path& file) {
    auto name = file.filename().string();
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    if (name.ends_with(".jobbook")) return true;
    for (const auto end : kBeside) {
        if (!name.ends_with(end)) continue;
        if (name.substr(0, name.size() - end.size()).ends_with(".jobbook")) return true;
        const auto whole = file.string();
        if (isBook(whole.substr(0, whole.size() - end.size()))) return true;
    }
    return isBook(file);
}

} // namespace

base::Done writeFile(const fs::path& asked, std::string_view bytes, IfThere ifThere) {
    return catchToResult([&] {
        std::error_code error;
        const auto folder = fs::canonical(asked.has_parent_path() ? asked.parent_path() : fs::path("."), error);
        if (error || !fs::is_directory(folder, error))
            throwError(Fault::NoSuchFolder, asked.parent_path().string(), asked.parent_path().string());
        const auto target = folder / asked.filename();
        const auto shown = asked.string();
        if (!asked.has_filename()) throwError(Fault::NoPlainFile, shown, shown);
        struct stat there {};
        const bool isThere = ::lstat(target.c_str(), &there) == 0;
        if (isThere && !S_ISREG(there.st_mode)) throwError(Fault::NoPlainFile, shown, shown);
        if (isBookOrBelongsToOne(target)) throwError(Fault::StaysABook, shown, shown);
        if (isThere && ifThere == IfThere::Refuse) throwError(Fault::FileExists, shown, asked.filename().string());
        const TempFile temp(target, Readers::AsUsual);
        if (isThere) ::chmod(temp.file().c_str(), there.st_mode & 07777);
        temp.make([&] { temp.write(bytes); });
        temp.commit(ifThere);
    });
}

} // namespace sp::db
