// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/statement.h"

#include <string>
#include <string_view>

namespace sp::db::stores {

/// SHA-256 (FIPS 180-4) as 64 hexadecimal digits.
std::string sha256(std::string_view bytes);

/// A digest as it lies in a column: 32 bytes for the 64 digits.
struct Digest {
    std::string hex;
};

} // namespace sp::db::stores

namespace sp::db::sqlite {

template<>
struct Column<stores::Digest> {
    static void put(Statement& row, const stores::Digest& digest);
    static void take(Statement& row, stores::Digest& digest);
};

} // namespace sp::db::sqlite
