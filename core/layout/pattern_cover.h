// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed_search.h"

namespace sp::layout {

/// One way to lay a bin: how many of each kind, `Laid::box` naming the kind.
struct BinWay {
    std::size_t bin = 0;
    std::vector<std::int64_t> counts;
    std::vector<Laid> laid;
};

/// Fills bins by patterns: ways to lay one bin, made for the prices that a linear programme over those known asks for
/// (P. Gilmore and R. Gomory, "A linear programming approach to the cutting stock problem", 1961, from memory), by cuts
/// from side to side and by skylines; then whole bins of them, and what is left by search among the same patterns and
/// by `searchBins`. Good where many boxes are equal, or bins have several sizes. `ways` are those known, and all that
/// were made are added to them. Not whole where there are too many kinds of boxes for it, or the bins do not suffice.
BinPlan coverWithPatterns(const std::vector<Box>& boxes, const std::vector<Bin>& bins, bool mayTurn,
                          std::int64_t enough, std::vector<BinWay>& ways, Effort& effort);

/// More different boxes are left to the other ways.
inline constexpr std::size_t kMaxPatternKinds = 24;

} // namespace sp::layout
