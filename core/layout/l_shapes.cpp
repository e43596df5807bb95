// SPDX-License-Identifier: MIT
#include "core/layout/l_shapes.h"

#include "core/layout/bounds.h"

#include <algorithm>

namespace sp::layout {

LShapes::LShapes(const Grid& grid, FiveBlock& five, Work& work)
    : m_grid(grid)
    , m_five(five)
    , m_work(work)
    , m_perArea(1.0 / (static_cast<double>(grid.sideA()) * static_cast<double>(grid.sideB()))) {
    for (int index = 0; index < grid.size(); ++index) m_lengths.push_back(static_cast<double>(grid.at(index)));
}

LShapes::Part LShapes::keep(const Raw& raw) {
    auto [width, height, armX, armY] = raw;
    if (armX == 0) height = armY;
    if (armY == 0) width = armX;
    if (width == 0 || height == 0) return {};
    if (armX == 0 || armY == 0 || armX >= width || armY >= height) {
        armX = width;
        armY = height;
    }
    const bool exchanged = std::pair(width, armX) < std::pair(height, armY);
    if (exchanged) {
        std::swap(width, height);
        std::swap(armX, armY);
    }
    const auto byte = [](int index) { return static_cast<std::uint8_t>(index); };
    return {Shape{byte(width), byte(height), byte(armX), byte(armY)}, exchanged};
}

// Every cut leaves two parts that are again Ls. (X, Y) is the whole, (x, y) the inner corner, (a, b) the
// bend.
std::pair<LShapes::Raw, LShapes::Raw> LShapes::split(const Shape& whole, const Way& way) const {
    const auto [X, Y, x, y] = whole;
    const auto [cut, a, b, c] = way;
    const auto rest = [this](int of, int part) { return part >= of ? 0 : m_grid.rest(of, part); };
    switch (cut) {
    case Cut::None: break;
    case Cut::Upright: // straight up at a
        if (a < x) return {Raw{a, Y, a, Y}, Raw{rest(X, a), Y, rest(x, a), y}};
        return {Raw{a, Y, x, y}, Raw{rest(X, a), y, rest(X, a), y}};
    case Cut::Level: // straight across at a
        if (a < y) return {Raw{X, a, X, a}, Raw{X, rest(Y, a), x, rest(y, a)}};
        return {Raw{X, a, x, y}, Raw{x, rest(Y, a), x, rest(Y, a)}};
    case Cut::LeftThenUp: // from the left edge to (a, b), up to the step
        return {Raw{a, rest(Y, b), x, rest(y, b)}, Raw{X, y, rest(X, a), b}};
    case Cut::BottomThenRight: // from the bottom to (a, b), right to the step
        return {Raw{rest(X, a), b, rest(x, a), y}, Raw{x, Y, a, rest(Y, b)}};
    case Cut::TopThenRight: // from the top down to (a, b), right to the right edge
        return {Raw{rest(X, a), rest(Y, b), rest(x, a), rest(y, b)}, Raw{X, Y, a, b}};
    case Cut::CornerLeftDown: // from the inner corner left to a, down to b, left to the edge
        return {Raw{X, y, rest(X, a), b}, Raw{x, rest(Y, b), a, rest(Y, y)}};
    case Cut::CornerLeftUp: // left to a, up to b, left to the edge
        return {Raw{x, rest(Y, y), rest(x, a), rest(Y, b)}, Raw{X, b, a, y}};
    case Cut::CornerDownRight: // down to b, right to a, down to the bottom
        return {Raw{rest(X, x), y, rest(X, a), rest(y, b)}, Raw{a, Y, x, b}};
    case Cut::CornerDownLeft: // down to b, left to a, down to the bottom
        return {Raw{x, Y, a, rest(Y, b)}, Raw{rest(X, a), y, rest(X, x), b}};
    case Cut::ZigZag: // rectangle: from the top at a down to b, right to c, down
        return {Raw{c, Y, a, b}, Raw{rest(X, a), Y, rest(X, c), rest(Y, b)}};
    case Cut::ZigZagLevel: // rectangle: from the right at a left to b, up to c, left
        return {Raw{X, c, b, a}, Raw{X, rest(Y, a), rest(X, b), rest(Y, c)}};
    }
    return {};
}

std::pair<LShapes::Corner, LShapes::Corner> LShapes::corners(const Shape& whole, const Way& way) const {
    const Tick X = m_grid.at(whole.width);
    const Tick Y = m_grid.at(whole.height);
    const Tick x = m_grid.at(whole.armX);
    const Tick y = m_grid.at(whole.armY);
    const Tick a = m_grid.at(way.a);
    const Tick b = m_grid.at(way.b);
    switch (way.cut) {
    case Cut::None: break;
    case Cut::Upright: return {Corner{}, Corner{a, 0, false, false}};
    case Cut::Level: return {Corner{}, Corner{0, a, false, false}};
    case Cut::LeftThenUp: return {Corner{0, b, false, false}, Corner{X, 0, true, false}};
    case Cut::BottomThenRight: return {Corner{a, 0, false, false}, Corner{0, Y, false, true}};
    case Cut::TopThenRight: return {Corner{a, b, false, false}, Corner{}};
    case Cut::CornerLeftDown: return {Corner{X, 0, true, false}, Corner{0, Y, false, true}};
    case Cut::CornerLeftUp: return {Corner{x, Y, true, true}, Corner{}};
    case Cut::CornerDownRight: return {Corner{X, y, true, true}, Corner{}};
    case Cut::CornerDownLeft: return {Corner{0, Y, false, true}, Corner{X, 0, true, false}};
    case Cut::ZigZag:
    case Cut::ZigZagLevel: return {Corner{}, Corner{X, Y, true, true}};
    }
    return {};
}

double LShapes::area(const Raw& raw) const {
    const auto length = [this](int index) { return m_lengths[static_cast<std::size_t>(index)]; };
    return length(raw.width) * length(raw.armY) + length(raw.armX) * (length(raw.height) - length(raw.armY));
}

/// The L and a layout of the corner it lacks fill its bounding rectangle, so the L holds no more than the
/// rest.
int LShapes::capByCover(const Shape& shape) {
    const int corner = m_five.solve(m_grid.rest(shape.width, shape.armX), m_grid.rest(shape.height, shape.armY));
    return m_five.upper(shape.width, shape.height) - corner;
}

/// Null when no more can be remembered.
LShapes::Found* LShapes::find(const Shape& shape) {
    const auto known = m_found.find(shape.key());
    if (known != m_found.end()) return &known->second;
    if (m_found.size() >= kMaxShapes) return nullptr;
    Found found;
    if (shape.isRectangle()) {
        found.lower = m_five.solve(shape.width, shape.height);
        found.upper = m_five.upper(shape.width, shape.height);
    } else {
        const int upright =
            m_five.solve(shape.armX, shape.height) + m_five.solve(m_grid.rest(shape.width, shape.armX), shape.armY);
        const int level =
            m_five.solve(shape.width, shape.armY) + m_five.solve(shape.armX, m_grid.rest(shape.height, shape.armY));
        found.lower = std::max(upright, level);
        found.way = upright >= level ? Way{Cut::Upright, shape.armX, 0, 0} : Way{Cut::Level, shape.armY, 0, 0};
        found.upper = static_cast<std::int32_t>(lShapeBound(m_grid.at(shape.width), m_grid.at(shape.height),
                                                            m_grid.at(shape.armX), m_grid.at(shape.armY),
                                                            m_grid.sideA(), m_grid.sideB()));
        found.upper = std::min(found.upper, capByCover(shape));
    }
    return &m_found.emplace(shape.key(), found).first->second;
}

bool LShapes::reaches(int width, int height, int target) {
    return reaches(keep({width, height, width, height}).shape, target);
}

bool LShapes::reaches(const Shape& shape, int target) {
    Found* found = find(shape);
    if (found == nullptr) return false;
    if (found->lower >= target) return true;
    if (found->upper < target || m_work.isOver()) return false;
    const bool reached = shape.isRectangle() ? cutRectangle(shape, target) : cutL(shape, target);
    if (!reached && !m_work.isOver()) found->upper = target - 1;
    return reached;
}

bool LShapes::cutRectangle(const Shape& shape, int target) {
    const int X = shape.width;
    const int Y = shape.height;
    const auto& xs = m_grid.cuts(X);
    const auto& ys = m_grid.cuts(Y);
    for (const int a : xs) {
        if (m_grid.at(a) * 2 > m_grid.at(X)) break;
        if (cutWith(shape, target, Cut::Upright, a)) return true;
    }
    for (const int b : ys) {
        if (m_grid.at(b) * 2 > m_grid.at(Y)) break;
        if (cutWith(shape, target, Cut::Level, b)) return true;
    }
    for (const int a : xs) {
        for (const int b : ys) {
            if (cutWith(shape, target, Cut::TopThenRight, a, b)) return true;
        }
    }
    for (const int b : ys) {
        for (std::size_t i = 0; i < xs.size(); ++i) {
            for (std::size_t j = i + 1; j < xs.size(); ++j) {
                if (m_grid.at(xs[i]) + m_grid.at(xs[j]) > m_grid.at(X)) break;
                if (cutWith(shape, target, Cut::ZigZag, xs[i], b, xs[j])) return true;
            }
        }
    }
    for (const int b : xs) {
        for (std::size_t i = 0; i < ys.size(); ++i) {
            for (std::size_t j = i + 1; j < ys.size(); ++j) {
                if (m_grid.at(ys[i]) + m_grid.at(ys[j]) > m_grid.at(Y)) break;
                if (cutWith(shape, target, Cut::ZigZagLevel, ys[i], b, ys[j])) return true;
            }
        }
    }
    return false;
}

bool LShapes::cutL(const Shape& shape, int target) {
    const auto [X, Y, x, y] = shape;
    for (int a = 1; a < X; ++a) {
        if (cutWith(shape, target, Cut::Upright, a)) return true;
    }
    for (int b = 1; b < Y; ++b) {
        if (cutWith(shape, target, Cut::Level, b)) return true;
    }
    for (int a = 1; a < X; ++a) {
        for (int b = 1; b < Y; ++b) {
            if (m_work.isOver()) return false;
            if (a >= x && b <= y && cutWith(shape, target, Cut::LeftThenUp, a, b)) return true;
            if (a <= x && b >= y && cutWith(shape, target, Cut::BottomThenRight, a, b)) return true;
            if (a <= x && b <= y && cutWith(shape, target, Cut::TopThenRight, a, b)) return true;
            if (a < x && b < y && cutWith(shape, target, Cut::CornerLeftDown, a, b)) return true;
            if (a < x && b > y && cutWith(shape, target, Cut::CornerLeftUp, a, b)) return true;
            if (a > x && b < y && cutWith(shape, target, Cut::CornerDownRight, a, b)) return true;
            if (a < x && b < y && cutWith(shape, target, Cut::CornerDownLeft, a, b)) return true;
        }
    }
    return false;
}

bool LShapes::cutWith(const Shape& shape, int target, Cut cut, int a, int b, int c) {
    if (!m_work.spend(1)) return false;
    const auto byte = [](int index) { return static_cast<std::uint8_t>(index); };
    const Way way{cut, byte(a), byte(b), byte(c)};
    const auto raw = split(shape, way);
    const double first = area(raw.first);
    const double second = area(raw.second);
    // Never too few: the slack is far above the rounding of a double.
    if (static_cast<int>(first * m_perArea + 1e-6) + static_cast<int>(second * m_perArea + 1e-6) < target) return false;
    const double whole = area({shape.width, shape.height, shape.armX, shape.armY});
    if (first >= whole || second >= whole) return false;
    const Shape one = keep(raw.first).shape;
    const Shape two = keep(raw.second).shape;
    // The smaller part is settled sooner, and often settles both.
    if (!(first <= second ? share(one, two, target) : share(two, one, target))) return false;
    Found* found = find(shape);
    found->lower = find(one)->lower + find(two)->lower;
    found->way = way;
    return true;
}

/// Whether the two reach the target together: tries what the first must give, from the least on.
bool LShapes::share(const Shape& one, const Shape& two, int target) {
    const Found* first = find(one);
    const Found* second = find(two);
    if (first == nullptr || second == nullptr) return false;
    if (first->upper + second->upper < target) return false;
    for (int part = target - second->upper; part <= first->upper; ++part) {
        if (!reaches(one, part)) return false;
        if (first->lower + second->lower >= target || reaches(two, target - part)) return true;
    }
    return false;
}

void LShapes::place(int width, int height, const Frame& frame, std::vector<Spot>& spots) {
    const Part part = keep({width, height, width, height});
    place(part.shape, part.exchanged ? frame.exchanged() : frame, spots);
}

void LShapes::place(const Shape& shape, const Frame& frame, std::vector<Spot>& spots) {
    const Found* found = find(shape);
    // Only the two rectangles of an L that was never cut otherwise may be unknown here.
    if (found == nullptr || found->way.cut == Cut::None) {
        m_five.place(shape.width, shape.height, frame, spots);
        return;
    }
    const auto parts = split(shape, found->way);
    const auto at = corners(shape, found->way);
    for (const auto& [part, corner] :
         {std::pair(keep(parts.first), at.first), std::pair(keep(parts.second), at.second)}) {
        const Frame there = frame.part(corner.x, corner.y, corner.leftwards, corner.downwards);
        place(part.shape, part.exchanged ? there.exchanged() : there, spots);
    }
}

} // namespace sp::layout
