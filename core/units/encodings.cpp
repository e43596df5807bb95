// SPDX-License-Identifier: MIT
#include "core/units/encodings.h"

#include "core/units/characters.h"

#include <array>

namespace sp::units {

namespace {

/// What Windows-1252 has at 80 to 9F; 0 where it has nothing. Source: Unicode's mapping table CP1252.TXT.
constexpr std::array<char32_t, 32> kWindows1252{0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                                0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0,      0x017D, 0,
                                                0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                                0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

char32_t byteAt(std::string_view bytes, std::size_t at) { return static_cast<unsigned char>(bytes[at]); }

std::optional<std::string> fromWindows1252(std::string_view bytes) {
    std::u32string text;
    text.reserve(bytes.size());
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        auto c = byteAt(bytes, i);
        const bool isControl = (c < 0x20 && c != U'\t' && c != U'\n' && c != U'\r' && c != U'\f') || c == 0x7F;
        if (c >= 0x80 && c < 0xA0) c = kWindows1252[c - 0x80];
        if (isControl || c == 0) return std::nullopt;
        text += c;
    }
    return encode(text);
}

std::optional<std::string> fromUtf16(std::string_view bytes, bool isBigEndian) {
    if (bytes.size() % 2 != 0) return std::nullopt;
    const auto unitAt = [&](std::size_t at) {
        const auto first = byteAt(bytes, at);
        const auto second = byteAt(bytes, at + 1);
        return isBigEndian ? first << 8 | second : second << 8 | first;
    };
    std::u32string text;
    text.reserve(bytes.size() / 2);
    for (std::size_t i = 0; i < bytes.size(); i += 2) {
        auto c = unitAt(i);
        if (c >= 0xD800 && c < 0xDC00 && i + 3 < bytes.size()) {
            const auto low = unitAt(i + 2);
            if (low < 0xDC00 || low > 0xDFFF) return std::nullopt;
            c = 0x10000 + ((c - 0xD800) << 10) + (low - 0xDC00);
            i += 2;
        }
        if (c == 0 || (c >= 0xD800 && c <= 0xDFFF)) return std::nullopt;
        text += c;
    }
    return encode(text);
}

std::optional<EncodedText> as(Encoding encoding, std::optional<std::string> text) {
    if (!text) return std::nullopt;
    return EncodedText{std::move(*text), encoding};
}

} // namespace

std::optional<EncodedText> readEncoded(std::string_view bytes) {
    using namespace std::string_view_literals;
    if (bytes.starts_with("\xFF\xFE"sv)) return as(Encoding::Utf16, fromUtf16(bytes.substr(2), false));
    if (bytes.starts_with("\xFE\xFF"sv)) return as(Encoding::Utf16, fromUtf16(bytes.substr(2), true));
    if (bytes.starts_with("\xEF\xBB\xBF"sv)) bytes.remove_prefix(3);
    if (isText(bytes)) return EncodedText{std::string(bytes), Encoding::Utf8};
    if (bytes.size() > 1 && bytes[0] != '\0' && bytes[1] == '\0') return as(Encoding::Utf16, fromUtf16(bytes, false));
    if (bytes.size() > 1 && bytes[0] == '\0' && bytes[1] != '\0') return as(Encoding::Utf16, fromUtf16(bytes, true));
    return as(Encoding::Windows1252, fromWindows1252(bytes));
}

} // namespace sp::units
