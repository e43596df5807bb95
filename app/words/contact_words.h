// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"
#include "core/base/result.h"
#include "core/catalogue/contacts.h"

#include <QString>

#include <string>
#include <string_view>
#include <vector>

namespace sp::words {

/// Reads customers from the bytes of a file, cards or a table by what it begins with, in any encoding that programs
/// save text in. Errors: Invalid, with the sentence to show; `name` is what the file is called.
base::Result<std::vector<catalogue::Customer>> readContacts(std::string_view bytes, const std::string& name);

/// What of a person stays when it is erased, in one paragraph.
QString whatErasingLeaves();
/// That copies in that folder, the second place for backups, are not named because it is not there now.
QString secondPlaceIsAway(const QString& folder);

} // namespace sp::words
