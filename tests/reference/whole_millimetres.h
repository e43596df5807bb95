// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/length.h"

#include <cstdint>

namespace sp::reference {

inline units::Length millimetres(std::int64_t mm) {
    return units::Length::fromNanometres(mm * units::kNanometresPerMillimetre);
}

} // namespace sp::reference
