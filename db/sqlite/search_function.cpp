// SPDX-License-Identifier: MIT
#include "db/sqlite/search_function.h"

#include <QString>
#include <sqlite3.h>

namespace sp::db::sqlite {

namespace {

QString folded(sqlite3_value* value) {
    const auto* bytes = static_cast<const char*>(static_cast<const void*>(sqlite3_value_text(value)));
    return QString::fromUtf8(bytes, sqlite3_value_bytes(value)).toCaseFolded();
}

void forget(void* part) { delete static_cast<QString*>(part); }

void holds(sqlite3_context* context, int, sqlite3_value** values) {
    constexpr int kPart = 1;
    const auto* part = static_cast<QString*>(sqlite3_get_auxdata(context, kPart));
    if (part != nullptr) {
        sqlite3_result_int(context, folded(values[0]).contains(*part) ? 1 : 0);
        return;
    }
    auto* kept = new QString(folded(values[kPart]));
    sqlite3_result_int(context, folded(values[0]).contains(*kept) ? 1 : 0);
    sqlite3_set_auxdata(context, kPart, kept, forget);
}

} // namespace

int addSearchFunction(sqlite3* db) {
    return sqlite3_create_function_v2(db, "holds", 2, SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_DIRECTONLY, nullptr,
                                      holds, nullptr, nullptr, nullptr);
}

} // namespace sp::db::sqlite
