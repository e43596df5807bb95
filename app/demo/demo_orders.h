// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "db/book/book.h"

#include <filesystem>
#include <memory>

namespace sp::demo {

/// A demo book with three months of invented jobs up to today in it, each under the day it was over: in every stage,
/// with deposits, payments in parts, one let go, one that lapsed, one that is owed, one done again for nothing, one
/// revised, and one that the Counter opens with, of two choices. Errors: as createDemoBook.
base::Result<std::unique_ptr<db::Book>> createBusyDemo(const std::filesystem::path& file, db::Environment environment);

} // namespace sp::demo
