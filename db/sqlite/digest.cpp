// SPDX-License-Identifier: MIT
#include "db/sqlite/digest.h"

#include <QByteArray>
#include <QCryptographicHash>

namespace sp::db::sqlite {

namespace {

QByteArray view(std::string_view bytes) {
    return QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
}

} // namespace

Digest digestOf(std::string_view bytes) {
    return {QCryptographicHash::hash(view(bytes), QCryptographicHash::Sha256).toHex().toStdString()};
}

void Column<Digest>::put(Statement& row, const Digest& digest) {
    row.bindBytes(QByteArray::fromHex(view(digest.hex)).toStdString());
}

void Column<Digest>::take(Statement& row, Digest& digest) { digest.hex = view(row.takeBytes()).toHex().toStdString(); }

} // namespace sp::db::sqlite
