// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/statement.h"

#include <string>
#include <string_view>

namespace sp::db::sqlite {

/// A SHA-256 (FIPS 180-4) as 64 hexadecimal digits; in a column its 32 bytes. Empty for none, in a column no bytes.
struct Digest {
    std::string hex;

    friend bool operator==(const Digest&, const Digest&) = default;
};

Digest digestOf(std::string_view bytes);

template<>
struct Column<Digest> {
    static void put(Statement& row, const Digest& digest);
    static void take(Statement& row, Digest& digest);
};

} // namespace sp::db::sqlite
