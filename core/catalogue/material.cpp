// SPDX-License-Identifier: MIT
#include "core/catalogue/material.h"

namespace sp::catalogue {

std::string_view nameOf(MaterialKind kind) {
    switch (kind) {
    case MaterialKind::Stone: return "stone";
    case MaterialKind::Tape: return "tape";
    case MaterialKind::Template: return "template";
    case MaterialKind::Backing: return "backing";
    case MaterialKind::Blank: return "blank";
    case MaterialKind::Packing: return "packing";
    }
    return "material";
}

} // namespace sp::catalogue
