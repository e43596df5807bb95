// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/messages.h"

#include <optional>
#include <string_view>

namespace sp::artwork {

/// What a file is that is not read here, by its first bytes, and what that kind is called where the sentence says it.
struct ForeignKind {
    Fault fault;
    std::string_view name;
};

/// Nothing for what may be a drawing, or is of no kind known here.
std::optional<ForeignKind> foreignKindOf(std::string_view bytes);

} // namespace sp::artwork
