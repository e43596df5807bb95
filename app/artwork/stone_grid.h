// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/picture.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace sp::artwork {

/// Finds the stones near a part of a picture: a square grid of cells, each with its stones in the order given.
class StoneGrid {
  public:
    explicit StoneGrid(const std::vector<Picture::SetStone>& stones) {
        for (const auto& stone : stones) {
            m_box.add(stone.centre);
            m_reach = std::max(m_reach, stone.diameter / 2);
        }
        if (m_box.isEmpty()) return;
        constexpr double kAcross = 128;
        m_cell = std::max({m_box.width() / kAcross, m_box.height() / kAcross, 2 * m_reach, 1e-3});
        m_columns = cell(m_box.right - m_box.left) + 1;
        m_rows = cell(m_box.bottom - m_box.top) + 1;
        m_starts.assign(static_cast<std::size_t>(m_columns) * static_cast<std::size_t>(m_rows) + 1, 0);
        for (const auto& stone : stones) ++m_starts[at(stone.centre) + 1];
        for (std::size_t i = 1; i < m_starts.size(); ++i) m_starts[i] += m_starts[i - 1];
        m_indices.resize(stones.size());
        auto next = m_starts;
        for (std::size_t i = 0; i < stones.size(); ++i) m_indices[next[at(stones[i].centre)]++] = static_cast<int>(i);
    }

    /// Calls `work` with the index of every stone that may reach into `part`.
    template<class Work>
    void visit(const Box& part, Work work) const {
        if (m_box.isEmpty()) return;
        const int left = bounded(part.left - m_reach - m_box.left, m_columns);
        const int right = bounded(part.right + m_reach - m_box.left, m_columns);
        const int top = bounded(part.top - m_reach - m_box.top, m_rows);
        const int bottom = bounded(part.bottom + m_reach - m_box.top, m_rows);
        for (int row = top; row <= bottom; ++row)
            for (int column = left; column <= right; ++column) {
                const auto index = static_cast<std::size_t>(row) * static_cast<std::size_t>(m_columns) +
                                   static_cast<std::size_t>(column);
                for (auto i = m_starts[index]; i < m_starts[index + 1]; ++i) work(m_indices[i]);
            }
    }

  private:
    int cell(double along) const { return static_cast<int>(along / m_cell); }
    int bounded(double along, int cells) const {
        return static_cast<int>(std::clamp(std::floor(along / m_cell), 0.0, static_cast<double>(cells - 1)));
    }
    std::size_t at(Point place) const {
        return static_cast<std::size_t>(bounded(place.y - m_box.top, m_rows)) * static_cast<std::size_t>(m_columns) +
               static_cast<std::size_t>(bounded(place.x - m_box.left, m_columns));
    }

    Box m_box;
    double m_reach = 0;
    double m_cell = 1;
    int m_columns = 1;
    int m_rows = 1;
    std::vector<std::size_t> m_starts;
    std::vector<int> m_indices;
};

} // namespace sp::artwork
