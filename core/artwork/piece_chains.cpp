// SPDX-License-Identifier: MIT
#include "core/artwork/piece_chains.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace sp::artwork {

namespace {

constexpr double kMeets = 1e-6;

std::uint64_t cellKey(std::int64_t column, std::int64_t row, std::uint32_t ink) {
    const auto mix = [](std::uint64_t v) { return (v ^ (v >> 29)) * 0xBF58476D1CE4E5B9ULL; };
    return mix(static_cast<std::uint64_t>(column) + mix(static_cast<std::uint64_t>(row) + mix(ink)));
}

} // namespace

void PieceChains::addLine(Point from, Point to, std::uint32_t ink) {
    Piece piece;
    piece.ends[0] = from;
    piece.ends[1] = to;
    piece.ink = ink;
    m_pieces.push_back(piece);
}

void PieceChains::addArc(const Matrix& fromUnitCircle, double start, double sweep, std::uint32_t ink) {
    Piece piece;
    piece.ends[0] = fromUnitCircle({std::cos(start), std::sin(start)});
    piece.ends[1] = fromUnitCircle({std::cos(start + sweep), std::sin(start + sweep)});
    piece.fromUnitCircle = fromUnitCircle;
    piece.start = start;
    piece.sweep = sweep;
    piece.ink = ink;
    m_pieces.push_back(piece);
}

void PieceChains::findNodes() {
    Box extent;
    for (const auto& piece : m_pieces)
        for (const Point end : piece.ends) extent.add(end);
    const double reach = std::max({extent.width(), extent.height(), 1e-9}) * kMeets;
    std::unordered_multimap<std::uint64_t, std::uint32_t> cells;
    const auto nodeAt = [&](Point at, std::uint32_t ink) {
        const auto column = static_cast<std::int64_t>(std::floor((at.x - extent.left) / (2 * reach)));
        const auto row = static_cast<std::int64_t>(std::floor((at.y - extent.top) / (2 * reach)));
        for (const std::int64_t down : {-1, 0, 1})
            for (const std::int64_t across : {-1, 0, 1}) {
                const auto [first, last] = cells.equal_range(cellKey(column + across, row + down, ink));
                for (auto it = first; it != last; ++it)
                    if (m_nodes[it->second].ink == ink && distance(m_nodes[it->second].at, at) <= reach)
                        return it->second;
            }
        const auto node = static_cast<std::uint32_t>(m_nodes.size());
        m_nodes.push_back({at, ink, 0, {0, 0}});
        cells.emplace(cellKey(column, row, ink), node);
        return node;
    };
    for (std::size_t i = 0; i < m_pieces.size(); ++i)
        for (int end = 0; end < 2; ++end) {
            const auto number = nodeAt(m_pieces[i].ends[end], m_pieces[i].ink);
            m_pieces[i].nodes[end] = number;
            auto& node = m_nodes[number];
            if (node.degree < 2) node.pieces[node.degree] = i;
            ++node.degree;
        }
}

void PieceChains::append(const Piece& piece, int entry) {
    if (piece.sweep == 0) {
        m_path.lineTo(piece.ends[1 - entry]);
        return;
    }
    const double angle = entry == 0 ? piece.start : piece.start + piece.sweep;
    m_path.arc(piece.fromUnitCircle, {std::cos(angle), std::sin(angle)}, entry == 0 ? piece.sweep : -piece.sweep);
}

/// From the piece's end `entry` on, as long as it is clear where it goes.
void PieceChains::follow(std::size_t first, int entry, DrawingBuilder& builder) {
    const auto started = m_pieces[first].nodes[entry];
    m_path.start(m_pieces[first].ends[entry]);
    std::size_t at = first;
    while (true) {
        auto& piece = m_pieces[at];
        piece.taken = true;
        builder.countSegments(1);
        append(piece, entry);
        const auto reached = piece.nodes[1 - entry];
        if (reached == started) m_path.close();
        if (reached == started || !isPassed(reached)) break;
        const auto& node = m_nodes[reached];
        const std::size_t next = node.pieces[0] == at ? node.pieces[1] : node.pieces[0];
        if (m_pieces[next].taken) break;
        entry = m_pieces[next].nodes[0] == reached ? 0 : 1;
        at = next;
    }
    m_path.addTo(builder, false, m_pieces[first].ink, builder.nextShape());
}

void PieceChains::joinInto(DrawingBuilder& builder) {
    findNodes();
    // Chains with an end first, from that end; what is left goes round.
    for (const bool fromAnEnd : {true, false})
        for (std::size_t i = 0; i < m_pieces.size() && !builder.isFull(); ++i) {
            if (m_pieces[i].taken) continue;
            const auto& nodes = m_pieces[i].nodes;
            if (!fromAnEnd || !isPassed(nodes[0]))
                follow(i, 0, builder);
            else if (!isPassed(nodes[1]))
                follow(i, 1, builder);
        }
    m_pieces.clear();
    m_nodes.clear();
}

} // namespace sp::artwork
