// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/check_report.h"
#include "db/book/watch.h"
#include "db/sqlite/connection.h"

#include <vector>

namespace sp::db {

/// Goes through all of a book, which must be of the newest version: structure, references, values, seals, the log.
/// Throws Failed when it is stopped.
CheckReport inspect(sqlite::Connection& connection, const Watch& watch);

/// What does not hold of given quotes: their seals, the chain of them, their numbers, the prices under them. The
/// book must be of the newest version.
std::vector<base::Message> sealDamage(sqlite::Connection& connection);

} // namespace sp::db
