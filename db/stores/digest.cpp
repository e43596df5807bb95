// SPDX-License-Identifier: MIT
#include "db/stores/digest.h"

#include <QByteArray>
#include <QCryptographicHash>

namespace sp::db {

namespace {

QByteArray view(std::string_view bytes) {
    return QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
}

} // namespace

std::string stores::sha256(std::string_view bytes) {
    return QCryptographicHash::hash(view(bytes), QCryptographicHash::Sha256).toHex().toStdString();
}

void sqlite::Column<stores::Digest>::put(Statement& row, const stores::Digest& digest) {
    row.bindBytes(QByteArray::fromHex(view(digest.hex)).toStdString());
}

void sqlite::Column<stores::Digest>::take(Statement& row, stores::Digest& digest) {
    digest.hex = view(row.takeBytes()).toHex().toStdString();
}

} // namespace sp::db
