// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed_search.h"

#include <vector>

namespace sp::layout {

/// Of more boxes no way is looked for: each is laid inside the one before, on the stack.
inline constexpr std::int64_t kMostInOneBin = 200;

/// All boxes laid; or no way there is, where `isSure`; or none was found. `Laid::box` names the kind.
struct OneBinAnswer {
    std::vector<Laid> laid;
    bool isSure = false;

    bool isLaid() const { return !laid.empty(); }
};

/// Looks for a way to lay all boxes of all kinds in one bin, one at least. Any way may be pushed left and down until
/// every box touches something on both sides; of such ways none is missed. At the left end of the lowest level lies a
/// box; or nothing lies on the level, and it is lost up to the lower of its neighbours; or the first box on it stands
/// farther right, higher than the left neighbour, from where another reaches over what is lost. A state that failed is
/// not tried again (told by 128 bits of hash). `steps` are lowered by the work done.
OneBinAnswer layInOneBin(const std::vector<BoxKind>& kinds, std::int64_t width, std::int64_t height, bool mayTurn,
                         std::int64_t& steps);

/// The same for boxes and a bin; the places of all boxes, or none.
std::vector<Laid> laidInOneBin(const std::vector<Box>& boxes, const Bin& bin, bool mayTurn, std::int64_t& steps);

} // namespace sp::layout
