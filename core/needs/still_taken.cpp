// SPDX-License-Identifier: MIT
#include "core/needs/still_taken.h"

#include <algorithm>

namespace sp::needs {

std::vector<MaterialTake> stillTaken(const std::vector<MaterialTake>& takes, const std::vector<MaterialTake>& taken) {
    std::vector<MaterialTake> still;
    for (const auto& take : takes) {
        const auto known = std::ranges::find(taken, take.material, &MaterialTake::material);
        // What came back more than went out is no part of what the job takes.
        const auto gone = known == taken.end() ? 0 : std::max<std::int64_t>(0, known->count);
        if (take.count > gone) still.push_back({take.material, take.count - gone});
    }
    return still;
}

ShelfSplit splitBy(const std::vector<MaterialTake>& takes, const std::unordered_map<base::Id, std::int64_t>& shelf) {
    ShelfSplit split;
    for (const auto& take : takes) {
        const auto held = shelf.find(take.material);
        const auto there = std::clamp<std::int64_t>(held == shelf.end() ? 0 : held->second, 0, take.count);
        if (there > 0) split.there.push_back({take.material, there});
        if (there < take.count) split.lacks.push_back({take.material, take.count - there});
    }
    return split;
}

} // namespace sp::needs
