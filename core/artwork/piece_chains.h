// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/subpath.h"

#include <cstdint>
#include <vector>

namespace sp::artwork {

/// Single lines and arcs, as drawing programs leave behind when they take outlines apart. Those of one ink that meet
/// end to end, each end with one other, make one outline again; where three or more meet it is not clear which belong
/// together, and the outlines end there.
class PieceChains {
  public:
    std::size_t size() const { return m_pieces.size(); }

    void addLine(Point from, Point to, std::uint32_t ink);
    /// See Subpath::arc; `start` and `sweep` in radians on the unit circle.
    void addArc(const Matrix& fromUnitCircle, double start, double sweep, std::uint32_t ink);

    /// Adds the outlines to the drawing, open ones first, and forgets the pieces. Ends meet within a
    /// millionth of the extent of all pieces: drawing programs write at least six digits.
    void joinInto(DrawingBuilder& builder);

  private:
    struct Piece {
        Point ends[2];
        Matrix fromUnitCircle;
        double start = 0;
        double sweep = 0; ///< 0: a line
        std::uint32_t ink = 0;
        std::uint32_t nodes[2] = {0, 0};
        bool taken = false;
    };
    struct Node {
        Point at;
        std::uint32_t ink = 0;
        std::uint32_t degree = 0;
        std::size_t pieces[2] = {0, 0}; ///< the first two that end here
    };

    void findNodes();
    bool isPassed(std::uint32_t node) const { return m_nodes[node].degree == 2; }
    void follow(std::size_t piece, int entry, DrawingBuilder& builder);
    void append(const Piece& piece, int entry);

    std::vector<Piece> m_pieces;
    std::vector<Node> m_nodes;
    Subpath m_path;
};

} // namespace sp::artwork
