// SPDX-License-Identifier: MIT
#include "db/sqlite/utf8.h"

#include <cstddef>

namespace sp::db::sqlite {

bool isText(std::string_view bytes) {
    std::size_t i = 0;
    while (i < bytes.size()) {
        const auto at = [&](std::size_t k) { return static_cast<unsigned char>(bytes[k]); };
        const unsigned first = at(i);
        if (first == 0) return false;
        if (first < 0x80) {
            ++i;
            continue;
        }
        const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
        if (first < 0xC2 || first > 0xF4 || i + length > bytes.size()) return false;
        char32_t point = first & (0xFFU >> (length + 1));
        for (std::size_t k = i + 1; k < i + length; ++k) {
            if ((at(k) & 0xC0) != 0x80) return false;
            point = (point << 6) | (at(k) & 0x3F);
        }
        const bool isOverlong = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
        if (isOverlong || point > 0x10FFFF || (point >= 0xD800 && point <= 0xDFFF)) return false;
        i += length;
    }
    return true;
}

} // namespace sp::db::sqlite
