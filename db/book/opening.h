// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/hold.h"
#include "db/sqlite/connection.h"

#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace sp::db {

/// An open file that has passed all checks. The connection is closed before the hold is given up.
struct Opened {
    std::unique_ptr<Hold> hold;
    std::unique_ptr<sqlite::Connection> connection;
    std::string readOnlyBecause;
};

// All of this throws Refusal.

/// Opens a book for work. In this order: links resolved; a second name refused; not open here already; the lock
/// file; the header, before SQLite sees the file; the settings, each read back; an older book brought up to date
/// after a verified copy beside it; the schema, word for word. A book that was not closed properly, and a small one,
/// is gone through by SQLite's own checks too; for a large one those are left to `check`, since they would take
/// longer than starting the program (measured: about 5 ms for each megabyte).
Opened openBook(const std::filesystem::path& file, std::span<const std::string_view> migrations);

/// Opens a book for reading, beside whoever has it open. Journal left by a crash: rolled back as on any opening.
/// Throws ReadOnly for a book that was not brought up to date yet.
std::unique_ptr<sqlite::Connection> openToRead(const std::filesystem::path& file);

/// Runs the migrations from the file's version on, each in a transaction of its own at the end of which every reference
/// is gone through.
void bringUpToDate(sqlite::Connection& connection, std::span<const std::string_view> migrations);

/// SHA-256 of the schema's own words, as hexadecimal digits; see migrations::kNewestSchema.
std::string schemaDigest(sqlite::Connection& connection);

/// Throws Foreign unless the tables and indexes are exactly those that the migrations make, and nothing else.
void expectSchema(sqlite::Connection& connection, std::span<const std::string_view> migrations);

/// What SQLite's own structure and reference checks find, one sentence each.
enum class Depth { Quick, Full };
std::vector<std::string> structureDamage(sqlite::Connection& connection, Depth depth);

/// A whole copy in a new file: written beside the target, gone through, made durable, then given its name.
void copyWhole(sqlite::Connection& connection, const std::filesystem::path& target);

} // namespace sp::db
