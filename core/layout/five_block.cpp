// SPDX-License-Identifier: MIT
#include "core/layout/five_block.h"

#include "core/layout/bounds.h"

#include <algorithm>
#include <array>
#include <utility>

namespace sp::layout {

namespace {

constexpr std::int64_t kPlainFirst = 1'000'000; // plain pinwheels looked at for the whole sheet
constexpr std::int64_t kPlainPart = 300;        // and for a part of it
constexpr Tick kPartSide = 12;                  // quick; the whole sheet is looked at more closely by its caller

} // namespace

FiveBlock::FiveBlock(const Grid& grid, Work& work)
    : m_grid(grid)
    , m_work(work)
    , m_nodes(static_cast<std::size_t>(grid.size()) * (static_cast<std::size_t>(grid.size()) + 1) / 2) {}

FiveBlock::Node& FiveBlock::at(int width, int height) {
    if (width < height) std::swap(width, height);
    const auto row = static_cast<std::size_t>(width);
    Node& node = m_nodes[row * (row + 1) / 2 + static_cast<std::size_t>(height)];
    if (node.how == How::Unknown) start(node, width, height);
    return node;
}

void FiveBlock::start(Node& node, int width, int height) const {
    const Tick across = m_grid.at(width);
    const Tick up = m_grid.at(height);
    const Tick a = m_grid.sideA();
    const Tick b = m_grid.sideB();
    const auto upright = static_cast<std::int32_t>((across / a) * (up / b));
    const auto turned = static_cast<std::int32_t>((across / b) * (up / a));
    node.how = upright >= turned ? How::Upright : How::Turned;
    node.lower = std::max(upright, turned);
    node.upper = static_cast<std::int32_t>(barnesBound({across, up, a, b}));
    // One row only: the side that is too short for a second piece decides.
    if (up < std::min(a, b)) node.upper = 0;
    node.isSolved = node.lower == node.upper;
}

int FiveBlock::solve(int width, int height) {
    if (width < height) std::swap(width, height);
    Node& node = at(width, height);
    if (node.isSolved) return node.lower;
    node.isSolved = true; // no part of a cut is the whole, so nobody asks again meanwhile
    const Problem here{m_grid.at(width), m_grid.at(height), m_grid.sideA(), m_grid.sideB()};
    node.upper = std::min(node.upper, static_cast<std::int32_t>(relaxedBound(here, node.lower, kPartSide)));
    if (node.lower < node.upper) tryPlainPinwheels(node, width, height, m_isFirst ? kPlainFirst : kPlainPart);
    m_isFirst = false;
    if (node.lower < node.upper) tryGuillotine(node, width, height);
    if (node.lower < node.upper) tryPinwheels(node, width, height);
    return node.lower;
}

void FiveBlock::cap(int width, int height, int bound) {
    Node& node = at(width, height);
    node.upper = std::min(node.upper, bound);
    node.isSolved = node.lower == node.upper;
}

/// What a rectangle can still give: its answer once solved, else its bound.
int FiveBlock::reach(int width, int height) {
    const Node& node = at(width, height);
    return node.isSolved ? node.lower : node.upper;
}

/// Pinwheels whose four outer blocks are plain: the blocks below left and above right lie, the others stand,
/// each as many long sides long as wanted. Few, quick, and often already the best (E. E. Bischoff and W. B.
/// Dowsland, JORS 33 (1982) 271-278 [from memory]).
void FiveBlock::tryPlainPinwheels(Node& node, int width, int height, std::int64_t most) {
    const Tick side = std::max(m_grid.sideA(), m_grid.sideB());
    const Tick across = m_grid.at(width);
    const Tick up = m_grid.at(height);
    const Tick columns = across / side;
    const Tick rows = up / side;
    if (columns * columns * rows * rows > most || !m_work.spend(columns * columns * rows * rows)) return;
    std::vector<int> fromLeft, fromRight, fromBottom, fromTop;
    for (Tick k = 1; k <= columns; ++k) {
        fromLeft.push_back(m_grid.below(k * side));
        fromRight.push_back(m_grid.below(across - k * side));
    }
    for (Tick k = 1; k <= rows; ++k) {
        fromBottom.push_back(m_grid.below(k * side));
        fromTop.push_back(m_grid.below(up - k * side));
    }
    for (const int x2 : fromLeft) {
        for (const int x1 : fromRight) {
            if (x1 == 0 || x1 > x2 || x2 == width) continue;
            for (const int y2 : fromBottom) {
                for (const int y1 : fromTop) {
                    if (y1 == 0 || y1 > y2 || y2 == height) continue;
                    int sum = 0;
                    for (const auto& [w, h] : pinwheel(width, height, x1, x2, y1, y2)) sum += at(w, h).lower;
                    if (sum <= node.lower) continue;
                    keepPinwheel(node, sum, x1, x2, y1, y2);
                    if (node.lower == node.upper) return;
                }
            }
        }
    }
}

void FiveBlock::tryGuillotine(Node& node, int width, int height) {
    const auto cut = [&](int whole, int other, How how) {
        for (const int part : m_grid.cuts(whole)) {
            const int rest = m_grid.rest(whole, part);
            if (part > rest || !m_work.spend(1)) break;
            if (reach(part, other) + reach(rest, other) <= node.lower) continue;
            const int first = solve(part, other);
            if (first + reach(rest, other) <= node.lower) continue;
            const int both = first + solve(rest, other);
            if (both <= node.lower) continue;
            node.lower = both;
            node.how = how;
            node.x1 = static_cast<std::uint16_t>(part);
            if (node.lower == node.upper) return;
        }
    };
    cut(width, height, How::Beside);
    if (node.lower < node.upper) cut(height, width, How::Above);
}

void FiveBlock::tryPinwheels(Node& node, int width, int height) {
    const Tick across = m_grid.at(width);
    const Tick up = m_grid.at(height);
    const double piece = static_cast<double>(m_grid.sideA()) * static_cast<double>(m_grid.sideB());
    const double area = static_cast<double>(across) * static_cast<double>(up);
    const auto& xs = m_grid.cuts(width);
    const auto& ys = m_grid.cuts(height);
    for (std::size_t i = 0; i < xs.size(); ++i) {
        for (std::size_t j = i + 1; j < xs.size() && m_grid.at(xs[i]) + m_grid.at(xs[j]) <= across; ++j) {
            const int x1 = xs[i];
            const int x2 = xs[j];
            for (std::size_t k = 0; k < ys.size(); ++k) {
                const int y1 = ys[k];
                const int left = reach(x1, m_grid.rest(height, y1));
                const int bottom = reach(x2, y1);
                // what is left beside the first two, were it filled without waste
                const double used = static_cast<double>(m_grid.at(x1)) * static_cast<double>(up - m_grid.at(y1)) +
                                    static_cast<double>(m_grid.at(x2)) * static_cast<double>(m_grid.at(y1));
                const double more = (area - used) / piece + 1e-6;
                if (!m_work.spend(1)) return;
                if (left + bottom + static_cast<int>(more) <= node.lower) continue;
                if (!m_work.spend(static_cast<std::int64_t>(ys.size() - k))) return;
                for (std::size_t m = k + 1; m < ys.size(); ++m) {
                    tryPinwheel(node, width, height, x1, x2, y1, ys[m]);
                    if (node.lower == node.upper) return;
                }
            }
        }
    }
}

/// The parts: above left, below left, above right, below right, middle.
std::array<std::pair<int, int>, 5> FiveBlock::pinwheel(int width, int height, int x1, int x2, int y1, int y2) const {
    using Part = std::pair<int, int>;
    return {Part{x1, m_grid.rest(height, y1)}, Part{x2, y1}, Part{m_grid.rest(width, x1), m_grid.rest(height, y2)},
            Part{m_grid.rest(width, x2), y2}, Part{m_grid.rest(x2, x1), m_grid.rest(y2, y1)}};
}

void FiveBlock::keepPinwheel(Node& node, int count, int x1, int x2, int y1, int y2) {
    node.lower = count;
    node.how = How::Pinwheel;
    node.x1 = static_cast<std::uint16_t>(x1);
    node.x2 = static_cast<std::uint16_t>(x2);
    node.y1 = static_cast<std::uint16_t>(y1);
    node.y2 = static_cast<std::uint16_t>(y2);
}

void FiveBlock::tryPinwheel(Node& node, int width, int height, int x1, int x2, int y1, int y2) {
    const auto parts = pinwheel(width, height, x1, x2, y1, y2);
    int sum = 0;
    for (const auto& [w, h] : parts) sum += reach(w, h);
    for (const auto& [w, h] : parts) {
        if (sum <= node.lower) return;
        sum -= reach(w, h);
        sum += solve(w, h);
    }
    if (sum > node.lower) keepPinwheel(node, sum, x1, x2, y1, y2);
}

void FiveBlock::place(int width, int height, const Frame& frame, std::vector<Spot>& spots) {
    if (width < height) return place(height, width, frame.exchanged(), spots);
    const Node node = at(width, height);
    if (node.lower == 0) return;
    const Tick across = m_grid.at(width);
    const Tick up = m_grid.at(height);
    const auto part = [&](int w, int h, Tick x, Tick y) { place(w, h, frame.part(x, y, false, false), spots); };
    switch (node.how) {
    case How::Unknown: break;
    case How::Upright:
    case How::Turned: placePlain(node, width, height, frame, spots); break;
    case How::Beside:
        part(node.x1, height, 0, 0);
        part(m_grid.rest(width, node.x1), height, m_grid.at(node.x1), 0);
        break;
    case How::Above:
        part(width, node.x1, 0, 0);
        part(width, m_grid.rest(height, node.x1), 0, m_grid.at(node.x1));
        break;
    case How::Pinwheel: {
        const Tick x1 = m_grid.at(node.x1);
        const Tick x2 = m_grid.at(node.x2);
        const Tick y1 = m_grid.at(node.y1);
        const Tick y2 = m_grid.at(node.y2);
        part(node.x1, m_grid.below(up - y1), 0, y1);
        part(m_grid.below(across - x1), m_grid.below(up - y2), x1, y2);
        part(m_grid.below(across - x2), node.y2, x2, 0);
        part(node.x2, node.y1, 0, 0);
        part(m_grid.rest(node.x2, node.x1), m_grid.rest(node.y2, node.y1), x1, y1);
        break;
    }
    }
}

void FiveBlock::placePlain(const Node& node, int width, int height, const Frame& frame,
                           std::vector<Spot>& spots) const {
    const bool turned = node.how == How::Turned;
    const Tick spanX = turned ? m_grid.sideB() : m_grid.sideA();
    const Tick spanY = turned ? m_grid.sideA() : m_grid.sideB();
    for (Tick y = 0; y + spanY <= m_grid.at(height); y += spanY) {
        for (Tick x = 0; x + spanX <= m_grid.at(width); x += spanX) {
            spots.push_back(frame.spot(x, y, spanX, spanY, turned));
        }
    }
}

} // namespace sp::layout
