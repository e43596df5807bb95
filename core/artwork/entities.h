// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace sp::artwork {

/// What `expandEntities` found beside the text.
struct EntityNotes {
    std::size_t external = 0; ///< entities that stand in other files; those are never opened
};

/// Puts the entities which the file itself defines (XML 1.0, section 4.2.1: <!ENTITY name "text">) in the
/// place of their references, also inside each other, and leaves the predefined and numbered ones alone.
/// References in comments and CDATA stay. A document without definitions comes back as it is. Errors:
/// TooLarge when the text would grow by more than 16 MB or nest more than 16 deep.
base::Result<std::string> expandEntities(std::string document, std::string_view fileName, EntityNotes& notes);

} // namespace sp::artwork
