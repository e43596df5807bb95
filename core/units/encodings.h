// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sp::units {

/// How a file that a person chose writes its letters.
enum class Encoding { Utf8, Utf16, Windows1252 };

struct EncodedText {
    std::string utf8; ///< without a byte order mark
    Encoding encoding = Encoding::Utf8;
};

/// Text as programs save it, in UTF-8: what is UTF-8 stays, UTF-16 is known by its byte order mark or by the NUL beside
/// its first character, anything else is taken for Windows-1252. Nothing for what is no text in any of them.
std::optional<EncodedText> readEncoded(std::string_view bytes);

} // namespace sp::units
