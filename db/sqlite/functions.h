// SPDX-License-Identifier: MIT
#pragma once

struct sqlite3;

namespace sp::db::sqlite {

/// Makes functions known to our own statements and migrations, not to the schema. Returns SQLite's result code.
///   holds(text, part)  1 when `text` holds `part`, letter case of all scripts ignored by Unicode case folding
///   sha256(text)       the digest of the text's bytes, 32 bytes
///   id_text(bytes)     a key as its 36 characters; NULL for what is no key
int addFunctions(sqlite3* db);

} // namespace sp::db::sqlite
