// SPDX-License-Identifier: MIT
#include "core/base/error.h"

namespace sp::base {

std::string_view nameOf(Code code) {
    switch (code) {
    case Code::Invalid: return "invalid";
    case Code::OutOfRange: return "out of range";
    case Code::TooLarge: return "too large";
    case Code::Missing: return "missing";
    case Code::NotFound: return "not found";
    case Code::Ambiguous: return "ambiguous";
    case Code::Conflict: return "conflict";
    case Code::Busy: return "busy";
    case Code::Full: return "full";
    case Code::ReadOnly: return "read-only";
    case Code::Foreign: return "foreign";
    case Code::TooNew: return "too new";
    case Code::Damaged: return "damaged";
    case Code::Failed: return "failed";
    }
    return "failed";
}

} // namespace sp::base
