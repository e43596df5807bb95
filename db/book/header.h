// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

namespace sp::db {

/// What the first 100 bytes of a job book say (sqlite.org/fileformat2.html, section 1.3).
struct Header {
    int version = 0;    ///< user_version
    bool isWal = false; ///< another program switched it to a write-ahead log
};

/// Reads the header without SQLite, and without touching the file. Never call it for a file that this process has
/// open: closing the handle would drop SQLite's locks. Throws Foreign (empty, a text file, a database of another
/// program), TooNew, Damaged, ReadOnly.
Header readHeader(const std::filesystem::path& file);

} // namespace sp::db
