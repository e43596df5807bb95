// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/grid.h"

#include <array>
#include <cstdint>
#include <utility>
#include <vector>

namespace sp::layout {

/// The best layouts of all rectangles of a grid that are made by cutting in two or into a pinwheel of five,
/// each part cut again to any depth. Source: E. G. Birgin, R. D. Lobato, R. Morabito, JORS 61 (2010) 306-320,
/// section on the recursive five-block algorithm; the pruning by sums of bounds is our own. Every rectangle
/// is solved once. `work` counts tried cuts; when it is over, what was found so far stays valid. Both the
/// grid and the work must outlive this.
class FiveBlock {
  public:
    FiveBlock(const Grid& grid, Work& work);

    /// The most pieces found in sum `width` x sum `height`; solves it when it is not solved yet.
    int solve(int width, int height);
    /// What solve would start from: what is known now, at least the better of the two plain layouts.
    int lower(int width, int height) { return at(width, height).lower; }
    /// No packing has more: Barnes' bound, and the partition bound once the rectangle has been solved.
    int upper(int width, int height) { return at(width, height).upper; }
    /// Tells a bound from elsewhere, so that the search stops there.
    void cap(int width, int height, int bound);
    /// Lays what `lower` counts into `frame`.
    void place(int width, int height, const Frame& frame, std::vector<Spot>& spots);

  private:
    enum class How : std::uint8_t { Unknown, Upright, Turned, Beside, Above, Pinwheel };
    struct Node {
        std::int32_t lower = 0;
        std::int32_t upper = 0;
        How how = How::Unknown;
        bool isSolved = false;
        std::uint16_t x1 = 0, x2 = 0, y1 = 0, y2 = 0;
    };

    Node& at(int width, int height);
    void start(Node& node, int width, int height) const;
    void tryGuillotine(Node& node, int width, int height);
    void tryPinwheels(Node& node, int width, int height);
    void tryPinwheel(Node& node, int width, int height, int x1, int x2, int y1, int y2);
    void tryPlainPinwheels(Node& node, int width, int height, std::int64_t most);
    std::array<std::pair<int, int>, 5> pinwheel(int width, int height, int x1, int x2, int y1, int y2) const;
    static void keepPinwheel(Node& node, int count, int x1, int x2, int y1, int y2);
    int reach(int width, int height);
    void placePlain(const Node& node, int width, int height, const Frame& frame, std::vector<Spot>& spots) const;

    const Grid& m_grid;
    Work& m_work;
    bool m_isFirst = true;
    std::vector<Node> m_nodes; // width >= height, row by row
};

} // namespace sp::layout
