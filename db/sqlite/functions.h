// SPDX-License-Identifier: MIT
#pragma once

struct sqlite3;

namespace sp::db::sqlite {

/// Makes functions and an order known to our own statements and migrations, not to the schema. Returns SQLite's result
/// code.
///   concat_lines(…)    what is neither NULL nor empty, a line each
///   sha256(text)       the digest of the text's bytes, 32 bytes
///   id_text(bytes)     a key as its 36 characters; NULL for what is no key
///   COLLATE COUNTING   as people look names up: letter case ignored, digits in a row as the number they make,
///                      SS6 before SS10
int addFunctions(sqlite3* db);

} // namespace sp::db::sqlite
