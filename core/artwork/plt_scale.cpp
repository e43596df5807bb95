// SPDX-License-Identifier: MIT
#include "core/artwork/plt_scale.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr double kLeast = 1e-9;
constexpr double kMost = 1e9;

bool isPossible(double factor) { return std::abs(factor) >= kLeast && std::abs(factor) <= kMost; }

} // namespace

void PltScale::setPoints(std::span<const double> numbers) {
    if (numbers.size() < 2) return forgetPoints();
    const Point first{numbers[0], numbers[1]};
    if (numbers.size() >= 4) {
        const Point second{numbers[2], numbers[3]};
        if (!isPossible(second.x - first.x) || !isPossible(second.y - first.y)) return;
        m_second = second;
    } else if (m_second) { // goes along
        m_second = *m_second + (first - m_first.value_or(Point{}));
    }
    m_first = first;
}

void PltScale::setUserUnits(std::span<const double> numbers) {
    if (numbers.size() < 4) return dropUserUnits();
    const double type = numbers.size() > 4 ? numbers[4] : 0;
    const Point least{numbers[0], numbers[2]};
    const Point most{numbers[1], numbers[3]};
    if (type == 2 ? !isPossible(most.x) || !isPossible(most.y)
                  : !isPossible(most.x - least.x) || !isPossible(most.y - least.y))
        return;
    m_kind = type == 2 ? Kind::Factor : type == 1 ? Kind::Even : Kind::Stretched;
    m_least = least;
    m_most = most;
    constexpr double kMiddle = 50;
    const auto share = [&](std::size_t i) {
        return std::clamp(numbers.size() > 6 ? numbers[i] : kMiddle, 0.0, 100.0) / 100;
    };
    m_unused = {share(5), share(6)};
}

Matrix PltScale::between() const {
    const Point room = *m_second - *m_first;
    Point factor{room.x / (m_most.x - m_least.x), room.y / (m_most.y - m_least.y)};
    Point start = *m_first;
    if (m_kind == Kind::Even) {
        const double even = std::min(std::abs(factor.x), std::abs(factor.y));
        const Point used{std::copysign(even, factor.x), std::copysign(even, factor.y)};
        start.x += m_unused.x * (factor.x - used.x) * (m_most.x - m_least.x);
        start.y += m_unused.y * (factor.y - used.y) * (m_most.y - m_least.y);
        factor = used;
    }
    return Matrix::translation(start.x, start.y) * Matrix::scaling(factor.x, factor.y) *
           Matrix::translation(-m_least.x, -m_least.y);
}

Matrix PltScale::matrix() const {
    if (m_kind == Kind::Factor) {
        const Point start = m_first.value_or(Point{});
        return Matrix::translation(start.x, start.y) * Matrix::scaling(m_most.x, m_most.y) *
               Matrix::translation(-m_least.x, -m_least.y);
    }
    return m_kind != Kind::Plotter && m_second ? between() : Matrix{};
}

} // namespace sp::artwork
