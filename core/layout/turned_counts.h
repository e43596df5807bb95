// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/bar_limits.h"

#include <cstdint>
#include <vector>

namespace sp::layout {

/// Counts of boxes in one bin, told apart by how they lie: limits on those rule out counts that limits on the counts
/// alone let pass, since each box lies one way or the other and none lies partly so.
class TurnedCounts {
  public:
    TurnedCounts(const std::vector<BoxKind>& kinds, std::int64_t width, std::int64_t height, bool mayTurn);

    /// True when no way round is left for the counts; remembers limits found. `steps` are lowered by the work done;
    /// when they run out, false.
    bool isRuledOut(const std::vector<std::int64_t>& counts, std::int64_t& steps);

    /// By kind twice: as it is, then turned.
    const std::vector<CountLimit>& limits() const { return m_limits; }

  private:
    bool split(const std::vector<std::int64_t>& counts, std::size_t k, std::int64_t& steps);
    bool allows(std::size_t known) const;

    std::vector<BoxKind> m_ways; ///< by kind twice
    std::vector<char> m_fits;    ///< whether it may lie so
    std::int64_t m_width;
    std::int64_t m_height;
    std::vector<CountLimit> m_limits;
    std::vector<std::int64_t> m_now; ///< by way
};

} // namespace sp::layout
