// SPDX-License-Identifier: MIT
#include "core/layout/mixed_pattern.h"

#include "core/layout/free_places.h"

#include <algorithm>
#include <limits>

namespace sp::layout {

using std::int64_t;

namespace {

constexpr int64_t kWall = std::numeric_limits<int64_t>::max() / 4;

struct Step { ///< of a skyline: a level piece of it
    int64_t x;
    int64_t y;
    int64_t width;
};

class Skyline {
  public:
    Skyline(int64_t width, int64_t height)
        : m_steps{{0, 0, width}}
        , m_height(height) {}

    std::size_t lowest() const {
        std::size_t at = 0;
        for (std::size_t i = 1; i < m_steps.size(); ++i)
            if (m_steps[i].y < m_steps[at].y) at = i;
        return at;
    }
    const Step& operator[](std::size_t i) const { return m_steps[i]; }
    std::size_t size() const { return m_steps.size(); }
    int64_t room(std::size_t i) const { return m_height - m_steps[i].y; }
    int64_t left(std::size_t i) const { return i == 0 ? kWall : m_steps[i - 1].y - m_steps[i].y; }
    int64_t right(std::size_t i) const { return i + 1 == m_steps.size() ? kWall : m_steps[i + 1].y - m_steps[i].y; }

    /// Fills step i up to the lower of its neighbours; false when it spans the whole width.
    bool raise(std::size_t i, double& waste) {
        const int64_t by = std::min(left(i), right(i));
        if (by >= kWall) return false;
        waste -= static_cast<double>(by) * static_cast<double>(m_steps[i].width);
        m_steps[i].y += by;
        join(i);
        return true;
    }
    /// Lays width x height on step i at its left or right end; answers the corner's x.
    int64_t lay(std::size_t i, int64_t width, int64_t height, bool atLeft) {
        Step& step = m_steps[i];
        const int64_t x = atLeft ? step.x : step.x + step.width - width;
        const Step top{x, step.y + height, width};
        if (width == step.width) {
            step = top;
            join(i);
            return x;
        }
        step.width -= width;
        if (atLeft) {
            step.x += width;
            m_steps.insert(m_steps.begin() + static_cast<std::ptrdiff_t>(i), top);
            join(i);
        } else {
            m_steps.insert(m_steps.begin() + static_cast<std::ptrdiff_t>(i) + 1, top);
            join(i + 1);
        }
        return x;
    }

  private:
    void join(std::size_t i) {
        if (i + 1 < m_steps.size() && m_steps[i + 1].y == m_steps[i].y) {
            m_steps[i].width += m_steps[i + 1].width;
            m_steps.erase(m_steps.begin() + static_cast<std::ptrdiff_t>(i) + 1);
        }
        if (i > 0 && m_steps[i - 1].y == m_steps[i].y) {
            m_steps[i - 1].width += m_steps[i].width;
            m_steps.erase(m_steps.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }

    std::vector<Step> m_steps;
    int64_t m_height;
};

double areaOf(const Box& box) { return static_cast<double>(box.width) * static_cast<double>(box.height); }

/// fillSkyline, given up once more than `waste` lies empty.
Filling fillLine(const std::vector<Box>& boxes, const std::vector<std::size_t>& order, std::vector<char>& used,
                 int64_t width, int64_t height, bool mayTurn, double waste, int64_t& steps) {
    Filling filling;
    Skyline line(width, height);
    // Boxes still to lay, in runs of one kind: one look serves a run.
    std::vector<std::size_t> rest;
    for (const std::size_t box : order)
        if (!used[box]) rest.push_back(box);
    std::vector<std::pair<std::size_t, std::size_t>> runs;
    for (std::size_t i = 0; i < rest.size(); ++i) {
        if (runs.empty() || boxes[rest[i]].kind != boxes[rest[i - 1]].kind) runs.emplace_back(i, i);
        runs.back().second = i + 1;
    }
    while (!runs.empty()) {
        const std::size_t at = line.lowest();
        const int64_t span = line[at].width;
        const int64_t room = line.room(at);
        const int64_t left = line.left(at);
        const int64_t right = line.right(at);
        int best = -1;
        std::size_t chosen = 0;
        bool turned = false;
        for (std::size_t i = 0; i < runs.size() && best < 4; ++i) {
            const Box& box = boxes[rest[runs[i].first]];
            for (const bool turn : {false, true}) {
                if (turn && (!mayTurn || box.width == box.height)) break;
                const int64_t w = turn ? box.height : box.width;
                const int64_t h = turn ? box.width : box.height;
                if (w > span || h > room) continue;
                const bool levels = h == left || h == right;
                const int fit = w == span ? (h == left && h == right ? 4 : levels ? 3 : 2) : levels ? 1 : 0;
                if (fit > best) {
                    best = fit;
                    chosen = i;
                    turned = turn;
                }
            }
        }
        steps -= static_cast<int64_t>(runs.size() + line.size());
        if (best < 0) {
            if (!line.raise(at, waste) || waste < 0) break;
            continue;
        }
        const std::size_t index = rest[runs[chosen].first];
        if (++runs[chosen].first == runs[chosen].second) runs.erase(runs.begin() + static_cast<std::ptrdiff_t>(chosen));
        used[index] = 1;
        const int64_t w = turned ? boxes[index].height : boxes[index].width;
        const int64_t h = turned ? boxes[index].width : boxes[index].height;
        const bool atLeft = h == left || (h != right && left >= right);
        const int64_t y = line[at].y;
        const int64_t x = line.lay(at, w, h, atLeft);
        filling.laid.push_back({index, x, y, turned});
        filling.height = std::max(filling.height, y + h);
        filling.area += areaOf(boxes[index]);
    }
    return filling;
}

} // namespace

std::vector<BoxKind> kindsOf(const std::vector<Box>& boxes) {
    std::vector<BoxKind> kinds;
    for (const Box& box : boxes) {
        if (box.kind >= kinds.size()) kinds.resize(box.kind + 1);
        kinds[box.kind] = {box.width, box.height, kinds[box.kind].count + 1};
    }
    return kinds;
}

Filling fillSkyline(const std::vector<Box>& boxes, const std::vector<std::size_t>& order, std::vector<char>& used,
                    int64_t width, int64_t height, bool mayTurn, int64_t& steps) {
    return fillLine(boxes, order, used, width, height, mayTurn, std::numeric_limits<double>::infinity(), steps);
}

Filling fillStrip(const std::vector<Box>& boxes, const std::vector<std::size_t>& order, int64_t width, int64_t height,
                  bool mayTurn, double waste, int64_t& steps) {
    std::vector<char> used(boxes.size(), 0);
    return fillLine(boxes, order, used, width, height, mayTurn, waste, steps);
}

Filling fillFreeRectangles(const std::vector<Box>& boxes, const std::vector<std::size_t>& order,
                           std::vector<char>& used, int64_t width, int64_t height, bool mayTurn, int64_t& steps) {
    Filling filling;
    FreePlaces free({0, 0, width, height});
    for (const std::size_t index : order) {
        if (used[index]) continue;
        const Box& box = boxes[index];
        int64_t least = kWall;
        int64_t leastLong = kWall;
        FreePlaces::Place spot{};
        bool turned = false;
        for (const auto& part : free.places())
            for (const bool turn : {false, true}) {
                if (turn && (!mayTurn || box.width == box.height)) break;
                const int64_t w = turn ? box.height : box.width;
                const int64_t h = turn ? box.width : box.height;
                const int64_t beside = part.right - part.left - w;
                const int64_t above = part.high - part.low - h;
                if (beside < 0 || above < 0) continue;
                const int64_t less = std::min(beside, above);
                const int64_t more = std::max(beside, above);
                if (less > least || (less == least && more >= leastLong)) continue;
                least = less;
                leastLong = more;
                spot = {part.left, part.low, part.left + w, part.low + h};
                turned = turn;
            }
        steps -= static_cast<int64_t>(free.places().size()) * 2;
        if (least == kWall) continue;
        used[index] = 1;
        filling.laid.push_back({index, spot.left, spot.low, turned});
        filling.height = std::max(filling.height, spot.high);
        filling.area += areaOf(box);
        steps -= free.take(spot);
    }
    return filling;
}

} // namespace sp::layout
