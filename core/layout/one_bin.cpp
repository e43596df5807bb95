// SPDX-License-Identifier: MIT
#include "core/layout/one_bin.h"

#include "core/units/int128.h"

#include <algorithm>
#include <limits>

namespace sp::layout {

using std::int64_t;
using units::Int128;

namespace {

struct Level {
    int64_t x;
    int64_t y;
    int64_t width;
};

class OneBin {
  public:
    OneBin(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn, int64_t& steps)
        : m_kinds(kinds)
        , m_height(height)
        , m_mayTurn(mayTurn)
        , m_steps(steps)
        , m_waste(Int128{width} * height) {
        for (std::size_t k = 0; k < kinds.size(); ++k) {
            m_left.push_back(kinds[k].count);
            m_toLay += kinds[k].count;
            m_waste -= Int128{kinds[k].width} * kinds[k].height * kinds[k].count;
            m_order.push_back(k);
        }
        std::stable_sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return Int128{kinds[a].width} * kinds[a].height > Int128{kinds[b].width} * kinds[b].height;
        });
    }

    bool lay(std::vector<Level> levels) {
        if (m_toLay == 0) return true;
        if (m_waste < 0 || --m_steps <= 0) return false;
        std::size_t at = 0;
        for (std::size_t i = 1; i < levels.size(); ++i)
            if (levels[i].y < levels[at].y) at = i;
        m_steps -= static_cast<int64_t>(levels.size() / 4 + m_order.size() / 4);
        const Level low = levels[at];
        const int64_t room = m_height - low.y;
        const int64_t above =
            std::min(at > 0 ? levels[at - 1].y : m_height, at + 1 < levels.size() ? levels[at + 1].y : m_height);
        const Int128 lost = Int128{above - low.y} * low.width;
        // What fills the level from end to end first.
        for (const bool whole : {true, false})
            for (const std::size_t k : m_order) {
                if (m_left[k] == 0) continue;
                for (const bool turn : {false, true}) {
                    if (turn && (!m_mayTurn || m_kinds[k].width == m_kinds[k].height)) break;
                    const int64_t w = turn ? m_kinds[k].height : m_kinds[k].width;
                    const int64_t h = turn ? m_kinds[k].width : m_kinds[k].height;
                    if (w > low.width || h > room || (w == low.width) != whole) continue;
                    if (put(levels, at, k, turn, w, h)) return true;
                    if (m_steps <= 0) return false;
                }
            }
        if (lost > m_waste || above >= m_height) return false;
        m_waste -= lost;
        levels[at].y = above;
        join(levels, at);
        const bool isLaid = lay(std::move(levels));
        m_waste += lost;
        return isLaid;
    }

    std::vector<Laid> laid() && { return std::move(m_laid); }

  private:
    bool put(const std::vector<Level>& levels, std::size_t at, std::size_t k, bool turn, int64_t w, int64_t h) {
        auto next = levels;
        const Level low = levels[at];
        if (!mayLeave(low.width - w, h, low, at, levels)) return false;
        next[at] = {low.x, low.y + h, w};
        if (w < low.width)
            next.insert(next.begin() + static_cast<std::ptrdiff_t>(at) + 1, {low.x + w, low.y, low.width - w});
        join(next, at);
        --m_left[k];
        --m_toLay;
        m_laid.push_back({k, low.x, low.y, turn});
        if (lay(std::move(next))) return true;
        ++m_left[k];
        ++m_toLay;
        m_laid.pop_back();
        return false;
    }

    /// False when what a box of height `h` leaves of the level is too narrow for anything and more than may be lost.
    bool mayLeave(int64_t width, int64_t h, const Level& low, std::size_t at, const std::vector<Level>& levels) const {
        if (width == 0) return true;
        int64_t least = std::numeric_limits<int64_t>::max();
        for (const std::size_t k : m_order)
            if (m_left[k] > 0)
                least = std::min(least, m_mayTurn ? std::min(m_kinds[k].width, m_kinds[k].height) : m_kinds[k].width);
        if (width >= least) return true;
        const int64_t right = at + 1 < levels.size() ? levels[at + 1].y : m_height;
        return Int128{std::min(right - low.y, h)} * width <= m_waste;
    }

    static void join(std::vector<Level>& levels, std::size_t at) {
        if (at + 1 < levels.size() && levels[at + 1].y == levels[at].y) {
            levels[at].width += levels[at + 1].width;
            levels.erase(levels.begin() + static_cast<std::ptrdiff_t>(at) + 1);
        }
        if (at > 0 && levels[at - 1].y == levels[at].y) {
            levels[at - 1].width += levels[at].width;
            levels.erase(levels.begin() + static_cast<std::ptrdiff_t>(at));
        }
    }

    const std::vector<BoxKind>& m_kinds;
    int64_t m_height;
    bool m_mayTurn;
    int64_t& m_steps;
    Int128 m_waste; ///< that may still be left empty
    std::vector<int64_t> m_left;
    int64_t m_toLay = 0;
    std::vector<std::size_t> m_order;
    std::vector<Laid> m_laid;
};

} // namespace

std::optional<std::vector<Laid>> layInOneBin(const std::vector<BoxKind>& kinds, int64_t width, int64_t height,
                                             bool mayTurn, int64_t& steps) {
    int64_t half = steps / 2;
    const int64_t rest = steps - half;
    OneBin upright(kinds, width, height, mayTurn, half);
    const bool isLaid = upright.lay({{0, 0, width}});
    steps = rest + std::max<int64_t>(0, half);
    if (isLaid) return std::move(upright).laid();
    std::vector<BoxKind> exchanged;
    for (const BoxKind& kind : kinds) exchanged.push_back({kind.height, kind.width, kind.count});
    OneBin lying(exchanged, height, width, mayTurn, steps);
    if (!lying.lay({{0, 0, height}})) return std::nullopt;
    auto laid = std::move(lying).laid();
    for (Laid& one : laid) std::swap(one.x, one.y);
    return laid;
}

std::vector<Laid> laidInOneBin(const std::vector<Box>& boxes, const Bin& bin, bool mayTurn, int64_t& steps) {
    std::vector<BoxKind> kinds;
    std::vector<std::vector<std::size_t>> ofKind;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        if (boxes[i].kind >= kinds.size()) {
            kinds.resize(boxes[i].kind + 1);
            ofKind.resize(kinds.size());
        }
        kinds[boxes[i].kind] = {boxes[i].width, boxes[i].height, kinds[boxes[i].kind].count + 1};
        ofKind[boxes[i].kind].push_back(i);
    }
    auto laid = layInOneBin(kinds, bin.width, bin.height, mayTurn, steps).value_or(std::vector<Laid>());
    for (Laid& one : laid) {
        const BoxKind& kind = kinds[one.box];
        auto& left = ofKind[one.box];
        one.box = left.back();
        left.pop_back();
        if (boxes[one.box].width != kind.width) one.turned = !one.turned; // given the other way round
    }
    return laid;
}

} // namespace sp::layout
