// SPDX-License-Identifier: MIT
#include "db/sqlite/functions.h"

#include "core/base/id.h"

#include <QCryptographicHash>
#include <QString>
#include <sqlite3.h>

#include <algorithm>
#include <string>

namespace sp::db::sqlite {

namespace {

void concatLines(sqlite3_context* context, int count, sqlite3_value** values) {
    std::string lines;
    for (int i = 0; i < count; ++i) {
        const auto* text = static_cast<const char*>(static_cast<const void*>(sqlite3_value_text(values[i])));
        if (text == nullptr || *text == '\0') continue;
        if (!lines.empty()) lines += '\n';
        lines.append(text, static_cast<std::size_t>(sqlite3_value_bytes(values[i])));
    }
    sqlite3_result_text64(context, lines.data(), lines.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
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

/// The number that begins at `from`, without leading zeros; `from` is behind it then.
QStringView takeNumber(QStringView text, qsizetype& from) {
    const auto isDigit = [](QChar letter) { return letter >= QLatin1Char('0') && letter <= QLatin1Char('9'); };
    while (from < text.size() && text[from] == QLatin1Char('0')) ++from;
    const auto begin = from;
    while (from < text.size() && isDigit(text[from])) ++from;
    return text.mid(begin, from - begin);
}

int counting(void*, int firstSize, const void* first, int secondSize, const void* second) {
    const auto a = QString::fromUtf8(static_cast<const char*>(first), firstSize).toCaseFolded();
    const auto b = QString::fromUtf8(static_cast<const char*>(second), secondSize).toCaseFolded();
    qsizetype i = 0;
    qsizetype j = 0;
    while (i < a.size() && j < b.size()) {
        const auto beginI = i;
        const auto beginJ = j;
        const auto number = takeNumber(a, i);
        const auto other = takeNumber(b, j);
        if (i > beginI && j > beginJ) {
            if (number.size() != other.size()) return number.size() < other.size() ? -1 : 1;
            if (const int order = number.compare(other); order != 0) return order;
            continue;
        }
        i = beginI;
        j = beginJ;
        if (a[i] != b[j]) return a[i] < b[j] ? -1 : 1;
        ++i;
        ++j;
    }
    return (i < a.size() ? 1 : 0) - (j < b.size() ? 1 : 0);
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
         {Function{"concat_lines", -1, concatLines}, Function{"sha256", 1, sha256}, Function{"id_text", 1, idText}})
        if (const int code =
                sqlite3_create_function_v2(db, name, arguments, kFlags, nullptr, run, nullptr, nullptr, nullptr);
            code != SQLITE_OK)
            return code;
    return sqlite3_create_collation_v2(db, "COUNTING", SQLITE_UTF8, nullptr, counting, nullptr);
}

} // namespace sp::db::sqlite
