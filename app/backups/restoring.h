// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include <QDateTime>

namespace sp::backups {

/// Where a restored backup goes: to the place of the book itself where that is free (the book is gone), else beside it
/// as "Stone Bench restored 2026-11-30.jobbook", else into `elsewhere`. Never the name of something that is there.
std::filesystem::path restoreTarget(const std::filesystem::path& book, const std::filesystem::path& elsewhere,
                                    QDate today);

/// A job book of that name in that folder, with a number behind the name where it is taken.
std::filesystem::path freeIn(const std::filesystem::path& folder, const std::string& name);

/// Whether a file lies among the backups below `root`. It would be lost there with what is worked into it.
bool isBackup(const std::filesystem::path& file, const std::filesystem::path& root);

} // namespace sp::backups
