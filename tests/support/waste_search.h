// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>

namespace sp::support {

/// The most a x b rectangles (quarter turns allowed) in a region of unit cells, by trying everything: the
/// first free cell, row by row, is the corner of one way round, of the other, or stays empty, and only so
/// many may stay empty. Slow and plainly right. At most 32 columns and 32 rows.
class WasteSearch {
  public:
    WasteSearch(int columns, int rows, int a, int b)
        : m_columns(columns)
        , m_rows(rows)
        , m_a(a)
        , m_b(b) {}

    /// Takes away the cells from (column, row) on, to the right and upwards.
    void cutCorner(int column, int row) {
        for (int y = row; y < m_rows; ++y) m_taken[index(y)] |= run(column, m_columns - column);
    }
    int most() {
        int free = 0;
        for (int y = 0; y < m_rows; ++y) free += m_columns - __builtin_popcountll(m_taken[index(y)]);
        int count = free / (m_a * m_b);
        while (!holds(0, count, free - count * m_a * m_b)) --count;
        return count;
    }

  private:
    static std::size_t index(int row) { return static_cast<std::size_t>(row); }
    static std::uint64_t run(int from, int length) { return ((std::uint64_t{1} << length) - 1) << from; }

    bool place(int x, int y, int w, int h, int left, int waste) {
        if (x + w > m_columns || y + h > m_rows) return false;
        for (int row = y; row < y + h; ++row) {
            if ((m_taken[index(row)] & run(x, w)) != 0) return false;
        }
        for (int row = y; row < y + h; ++row) m_taken[index(row)] ^= run(x, w);
        const bool found = holds(y, left - 1, waste);
        for (int row = y; row < y + h; ++row) m_taken[index(row)] ^= run(x, w);
        return found;
    }
    bool holds(int y, int left, int waste) {
        if (left <= 0) return true;
        while (y < m_rows && m_taken[index(y)] == run(0, m_columns)) ++y;
        if (y == m_rows) return false;
        const int x = __builtin_ctzll(~m_taken[index(y)]);
        if (place(x, y, m_a, m_b, left, waste)) return true;
        if (m_a != m_b && place(x, y, m_b, m_a, left, waste)) return true;
        if (waste == 0) return false;
        m_taken[index(y)] ^= run(x, 1);
        const bool found = holds(y, left, waste - 1);
        m_taken[index(y)] ^= run(x, 1);
        return found;
    }

    int m_columns, m_rows, m_a, m_b;
    std::array<std::uint64_t, 32> m_taken{};
};

} // namespace sp::support
