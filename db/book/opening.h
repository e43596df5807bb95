// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/file_lock.h"
#include "db/sqlite/connection.h"

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::db {

/// An open file that has passed all checks. The connection is closed before the hold is given up.
struct Opened {
    std::unique_ptr<FileLock> lock;
    std::unique_ptr<sqlite::Connection> connection;
    std::optional<base::Error> readOnlyBecause;
    bool wasCutShort = false;      ///< not closed properly by whoever had it before
    std::optional<FileState> left; ///< as it was after the last change from here
    /// The last change failed and left its journal: whoever reads the file next takes the change back, and the file is
    /// another one then, though nobody wrote to it.
    bool isToBeRolledBack = false;
};

// All of this throws DbError.

/// Opens a book for work. In this order: links resolved; a second name refused; not open here already; the lock
/// file; what a crash left in a journal rolled back; the header, before SQLite sees the rest of the file; the settings,
/// each read back; an older book brought up to date (see older_book.h); the schema, word for word. A book that was not
/// closed properly, and a small one, is gone through by SQLite's own checks too; for a large one those are left to
/// `check`, since they would take longer than starting the program (measured: about 5 ms for each megabyte).
Opened openBook(const std::filesystem::path& file, std::span<const std::string_view> migrations);

/// Opens a book for reading, beside whoever has it open. Journal left by a crash: rolled back as on any opening.
/// Of an older book it gives a copy that was brought up to date; the file stays as it is.
std::unique_ptr<sqlite::Connection> openToRead(const std::filesystem::path& file);

/// Whether a journal lies beside the file, of a change that is under way or was cut short.
bool hasJournal(const std::filesystem::path& file);

/// SHA-256 of the schema's own words, as hexadecimal digits; see migrations::kNewestSchema.
std::string schemaDigest(sqlite::Connection& connection);

/// Throws Foreign unless the tables and indexes are exactly those that the migrations make, and nothing else.
void expectSchema(sqlite::Connection& connection, std::span<const std::string_view> migrations);

/// What SQLite's own structure and reference checks find.
enum class Depth { Quick, Full };
std::vector<base::Message> structureDamage(sqlite::Connection& connection, Depth depth);

/// A whole copy in a new file: written beside the target, gone through, first by SQLite, then by `inspect`, made
/// durable, then given its name. What `inspect` throws leaves no file behind. Of an open book: see BookCopy.
void copyWhole(sqlite::Connection& connection, const std::filesystem::path& target,
               const std::function<void(sqlite::Connection& copy)>& inspect = {});

/// How long SQLite may take for one statement: while a book is opened, at work, and when all of it is gone through.
inline constexpr std::chrono::milliseconds kOpeningBudget{2'000};
inline constexpr std::chrono::milliseconds kWorkBudget{20'000};
inline constexpr std::chrono::minutes kCheckBudget{10};

} // namespace sp::db
