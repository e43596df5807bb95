// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"

#include <vector>

namespace sp::db {

/// What does not hold of given quotes: their seals, the chain of them, their numbers, the prices under them. The
/// book must be of the newest version.
std::vector<base::Message> sealDamage(sqlite::Connection& connection);

} // namespace sp::db
