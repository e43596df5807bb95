// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/chain.h"
#include "core/layout/five_block.h"

#include <memory>
#include <vector>

namespace sp::layout {

/// Strips across a sheet or roll: of every length that matters, up to a limit, the most pieces found in it. A
/// strip as wide as the roll is one five-block layout when the roll's width has at most kMaxSums sums; on a
/// wider roll it is a chain of five-block tiles of that length. For long rolls and very small pieces, where
/// the whole is too much.
class Strips {
  public:
    /// `problem.height` is what the strips lie across; strips are no longer than `problem.width`. At least
    /// one piece fits, and the sides differ. Both plain rows are always among the strips.
    Strips(const Problem& problem, Work& work);

    /// The strips worth using. Never empty.
    const std::vector<Link>& links() const { return m_links; }
    /// Adds the pieces of one strip that begins at `x`, until there are `most` spots.
    void place(std::size_t link, Tick x, std::int64_t most, std::vector<Spot>& spots);
    /// Adds `parts` one after the other, until there are `most` spots.
    void placeAll(const std::vector<std::pair<std::size_t, std::int64_t>>& parts, std::int64_t most,
                  std::vector<Spot>& spots);

  private:
    /// How a link is made: a plain row (length 0), one rectangle length x tiles[0] of the grid, or parts of
    /// tiles.
    struct Strip {
        int length = 0;
        std::vector<std::pair<std::size_t, std::int64_t>> parts;
        std::vector<int> tiles;
    };
    void addRow(Tick along, Tick across);
    void addTiled(int length);
    void add(const Link& link, Strip strip);

    Problem m_problem;
    std::unique_ptr<Grid> m_grid;
    std::unique_ptr<FiveBlock> m_five;
    std::vector<Link> m_links;
    std::vector<Strip> m_strips;
};

} // namespace sp::layout
