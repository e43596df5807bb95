// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/pattern.h"

#include <cstddef>
#include <vector>

namespace sp::layout {

/// The lengths that matter: sums of piece sides up to a limit, ascending, beginning with 0. Any packing can
/// be pushed left and down until every edge lies on such a sum, so a region counts only through the sums just
/// below its sides (normal sizes, Christofides and Whitlock 1977). A size is named by its index.
class Grid {
  public:
    /// Sums up to max(width, height). `fits` is false when there are more than `most`; then nothing else is
    /// set.
    Grid(const Problem& problem, int most);

    bool fits() const { return m_fits; }
    int size() const { return static_cast<int>(m_sums.size()); }
    Tick at(int index) const { return m_sums[static_cast<std::size_t>(index)]; }
    /// The greatest sum <= length; length >= 0.
    int below(Tick length) const;
    /// The greatest sum that fits beside sum `part` in sum `whole`; part <= whole.
    int rest(int whole, int part) const {
        return m_rests[static_cast<std::size_t>(whole) * (static_cast<std::size_t>(whole) + 1) / 2 +
                       static_cast<std::size_t>(part)];
    }
    /// Where a cut through sum `whole` is worth trying: sums strictly between 0 and it that are the best rest
    /// of their own rest (raster points, Scheithauer and Terno 1996).
    const std::vector<int>& cuts(int whole) const { return m_cuts[static_cast<std::size_t>(whole)]; }

    Tick sideA() const { return m_problem.sideA; }
    Tick sideB() const { return m_problem.sideB; }

  private:
    Problem m_problem;
    bool m_fits = false;
    std::vector<Tick> m_sums;
    std::vector<std::uint16_t> m_rests;
    std::vector<std::vector<int>> m_cuts;
};

/// All sums a * sideA + b * sideB <= limit, ascending, 0 first; empty when there are more than `most`. The
/// sides are coprime.
std::vector<Tick> sumsUpTo(Tick limit, Tick sideA, Tick sideB, std::size_t most);

} // namespace sp::layout
