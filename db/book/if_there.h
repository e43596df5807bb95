// SPDX-License-Identifier: MIT
#pragma once

namespace sp::db {

/// What becomes of a file that has the name already.
enum class IfThere { Refuse, Replace };

} // namespace sp::db
