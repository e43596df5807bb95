// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"
#include "core/catalogue/material.h"

namespace sp::catalogue {

/// A kind as a value of a message.
inline base::MessageId idOf(MaterialKind kind) {
    return {base::Room::Kinds, true, static_cast<std::uint16_t>(kind), nameOf(kind)};
}

} // namespace sp::catalogue
