// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed.h"
#include "core/layout/mixed_pattern.h"

namespace sp::layout {

/// A kind of bin, gap added and margin taken off.
struct Bin {
    std::int64_t width = 0;
    std::int64_t height = 0;
    std::int64_t price = 0; ///< micro-units
    std::int64_t left = 0;  ///< how many can be had
};

struct FilledBin {
    std::size_t kind = 0;
    std::vector<Laid> laid;
};

/// All boxes in bins, or not all when the bins do not suffice.
struct BinPlan {
    std::vector<FilledBin> bins;
    bool isWhole = false;
    std::int64_t cost = 0;
    double spread = 0; ///< among plans of equal cost: how unevenly the bins are filled (more is better)
};

/// Steps left and the question whether to stop; both searches share one.
class Effort {
  public:
    explicit Effort(const MixedEffort& effort)
        : m_effort(effort)
        , m_left(effort.steps) {}
    std::int64_t& steps() { return m_left; }
    /// A share of what is left, stopped by the same question.
    MixedEffort part(std::int64_t share) const { return {m_left / share, m_effort.outOfTime}; }
    bool isOver() { return m_left <= 0 || (m_effort.outOfTime && m_effort.outOfTime()); }

  private:
    const MixedEffort& m_effort;
    std::int64_t m_left;
};

/// Searches the order of the boxes for the cheapest bins; stops at a cost of `enough`.
BinPlan searchBins(const std::vector<Box>& boxes, const std::vector<Bin>& bins, bool mayTurn, std::int64_t enough,
                   Effort& effort);

/// Searches the order of the boxes for the shortest strip; stops at `enough`.
Filling searchStrip(const std::vector<Box>& boxes, std::int64_t width, bool mayTurn, std::int64_t enough,
                    Effort& effort);

} // namespace sp::layout
