// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db {

/// By what a book is known and how far it has come. Nothing of it changes when the file is moved or renamed; a copy has
/// it too.
struct BookMark {
    std::string identity;    ///< of the book, 12 hexadecimal digits
    std::int64_t jobs = 0;   ///< that are in it, drafts too
    std::int64_t change = 0; ///< place of the newest change in its log

    friend bool operator==(const BookMark&, const BookMark&) = default;
};

/// A backup as its name has it: "Stone Bench 2026-11-30T140200Z 47 jobs 1234.jobbook".
struct Backup {
    std::filesystem::path file;
    std::string book;                ///< "Stone Bench", as the book was called then
    std::chrono::sys_seconds madeAt; ///< UTC, by the computer's clock
    std::int64_t jobs = 0;
    std::int64_t change = 0;
};

/// The folder, in `root`, of the backups of the book of that name and identity: one that is there under an earlier name
/// stays in use.
std::filesystem::path backupFolder(const std::filesystem::path& root, std::string_view book, const BookMark& mark);
/// The name of a backup made now.
std::string backupName(std::string_view book, const BookMark& mark, std::chrono::sys_seconds now);
/// What in a folder is named as a backup, the newest first. Other files are left out; a folder that is not there holds
/// none.
std::vector<Backup> backupsIn(const std::filesystem::path& folder);
/// Those of every book below `root`.
std::vector<Backup> allBackupsIn(const std::filesystem::path& root);

/// Those of `backups` (the newest first) that are no longer kept: all but the last ten, the last of each day for two
/// weeks and the last of each week for two months (UTC, weeks from Monday). One that seems to be made later than now,
/// by a clock that was wrong, counts for neither and stays.
std::vector<Backup> outdatedAmong(const std::vector<Backup>& backups, std::chrono::sys_seconds now);
/// A copy that is still there, and the day on which it goes by outdatedAmong.
struct Leaving {
    Backup backup;
    std::optional<std::chrono::sys_days> day; ///< if one is made every day from now on; nothing: not within a year
    bool isInSecondPlace = false;
};
/// In the order of `backups`, the newest first.
std::vector<Leaving> leavingOf(const std::vector<Backup>& backups, std::chrono::sys_seconds now);
/// Where the backups of all books lie; a path is empty where there is no such place.
struct BackupPlaces {
    std::filesystem::path root;
    std::filesystem::path second = {}; ///< on another disk or stick, where each is put too

    /// Whether there is a second place that is not there now, so that nobody can say what lies in it.
    bool isSecondAway() const;
};
/// All copies of a book that the program made: its backups in both places (a second one that is away holds none), and
/// those beside the book from before a new version of the file, which stay until somebody deletes them.
std::vector<Leaving> copiesOf(const std::filesystem::path& book, const BackupPlaces& places, const BookMark& mark,
                              std::chrono::sys_seconds now);
/// Removes them. Never throws: one that cannot be removed stays.
void removeBackups(const std::vector<Backup>& backups);

} // namespace sp::db
