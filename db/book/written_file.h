// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "db/book/if_there.h"

#include <filesystem>
#include <string_view>

namespace sp::db {

/// The one door by which the program writes a file that is no book: a sheet, a list. Only a new file or, where that was
/// agreed, another regular one: never a folder, a link, a pipe or a device, and never a job book, its journal or its
/// lock, whatever their names. The file appears whole or not at all, and what it replaces stays as it was until then;
/// it is on the disk when this returns. It is read by whoever may read other new files, or the one that it replaces.
/// Errors: Missing (no such folder); Conflict (a file of that name, when it may not be replaced; a book, or part of
/// one); Invalid (a folder, a link or a device); ReadOnly, Full, Failed.
base::Done writeFile(const std::filesystem::path& target, std::string_view bytes, IfThere ifThere);

} // namespace sp::db
