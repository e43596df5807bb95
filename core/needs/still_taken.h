// SPDX-License-Identifier: MIT
#pragma once

#include "core/needs/order_work.h"

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace sp::needs {

/// What a job still takes of each material: what it takes less what was taken off the shelf for it already, for
/// whatever reason; never below nothing. What is not taken any more is left out, and so is what it never took.
/// `takes` and `taken` in any order, each material once. Asked the other way round: what was taken beyond that.
std::vector<MaterialTake> stillTaken(const std::vector<MaterialTake>& takes, const std::vector<MaterialTake>& taken);

/// What is there of what is taken, and what is lacking; both without those of which it is nothing.
struct ShelfSplit {
    std::vector<MaterialTake> there;
    std::vector<MaterialTake> lacks;

    friend bool operator==(const ShelfSplit&, const ShelfSplit&) = default;
};

/// `shelf` by material, 0 or more of each; what is not in it is not there.
ShelfSplit splitBy(const std::vector<MaterialTake>& takes, const std::unordered_map<base::Id, std::int64_t>& shelf);

} // namespace sp::needs
