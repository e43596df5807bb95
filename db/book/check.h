// SPDX-License-Identifier: MIT
#pragma once

#include "db/sqlite/connection.h"

#include <string>
#include <vector>

namespace sp::db {

/// What does not hold of given quotes: their seals, the chain of them, their numbers, the prices under them. One
/// sentence each. The book must be of the newest version.
std::vector<std::string> sealDamage(sqlite::Connection& connection);

} // namespace sp::db
