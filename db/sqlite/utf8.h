// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace sp::db::sqlite {

/// Well-formed UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF) without NUL.
bool isText(std::string_view bytes);

} // namespace sp::db::sqlite
