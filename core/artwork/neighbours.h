// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/geometry.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace sp::artwork {

/// Finds what is near a place: a grid of square cells over `box`, hashed where a cell each would be too many.
/// What lies outside shares the cells at its edge (or those 1e15 away).
class Neighbours {
  public:
    /// `cell` > 0 is the side of a cell, `expected` how many places will be added.
    Neighbours(const Box& box, double cell, std::size_t expected)
        : m_left(box.isEmpty() ? 0 : box.left)
        , m_top(box.isEmpty() ? 0 : box.top)
        , m_perUnit(1 / cell) {
        const double across = std::floor(box.width() * m_perUnit) + 1;
        const double down = std::floor(box.height() * m_perUnit) + 1;
        std::size_t slots = 64;
        while (slots < 2 * expected) slots *= 2;
        m_isDense = across * down <= 4 * static_cast<double>(slots);
        m_lastX = m_isDense ? across - 1 : kMaxCellCoordinate;
        m_lastY = m_isDense ? down - 1 : kMaxCellCoordinate;
        m_first = m_isDense ? 0 : -kMaxCellCoordinate;
        m_heads.assign(m_isDense ? static_cast<std::size_t>(across * down) : slots, kNone);
        m_entries.reserve(expected);
    }

    void add(Point at, std::uint32_t value) {
        const std::int64_t x = columnOf(at.x);
        const std::int64_t y = rowOf(at.y);
        std::uint32_t& head = m_heads[slotOf(x, y)];
        m_entries.push_back({x, y, value, head});
        head = static_cast<std::uint32_t>(m_entries.size() - 1);
    }

    /// Calls `see(value)` for everything within `reach` in both directions, and some a little farther; stops
    /// when it returns false.
    template<class See>
    void near(Point at, double reach, See see) const {
        const std::int64_t left = columnOf(at.x - reach);
        const std::int64_t right = columnOf(at.x + reach);
        const std::int64_t bottom = rowOf(at.y + reach);
        for (std::int64_t y = rowOf(at.y - reach); y <= bottom; ++y)
            for (std::int64_t x = left; x <= right; ++x)
                for (std::uint32_t i = m_heads[slotOf(x, y)]; i != kNone; i = m_entries[i].next)
                    if (m_entries[i].x == x && m_entries[i].y == y && !see(m_entries[i].value)) return;
    }

  private:
    static constexpr std::uint32_t kNone = 0xffffffff;
    static constexpr double kMaxCellCoordinate = 1e15;
    struct Entry {
        std::int64_t x;
        std::int64_t y;
        std::uint32_t value;
        std::uint32_t next;
    };

    std::int64_t cellOf(double steps, double last) const {
        const double within = std::clamp(steps, m_first, last);
        const auto cell = static_cast<std::int64_t>(within); // towards zero
        return cell - (static_cast<double>(cell) > within ? 1 : 0);
    }
    std::int64_t columnOf(double x) const { return cellOf((x - m_left) * m_perUnit, m_lastX); }
    std::int64_t rowOf(double y) const { return cellOf((y - m_top) * m_perUnit, m_lastY); }
    std::size_t slotOf(std::int64_t x, std::int64_t y) const {
        if (m_isDense) return static_cast<std::size_t>(y * (static_cast<std::int64_t>(m_lastX) + 1) + x);
        const auto mixed = static_cast<std::uint64_t>(x) * 0x9e3779b97f4a7c15ULL ^
                           static_cast<std::uint64_t>(y) * 0xc2b2ae3d27d4eb4fULL;
        return (mixed ^ (mixed >> 29)) & (m_heads.size() - 1);
    }

    double m_left;
    double m_top;
    double m_perUnit;
    double m_first = 0;
    double m_lastX = 0;
    double m_lastY = 0;
    bool m_isDense = false;
    std::vector<std::uint32_t> m_heads;
    std::vector<Entry> m_entries;
};

} // namespace sp::artwork
