// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/mixed_pattern.h"

#include <cstdint>
#include <vector>

namespace sp::layout {

/// Cuts a bin from side to side, again and again, for the most worth of boxes, each kind as often as wanted: where the
/// sums of sides end, so that no cut is missed. Answers the boxes' places with `Laid::box` naming the kind.
class Guillotine {
  public:
    /// Beyond so many sums along one side, only the largest of them are cut at.
    static constexpr std::size_t kMaxSums = 130;

    Guillotine(const std::vector<BoxKind>& kinds, std::int64_t width, std::int64_t height, bool mayTurn);

    /// `worth` of one box by kind, 0 or more. `steps` is lowered by the work done.
    std::vector<Laid> best(const std::vector<double>& worth, std::int64_t& steps);

  private:
    struct Cell {
        double worth = 0;
        int kind = -1; ///< one box of it, or
        bool turned = false;
        bool across = false; ///< cut at m_xs[cut], or m_ys[cut]
        int cut = -1;
    };
    void lay(std::size_t i, std::size_t j, std::int64_t x, std::int64_t y, std::vector<Laid>& laid) const;
    Cell& cell(std::size_t i, std::size_t j) { return m_cells[i * m_ys.size() + j]; }
    const Cell& cell(std::size_t i, std::size_t j) const { return m_cells[i * m_ys.size() + j]; }

    const std::vector<BoxKind>& m_kinds;
    bool m_mayTurn;
    std::vector<std::int64_t> m_xs; ///< rising, from 0
    std::vector<std::int64_t> m_ys;
    std::vector<std::vector<int>> m_restX; ///< by i, by cut: the largest sum no longer than what the cut leaves
    std::vector<std::vector<int>> m_restY;
    std::vector<Cell> m_cells;
};

} // namespace sp::layout
