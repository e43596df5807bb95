// SPDX-License-Identifier: MIT
#include "db/sqlite/functions.h"

#include "core/base/id.h"

#include <QCryptographicHash>
#include <QString>
#include <sqlite3.h>

#include <algorithm>

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

const char* bytesOf(sqlite3_value* value) { return static_cast<const char*>(sqlite3_value_blob(value)); }

void sha256(sqlite3_context* context, int, sqlite3_value** values) {
    const auto* bytes = bytesOf(values[0]);
    const auto digest = QCryptographicHash::hash(QByteArray::fromRawData(bytes, sqlite3_value_bytes(values[0])),
                                                 QCryptographicHash::Sha256);
    sqlite3_result_blob(context, digest.constData(), static_cast<int>(digest.size()), SQLITE_TRANSIENT);
}

void idText(sqlite3_context* context, int, sqlite3_value** values) {
    base::Id::Bytes key{};
    if (sqlite3_value_type(values[0]) != SQLITE_BLOB || sqlite3_value_bytes(values[0]) != static_cast<int>(key.size()))
        return sqlite3_result_null(context);
    std::copy_n(bytesOf(values[0]), key.size(), key.begin());
    const auto text = base::Id::fromBytes(key).text();
    sqlite3_result_text(context, text.c_str(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
}

} // namespace

int addFunctions(sqlite3* db) {
    constexpr int kFlags = SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_DIRECTONLY;
    struct Function {
        const char* name;
        int arguments;
        void (*run)(sqlite3_context*, int, sqlite3_value**);
    };
    for (const auto& [name, arguments, run] :
         {Function{"holds", 2, holds}, Function{"sha256", 1, sha256}, Function{"id_text", 1, idText}})
        if (const int code =
                sqlite3_create_function_v2(db, name, arguments, kFlags, nullptr, run, nullptr, nullptr, nullptr);
            code != SQLITE_OK)
            return code;
    return SQLITE_OK;
}

} // namespace sp::db::sqlite
