# Writes HEADER with the text of SQL as the constant CONSTANT; called by sql_header.
file(READ ${SQL} text)
file(WRITE ${HEADER} "// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace sp::db::migrations {

inline constexpr std::string_view ${CONSTANT} = R\"sql(${text})sql\";

} // namespace sp::db::migrations
")
