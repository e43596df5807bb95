// SPDX-License-Identifier: MIT
#include "core/units/encodings.h"

#include <gtest/gtest.h>

namespace {

using sp::units::Encoding;
using sp::units::readEncoded;
using namespace std::string_literals;

std::string read(const std::string& bytes, Encoding expected) {
    const auto text = readEncoded(bytes);
    if (!text) return "no text";
    EXPECT_EQ(text->encoding, expected);
    return text->utf8;
}

TEST(Encodings, takesUtf8AsItIs) {
    EXPECT_EQ(read("café €", Encoding::Utf8), "café €");
    EXPECT_EQ(read("\xEF\xBB\xBFitem", Encoding::Utf8), "item");
    EXPECT_EQ(read("", Encoding::Utf8), "");
}

// The bytes of each text: iconv -f UTF-8 -t UTF-16LE, UTF-16BE and WINDOWS-1252 (glibc 2.36).
TEST(Encodings, turnsWhatOtherProgramsSaveIntoUtf8) {
    EXPECT_EQ(read("\xFF\xFE\xE9\0\x3D\xD8\x8E\xDC"s, Encoding::Utf16), "é💎");
    EXPECT_EQ(read("\xFE\xFF\0\xE9\xD8\x3D\xDC\x8E"s, Encoding::Utf16), "é💎");
    EXPECT_EQ(read("a\0;\0\xE9\0"s, Encoding::Utf16), "a;é") << "without a byte order mark";
    EXPECT_EQ(read("\0a\0;\0\xE9"s, Encoding::Utf16), "a;é");
    EXPECT_EQ(read("caf\xE9;\x80 6,95;\x93Jet\x94", Encoding::Windows1252), "café;€ 6,95;“Jet”");
}

TEST(Encodings, refusesWhatIsNoText) {
    EXPECT_FALSE(readEncoded("PK\x03\x04\xE9"s)) << "controls";
    EXPECT_FALSE(readEncoded("item\0\xE9"s)) << "NUL";
    EXPECT_FALSE(readEncoded("\xE9\x81"s)) << "81 is nothing in Windows-1252";
    EXPECT_FALSE(readEncoded("\xFF\xFE\x3D\xD8"s)) << "half a pair";
    EXPECT_FALSE(readEncoded("\xFF\xFE\x3D"s)) << "half a unit";
}

} // namespace
