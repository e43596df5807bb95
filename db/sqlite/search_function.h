// SPDX-License-Identifier: MIT
#pragma once

struct sqlite3;

namespace sp::db::sqlite {

/// Makes holds(text, part) known to our own statements (not to the schema): 1 when `text` holds `part`, letter case
/// of all scripts ignored by Unicode case folding. Returns SQLite's result code.
int addSearchFunction(sqlite3* db);

} // namespace sp::db::sqlite
