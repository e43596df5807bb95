// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/geometry.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace sp::artwork {

/// Finds what is near a place: a hashed grid of square cells. What lies farther than 1e15
/// cells from the origin shares the cells out there.
class Neighbours {
  public:
    /// `cell` > 0 is the side of a cell, `expected` how many places will be added.
    Neighbours(double cell, std::size_t expected)
        : m_perUnit(1 / cell) {
        std::size_t size = 64;
        while (size < 2 * expected)
            size *= 2;
        m_heads.assign(size, kNone);
        m_entries.reserve(expected);
    }

    void add(Point at, std::uint32_t value) {
        const std::int64_t x = cellOf(at.x);
        const std::int64_t y = cellOf(at.y);
        std::uint32_t& head = m_heads[slotOf(x, y)];
        m_entries.push_back({x, y, value, head});
        head = static_cast<std::uint32_t>(m_entries.size() - 1);
    }

    /// Calls `see(value)` for everything within `reach` in both directions, and some a little farther; stops
    /// when it returns false.
    template<class See>
    void near(Point at, double reach, See see) const {
        const std::int64_t right = cellOf(at.x + reach);
        const std::int64_t bottom = cellOf(at.y + reach);
        for (std::int64_t y = cellOf(at.y - reach); y <= bottom; ++y)
            for (std::int64_t x = cellOf(at.x - reach); x <= right; ++x)
                for (std::uint32_t i = m_heads[slotOf(x, y)]; i != kNone; i = m_entries[i].next)
                    if (m_entries[i].x == x && m_entries[i].y == y && !see(m_entries[i].value)) return;
    }

  private:
    static constexpr std::uint32_t kNone = 0xffffffff;
    static constexpr double kFarthestCell = 1e15;
    struct Entry {
        std::int64_t x;
        std::int64_t y;
        std::uint32_t value;
        std::uint32_t next;
    };

    std::int64_t cellOf(double v) const {
        return static_cast<std::int64_t>(
            std::clamp(std::floor(v * m_perUnit), -kFarthestCell, kFarthestCell));
    }
    std::size_t slotOf(std::int64_t x, std::int64_t y) const {
        const auto mixed = static_cast<std::uint64_t>(x) * 0x9e3779b97f4a7c15ULL ^
                           static_cast<std::uint64_t>(y) * 0xc2b2ae3d27d4eb4fULL;
        return (mixed ^ (mixed >> 29)) & (m_heads.size() - 1);
    }

    double m_perUnit;
    std::vector<std::uint32_t> m_heads;
    std::vector<Entry> m_entries;
};

} // namespace sp::artwork
