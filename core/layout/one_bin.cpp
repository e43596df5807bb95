// SPDX-License-Identifier: MIT
#include "core/layout/one_bin.h"

#include "core/layout/side_sums.h"
#include "core/units/int128.h"

#include <algorithm>
#include <limits>

namespace sp::layout {

using std::int64_t;
using std::uint64_t;
using units::Int128;

namespace {

struct Level {
    int64_t x;
    int64_t y;
    int64_t width;
    const void* sums = nullptr; ///< of which sums it is known
    int64_t lost = 0;           ///< how much of the height above no sum fills
};
using Levels = std::vector<Level>;

/// States that failed, as many as it holds; a newer one takes the place of an older.
class Failed {
  public:
    explicit Failed(int64_t steps) {
        std::size_t size = 1'024;
        while (size < kMost && static_cast<int64_t>(size) * 16 < steps) size *= 2;
        m_states.resize(size);
    }
    struct State {
        uint64_t one = 0;
        uint64_t other = 0;
        friend bool operator==(const State&, const State&) = default;
    };
    bool holds(const State& state) const { return m_states[state.one & (m_states.size() - 1)] == state; }
    void add(const State& state) { m_states[state.one & (m_states.size() - 1)] = state; }

    static State of(const Levels& levels, const std::vector<int64_t>& left) {
        State state{0x9E3779B97F4A7C15ULL, 0xD1B54A32D192ED03ULL};
        for (const Level& level : levels) add(state, level.x, level.y);
        for (std::size_t k = 0; k < left.size(); ++k) add(state, -1 - static_cast<int64_t>(k), left[k]);
        return state;
    }

  private:
    /// Each pair by itself, in any order.
    static void add(State& state, int64_t at, int64_t value) {
        const auto a = static_cast<uint64_t>(at);
        const auto b = static_cast<uint64_t>(value);
        state.one += mixed((a * 0x9E3779B97F4A7C15ULL) ^ (b + 0x632BE59BD9B4E019ULL) * 0xFF51AFD7ED558CCDULL);
        state.other += mixed((b * 0xD1B54A32D192ED03ULL) ^ (a + 0x2545F4914F6CDD1DULL) * 0xC4CEB9FE1A85EC53ULL);
    }
    static uint64_t mixed(uint64_t bits) {
        bits = (bits ^ (bits >> 31)) * 0x7FB5D329728EA185ULL;
        bits = (bits ^ (bits >> 27)) * 0x81DADEF4BC2DD44DULL;
        return bits ^ (bits >> 33);
    }
    static constexpr std::size_t kMost = 1U << 16;
    std::vector<State> m_states;
};

class OneBin {
  public:
    OneBin(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn, int64_t& steps)
        : m_kinds(kinds)
        , m_height(height)
        , m_mayTurn(mayTurn)
        , m_steps(steps)
        , m_waste(Int128{width} * height)
        , m_failed(steps)
        , m_xs(sideSums(kinds, width, mayTurn))
        , m_sums(kinds, std::max(width, height)) {
        for (std::size_t k = 0; k < kinds.size(); ++k) {
            m_left.push_back(kinds[k].count);
            m_toLay += kinds[k].count;
            m_waste -= Int128{kinds[k].width} * kinds[k].height * kinds[k].count;
            m_order.push_back(k);
        }
        std::stable_sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return Int128{kinds[a].width} * kinds[a].height > Int128{kinds[b].width} * kinds[b].height;
        });
        m_lines.resize(static_cast<std::size_t>(m_toLay) + 1);
        m_lines[0] = {{0, 0, width}};
    }

    /// True when all are laid; else there is no way, unless the steps are used up.
    bool run() { return m_waste >= 0 && lay(0); }
    /// No way was left out.
    bool isWhole() const { return m_steps > 0 && !m_xs.empty(); }
    std::vector<Laid> laid() && { return std::move(m_laid); }

  private:
    /// The line after `depth` boxes; it is changed.
    bool lay(std::size_t depth) {
        if (m_toLay == 0) return true;
        if (--m_steps <= 0) return false;
        Levels& levels = m_lines[depth];
        const Int128 before = m_waste;
        if (!raiseNarrow(levels) || isTooLow(levels)) {
            m_waste = before;
            return false;
        }
        const auto state = Failed::of(levels, m_left);
        m_steps -= static_cast<int64_t>(levels.size() / 2 + m_order.size() / 4 + 2);
        if (m_failed.holds(state)) {
            m_waste = before;
            return false;
        }
        const bool isLaid = tryAll(depth);
        m_waste = before;
        if (!isLaid && m_steps > 0) m_failed.add(state);
        return isLaid;
    }

    bool tryAll(std::size_t depth) {
        const Levels& levels = m_lines[depth];
        const std::size_t at = lowest(levels);
        const Level low = levels[at];
        const int64_t room = m_height - low.y;
        // What fills the level from end to end first.
        for (const bool whole : {true, false})
            for (const std::size_t k : m_order)
                for (const bool turn : {false, true}) {
                    if (!isOpen(k, turn)) continue;
                    const auto [w, h] = sidesOf(k, turn);
                    if (w > low.width || h > room || (w == low.width) != whole) continue;
                    if (put(depth, at, k, turn, low.x)) return true;
                    if (m_steps <= 0) return false;
                }
        return tryFarther(depth, at) || tryNothing(depth, at);
    }

    /// The first box on the level stands farther right.
    bool tryFarther(std::size_t depth, std::size_t at) {
        const Levels& levels = m_lines[depth];
        if (at == 0) return false;
        const Level low = levels[at];
        const int64_t high = levels[at - 1].y - low.y;
        for (const std::size_t k : m_order)
            for (const bool turn : {false, true}) {
                if (!isOpen(k, turn)) continue;
                const auto [w, h] = sidesOf(k, turn);
                if (h <= high || h > m_height - low.y) continue;
                auto x = std::upper_bound(m_xs.begin(), m_xs.end(), low.x);
                for (; x != m_xs.end() && *x + w <= low.x + low.width; ++x) {
                    const Int128 lost = Int128{*x - low.x} * high;
                    if (lost > m_waste) break;
                    m_waste -= lost;
                    const bool isLaid = put(depth, at, k, turn, *x);
                    m_waste += lost;
                    if (isLaid) return true;
                    if (m_steps <= 0) return false;
                }
            }
        return false;
    }

    /// The level stays empty.
    bool tryNothing(std::size_t depth, std::size_t at) {
        Levels& levels = m_lines[depth];
        const int64_t above = std::min(leftOf(levels, at), rightOf(levels, at));
        const Int128 lost = Int128{above - levels[at].y} * levels[at].width;
        if (lost > m_waste || above >= m_height) return false;
        m_waste -= lost;
        levels[at].y = above;
        levels[at].sums = nullptr;
        join(levels, at);
        const bool isLaid = lay(depth);
        m_waste += lost;
        return isLaid;
    }

    bool put(std::size_t depth, std::size_t at, std::size_t k, bool turn, int64_t x) {
        const auto [w, h] = sidesOf(k, turn);
        Levels& next = m_lines[depth + 1];
        next = m_lines[depth];
        const Level low = next[at];
        next[at] = {x, low.y + h, w};
        if (x + w < low.x + low.width)
            next.insert(next.begin() + static_cast<std::ptrdiff_t>(at) + 1, {x + w, low.y, low.x + low.width - x - w});
        if (x > low.x) next[at - 1].width += x - low.x;
        join(next, at);
        --m_left[k];
        --m_toLay;
        m_laid.push_back({k, x, low.y, turn});
        if (lay(depth + 1)) return true;
        ++m_left[k];
        ++m_toLay;
        m_laid.pop_back();
        return false;
    }

    /// Levels between higher ones that are too narrow for everything left are lost; false when that is too much.
    bool raiseNarrow(Levels& levels) {
        int64_t least = std::numeric_limits<int64_t>::max();
        for (const std::size_t k : m_order)
            if (m_left[k] > 0)
                least = std::min(least, m_mayTurn ? std::min(m_kinds[k].width, m_kinds[k].height) : m_kinds[k].width);
        for (std::size_t i = 0; i < levels.size();) {
            const int64_t above = std::min(leftOf(levels, i), rightOf(levels, i));
            if (levels[i].width >= least || above <= levels[i].y) {
                ++i;
                continue;
            }
            m_waste -= Int128{above - levels[i].y} * levels[i].width;
            if (m_waste < 0) return false;
            levels[i].y = above;
            levels[i].sums = nullptr;
            if (above >= m_height && levels.size() == 1) return false;
            join(levels, i);
            i = 0;
        }
        return true;
    }

    /// Whether what no sums of sides fill, above the levels or along the lowest, is more than may be lost.
    bool isTooLow(Levels& levels) {
        const auto& sums = m_sums.of(m_left);
        Int128 lost = 0;
        for (Level& level : levels) {
            if (level.sums != &sums) {
                const int64_t room = m_height - level.y;
                level.lost = room - SideSums::below(sums, room);
                level.sums = &sums;
            }
            lost += Int128{level.lost} * level.width;
        }
        if (lost > m_waste) return true;
        const std::size_t at = lowest(levels);
        const int64_t above = std::min({leftOf(levels, at), rightOf(levels, at), m_height});
        const int64_t width = levels[at].width;
        return Int128{width - SideSums::below(sums, width)} * (above - levels[at].y) > m_waste;
    }

    bool isOpen(std::size_t k, bool turn) const {
        return m_left[k] > 0 && !(turn && (!m_mayTurn || m_kinds[k].width == m_kinds[k].height));
    }
    std::pair<int64_t, int64_t> sidesOf(std::size_t k, bool turn) const {
        return turn ? std::pair(m_kinds[k].height, m_kinds[k].width) : std::pair(m_kinds[k].width, m_kinds[k].height);
    }
    static std::size_t lowest(const Levels& levels) {
        std::size_t at = 0;
        for (std::size_t i = 1; i < levels.size(); ++i)
            if (levels[i].y < levels[at].y) at = i;
        return at;
    }
    int64_t leftOf(const Levels& levels, std::size_t at) const { return at > 0 ? levels[at - 1].y : m_height; }
    int64_t rightOf(const Levels& levels, std::size_t at) const {
        return at + 1 < levels.size() ? levels[at + 1].y : m_height;
    }
    static void join(Levels& levels, std::size_t at) {
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
    Failed m_failed;
    std::vector<int64_t> m_xs; ///< where a box may stand
    SideSums m_sums;
    std::vector<int64_t> m_left;
    int64_t m_toLay = 0;
    std::vector<std::size_t> m_order;
    std::vector<Levels> m_lines; ///< by boxes laid
    std::vector<Laid> m_laid;
};

} // namespace

OneBinAnswer layInOneBin(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn,
                         int64_t& steps) {
    int64_t boxes = 0;
    for (const BoxKind& kind : kinds) boxes += kind.count;
    if (boxes > kMostInOneBin) return {};
    int64_t half = steps / 2;
    const int64_t rest = steps - half;
    OneBin upright(kinds, width, height, mayTurn, half);
    const bool isLaid = upright.run();
    const bool isSure = upright.isWhole();
    steps = rest + std::max<int64_t>(0, half);
    if (isLaid) return {std::move(upright).laid(), true};
    if (isSure) return {{}, true};
    std::vector<BoxKind> exchanged;
    for (const BoxKind& kind : kinds) exchanged.push_back({kind.height, kind.width, kind.count});
    OneBin lying(exchanged, height, width, mayTurn, steps);
    if (!lying.run()) return {{}, lying.isWhole()};
    auto laid = std::move(lying).laid();
    for (Laid& one : laid) std::swap(one.x, one.y);
    return {std::move(laid), true};
}

std::vector<Laid> laidInOneBin(const std::vector<Box>& boxes, const Bin& bin, bool mayTurn, int64_t& steps) {
    const auto kinds = kindsOf(boxes);
    std::vector<std::vector<std::size_t>> ofKind(kinds.size());
    for (std::size_t i = 0; i < boxes.size(); ++i) ofKind[boxes[i].kind].push_back(i);
    auto laid = layInOneBin(kinds, bin.width, bin.height, mayTurn, steps).laid;
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
