// SPDX-License-Identifier: MIT
#include "core/units/characters.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace sp::units {

namespace {

struct VulgarRow {
    char32_t character;
    VulgarFraction value;
};

// Unicode code charts, Latin-1 Supplement and Number Forms (from memory).
constexpr std::array kVulgar{
    VulgarRow{U'¼', {1, 4}}, VulgarRow{U'½', {1, 2}},  VulgarRow{U'¾', {3, 4}}, VulgarRow{U'⅐', {1, 7}},
    VulgarRow{U'⅑', {1, 9}}, VulgarRow{U'⅒', {1, 10}}, VulgarRow{U'⅓', {1, 3}}, VulgarRow{U'⅔', {2, 3}},
    VulgarRow{U'⅕', {1, 5}}, VulgarRow{U'⅖', {2, 5}},  VulgarRow{U'⅗', {3, 5}}, VulgarRow{U'⅘', {4, 5}},
    VulgarRow{U'⅙', {1, 6}}, VulgarRow{U'⅚', {5, 6}},  VulgarRow{U'⅛', {1, 8}}, VulgarRow{U'⅜', {3, 8}},
    VulgarRow{U'⅝', {5, 8}}, VulgarRow{U'⅞', {7, 8}},
};

struct Family {
    char32_t stands;
    std::u32string_view members;
};

constexpr std::array kFamilies{
    Family{U'-', U"\u2010\u2011\u2012\u2013\u2014\u2212\uFE63\uFF0D"},
    Family{U'\'', U"\u2018\u2019\u201B\u2032\u02B9\u02BC\u00B4"},
    Family{U'"', U"\u201C\u201D\u201E\u201F\u2033\u02BA"},
    Family{U'/', U"\u00F7\u2044\u2215"},
    Family{U'*', U"\u2217"},
    Family{kHardSpace, U"\u2007\u2009\u202F"},
    Family{U' ', U"\t\n\v\f\r\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2008\u200A\u2028\u2029\u205F\u3000"
                 U"\u200B\u200E\u200F\u2060\uFEFF"},
    Family{U'\u00B5', U"\u03BC"},
    Family{U'°', U"º"},
    Family{U'¥', U"\uFFE5"},
};

constexpr std::u32string_view kSigns = U"×€£¥¢‰\u00B7\u2022\u2026";

/// Bytes after the first one of a sequence, or nothing when `lead` starts none.
std::optional<std::size_t> followers(unsigned char lead) {
    if (lead < 0x80) return 0;
    if (lead >= 0xC2 && lead <= 0xDF) return 1;
    if (lead >= 0xE0 && lead <= 0xEF) return 2;
    if (lead >= 0xF0 && lead <= 0xF4) return 3;
    return std::nullopt;
}

/// The character that begins at `at`, which is moved behind it; nothing where none begins.
std::optional<char32_t> next(std::string_view utf8, std::size_t& at) {
    constexpr std::array<char32_t, 4> kLeadBits{0x7F, 0x1F, 0x0F, 0x07};
    constexpr std::array<char32_t, 4> kMin{0, 0x80, 0x800, 0x10000};
    const auto lead = static_cast<unsigned char>(utf8[at]);
    if (lead < 0x80) {
        ++at;
        return lead;
    }
    const auto more = followers(lead);
    if (!more || at + *more >= utf8.size()) return std::nullopt;
    char32_t character = lead & kLeadBits[*more];
    for (std::size_t i = 1; i <= *more; ++i) {
        const auto byte = static_cast<unsigned char>(utf8[at + i]);
        if ((byte & 0xC0) != 0x80) return std::nullopt;
        character = (character << 6) | (byte & 0x3F);
    }
    const bool surrogate = character >= 0xD800 && character <= 0xDFFF;
    if (character < kMin[*more] || surrogate || character > 0x10FFFF) return std::nullopt;
    at += *more + 1;
    return character;
}

bool isInvisible(char32_t c) {
    const bool control = c < 0x20 || (c >= 0x7F && c < 0xA0);
    const bool steers = (c >= 0x200B && c <= 0x200F) || (c >= 0x2028 && c <= 0x202E) || (c >= 0x2060 && c <= 0x206F);
    return control || steers || c == 0xFEFF || c == 0x00AD;
}

} // namespace

bool isText(std::string_view bytes) {
    for (std::size_t at = 0; at < bytes.size();)
        if (next(bytes, at).value_or(0) == 0) return false;
    return true;
}

std::optional<std::u32string> decode(std::string_view utf8) {
    std::u32string out;
    for (std::size_t at = 0; at < utf8.size();) {
        const auto character = next(utf8, at);
        if (!character) return std::nullopt;
        out += *character;
    }
    return out;
}

std::string encode(std::u32string_view characters) {
    std::string out;
    const auto add = [&](char32_t byte) { out += static_cast<char>(static_cast<unsigned char>(byte)); };
    for (const char32_t c : characters) {
        if (c < 0x80) {
            add(c);
        } else if (c < 0x800) {
            add(0xC0 | (c >> 6));
            add(0x80 | (c & 0x3F));
        } else if (c < 0x10000) {
            add(0xE0 | (c >> 12));
            add(0x80 | ((c >> 6) & 0x3F));
            add(0x80 | (c & 0x3F));
        } else {
            add(0xF0 | (c >> 18));
            add(0x80 | ((c >> 12) & 0x3F));
            add(0x80 | ((c >> 6) & 0x3F));
            add(0x80 | (c & 0x3F));
        }
    }
    return out;
}

std::string quoted(std::u32string_view text) {
    constexpr std::size_t kMax = 30;
    std::u32string shown(text.substr(0, kMax));
    std::replace_if(shown.begin(), shown.end(), isInvisible, U' ');
    if (text.size() > kMax) shown += U'…';
    return "“" + encode(shown) + "”";
}

char32_t folded(char32_t character) {
    if (character > U' ' && character < 0x7F) return character;
    for (const Family& family : kFamilies)
        if (family.members.find(character) != std::u32string_view::npos) return family.stands;
    return character;
}

bool isWordCharacter(char32_t c) {
    if (c < 0x80) return lowered(c) >= U'a' && lowered(c) <= U'z';
    return c > kHardSpace && !vulgarFraction(c) && kSigns.find(c) == std::u32string_view::npos;
}

char32_t lowered(char32_t c) { return c >= U'A' && c <= U'Z' ? c + (U'a' - U'A') : c; }

std::optional<VulgarFraction> vulgarFraction(char32_t c) {
    if (c < 0x80) return std::nullopt;
    const auto found =
        std::find_if(kVulgar.begin(), kVulgar.end(), [&](const VulgarRow& row) { return row.character == c; });
    if (found == kVulgar.end()) return std::nullopt;
    return found->value;
}

} // namespace sp::units
