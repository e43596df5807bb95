// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "db/book/book.h"

#include <filesystem>

namespace sp::demo {

/// Makes a new job book at `file` with a shop of our own invention: every name, design and price in it is made up,
/// and its Shop says that it is a demo. Errors: as db::Book::create.
base::Result<std::unique_ptr<db::Book>> createDemoBook(const std::filesystem::path& file, db::Environment environment);

} // namespace sp::demo
