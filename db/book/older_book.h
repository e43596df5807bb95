// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"
#include "db/sqlite/connection.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string_view>

namespace sp::db {

// Books of earlier versions. All of this throws DbError.

/// The version that the file says it is of: how many migrations have made it.
int versionOf(sqlite::Connection& connection);

/// Runs the migrations from the file's version on, each in a transaction of its own at the end of which every reference
/// is gone through.
void bringUpToDate(sqlite::Connection& connection, std::span<const std::string_view> migrations);

/// A private copy of an older book, brought up to date, which names `file` in what it refuses; nothing is written
/// beside the book or into it. A large one lies in the system's folder for temporary files, or in memory where that is
/// full. Throws Foreign when the book has not the schema of its version.
std::unique_ptr<sqlite::Connection> upToDateCopy(sqlite::Connection& older, int version,
                                                 std::span<const std::string_view> migrations,
                                                 const std::filesystem::path& file);

/// Brings an older book up to date, after a backup of it beside it, under a name that is free: "NAME before version 3",
/// then "NAME before version 3 (2)" and so on; what stands under a name is neither trusted nor touched. The backup is
/// verified by what a person would do with it: a copy of it is brought up to date and its seals are gone through.
/// Nothing when that was done. Otherwise the file is as it was, and the answer says why the book can only be read: no
/// room, a folder or disk that takes no backup, a seal that does not match.
std::optional<base::Error> migrate(sqlite::Connection& connection, int version,
                                   std::span<const std::string_view> migrations);

} // namespace sp::db
