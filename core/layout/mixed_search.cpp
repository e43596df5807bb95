// SPDX-License-Identifier: MIT
#include "core/layout/mixed_search.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <numeric>
#include <random>

namespace sp::layout {

using std::int64_t;

namespace {

using Order = std::vector<std::size_t>;

constexpr std::size_t kMaxInRectangles = 1'000; // free rectangles grow too many beyond
constexpr int64_t kEndless = std::numeric_limits<int64_t>::max() / 8;

/// Largest first: by area, longer side, shorter side, perimeter.
std::vector<Order> startOrders(const std::vector<Box>& boxes) {
    const auto by = [&boxes](auto key) {
        Order order(boxes.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return key(boxes[a]) > key(boxes[b]); });
        return order;
    };
    const auto longer = [](const Box& b) { return std::max(b.width, b.height); };
    const auto shorter = [](const Box& b) { return std::min(b.width, b.height); };
    return {by([](const Box& b) { return static_cast<double>(b.width) * static_cast<double>(b.height); }),
            by([&](const Box& b) { return std::pair(longer(b), shorter(b)); }),
            by([&](const Box& b) { return std::pair(shorter(b), longer(b)); }),
            by([](const Box& b) { return b.width + b.height; })};
}

class Dice {
  public:
    explicit Dice(std::uint64_t seed)
        : m_engine(seed) {}
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(m_engine() % n); }

  private:
    std::mt19937_64 m_engine;
};

/// Swaps two places or moves one, near or far.
void disturb(Order& order, Dice& dice) {
    const std::size_t a = dice.below(order.size());
    const std::size_t b = dice.below(order.size());
    if (dice.below(2) == 0) {
        std::swap(order[a], order[b]);
    } else {
        const std::size_t moved = order[a];
        order.erase(order.begin() + static_cast<std::ptrdiff_t>(a));
        order.insert(order.begin() + static_cast<std::ptrdiff_t>(b), moved);
    }
}

/// What making an order and starting to fill costs besides the places looked at.
int64_t workOfOrder(const std::vector<Box>& boxes) { return 60 + static_cast<int64_t>(boxes.size()) / 2; }

/// Tries orders: the start orders, then small changes of the best, taken when not worse. `attempt` answers how good
/// an order is (less is better) and keeps the best plan itself; `done` when it cannot be bettered.
void searchOrders(const std::vector<Box>& boxes, Effort& effort, const std::function<double(const Order&)>& attempt,
                  const std::function<bool()>& done) {
    Order best;
    double least = std::numeric_limits<double>::infinity();
    for (auto& order : startOrders(boxes)) {
        const double now = attempt(order);
        if (now < least || best.empty()) {
            least = now;
            best = std::move(order);
        }
        if (done() || effort.isOver()) return;
    }
    if (boxes.size() < 2) return;
    Dice dice(0x5EED);
    while (!effort.isOver() && !done()) {
        effort.steps() -= workOfOrder(boxes);
        Order order = best;
        const std::size_t changes = 1 + dice.below(3);
        for (std::size_t i = 0; i < changes; ++i) disturb(order, dice);
        const double now = attempt(order);
        if (now <= least) {
            least = now;
            best = std::move(order);
        }
    }
}

using Fill = Filling (*)(const std::vector<Box>&, const std::vector<std::size_t>&, std::vector<char>&, int64_t, int64_t,
                         bool, int64_t&);

/// Bins one after the other; each is of the kind that costs least for the area it takes, and the last of the
/// cheapest kind that holds all the rest. When the effort is over, of the first kind that takes something.
BinPlan fillBins(const std::vector<Box>& boxes, const Order& order, std::vector<Bin> bins, bool mayTurn, Fill fill,
                 Effort& effort) {
    BinPlan plan;
    std::vector<char> used(boxes.size(), 0);
    std::size_t left = boxes.size();
    while (left > 0) {
        struct Try {
            std::size_t kind;
            Filling filling;
            std::vector<char> used;
        };
        std::optional<Try> best;
        const auto isBetter = [&](const Try& a, const Try& b) {
            const bool aEnds = a.filling.laid.size() == left;
            const bool bEnds = b.filling.laid.size() == left;
            const auto price = [&](const Try& t) { return static_cast<double>(bins[t.kind].price); };
            if (aEnds && bEnds) return price(a) < price(b);
            const double forA = (price(a) + 1) / a.filling.area;
            const double forB = (price(b) + 1) / b.filling.area;
            return forA < forB;
        };
        for (std::size_t kind = 0; kind < bins.size(); ++kind) {
            if (bins[kind].left == 0) continue;
            Try now{kind, {}, used};
            effort.steps() -= 40;
            now.filling = fill(boxes, order, now.used, bins[kind].width, bins[kind].height, mayTurn, effort.steps());
            if (!now.filling.laid.empty() && (!best || isBetter(now, *best))) best = std::move(now);
            if (best && effort.isOver()) break;
        }
        if (!best) return plan;
        --bins[best->kind].left;
        left -= best->filling.laid.size();
        plan.cost += bins[best->kind].price;
        const double whole = static_cast<double>(bins[best->kind].width) * static_cast<double>(bins[best->kind].height);
        plan.spread += best->filling.area / whole * (best->filling.area / whole);
        plan.bins.push_back({best->kind, std::move(best->filling.laid)});
        used = std::move(best->used);
    }
    plan.isWhole = true;
    return plan;
}

bool isBetter(const BinPlan& a, const BinPlan& b) {
    if (a.isWhole != b.isWhole) return a.isWhole;
    if (a.cost != b.cost) return a.cost < b.cost;
    if (a.bins.size() != b.bins.size()) return a.bins.size() < b.bins.size();
    return a.spread > b.spread;
}

} // namespace

BinPlan searchBins(const std::vector<Box>& boxes, const std::vector<Bin>& bins, bool mayTurn, int64_t enough,
                   Effort& effort) {
    BinPlan best;
    bool any = false;
    // Every set of kinds that makes sense: each alone, then all together.
    std::vector<std::vector<Bin>> markets;
    if (bins.size() > 1)
        for (std::size_t k = 0; k < bins.size(); ++k) {
            auto one = bins;
            for (std::size_t other = 0; other < bins.size(); ++other)
                if (other != k) one[other].left = 0;
            markets.push_back(std::move(one));
        }
    markets.push_back(bins);
    std::size_t round = 0;
    const auto attempt = [&](const Order& order) {
        const bool isStart = round < 4;
        double value = std::numeric_limits<double>::infinity();
        const auto take = [&](BinPlan plan) {
            const double price = static_cast<double>(plan.cost) + static_cast<double>(plan.bins.size());
            const double now = plan.isWhole
                                   ? price * (1 - 1e-6 * plan.spread / static_cast<double>(plan.bins.size() + 1))
                                   : 1e18 - plan.spread;
            value = std::min(value, now);
            if (!any || isBetter(plan, best)) {
                best = std::move(plan);
                any = true;
            }
        };
        for (std::size_t m = 0; m < markets.size(); ++m) {
            if (!isStart && m != round % markets.size() && m + 1 != markets.size()) continue;
            if (best.isWhole && effort.isOver()) break;
            take(fillBins(boxes, order, markets[m], mayTurn, fillSkyline, effort));
            if (boxes.size() <= kMaxInRectangles && (isStart || round % 4 == 0) && !effort.isOver())
                take(fillBins(boxes, order, markets[m], mayTurn, fillFreeRectangles, effort));
        }
        ++round;
        return value;
    };
    searchOrders(boxes, effort, attempt, [&] { return best.isWhole && best.cost <= enough; });
    return best;
}

namespace {

/// Lays strips and keeps the shortest.
class StripSearch {
  public:
    StripSearch(const std::vector<Box>& boxes, int64_t width, bool mayTurn, Effort& effort)
        : m_boxes(boxes)
        , m_locked(boxes)
        , m_width(width)
        , m_mayTurn(mayTurn)
        , m_effort(effort) {
        m_best.height = kEndless;
        for (const Box& box : boxes) {
            m_area += static_cast<double>(box.width) * static_cast<double>(box.height);
            m_kinds = std::max(m_kinds, box.kind + 1);
        }
    }

    const Filling& best() const { return m_best; }
    Filling taken() { return std::move(m_best); }

    /// How good an order is; every other time with kinds held one way round, where that has once been best.
    double attempt(const Order& order) {
        const bool isLocked = m_mayTurn && ++m_attempts % 2 == 0 && m_lockedIsBest;
        return isLocked ? lay(order, m_locked, false) : lay(order, m_boxes, m_mayTurn);
    }

    /// Kinds held upright or turned, every choice of few: equal boxes in straight rows, which no rule for one place
    /// after the other sees.
    void tryHeld(int64_t enough) {
        if (!m_mayTurn) return;
        constexpr std::size_t kMaxHeld = 5;
        const std::size_t held = std::min(m_kinds, kMaxHeld);
        const auto orders = startOrders(m_boxes);
        for (unsigned turns = 0; turns < (1U << held); ++turns) {
            auto boxes = m_boxes;
            bool fits = true;
            for (Box& box : boxes) {
                if (((turns >> box.kind % held) & 1U) != 0) std::swap(box.width, box.height);
                if (box.width > m_width) std::swap(box.width, box.height);
                fits = fits && box.width <= m_width;
            }
            if (!fits) continue;
            for (const auto& order : orders) {
                const int64_t before = m_best.height;
                lay(order, boxes, false);
                if (m_best.height < before) {
                    m_locked = boxes;
                    m_lockedIsBest = true;
                }
                if (m_best.height <= enough || m_effort.isOver()) return;
            }
        }
    }

  private:
    double lay(const Order& order, const std::vector<Box>& boxes, bool mayTurn) {
        const bool isFirst = m_best.laid.empty();
        const int64_t height = isFirst ? kEndless / 2 : m_best.height;
        const double whole = static_cast<double>(m_width) * static_cast<double>(height);
        Filling filling = fillStrip(boxes, order, m_width, height, mayTurn, whole - m_area, m_effort.steps());
        if (filling.laid.size() < boxes.size()) return std::numeric_limits<double>::infinity();
        // Of strips of one height the one whose top takes less of the width.
        double top = 0;
        for (Laid& laid : filling.laid) {
            const Box& box = boxes[laid.box];
            if (laid.y + (laid.turned ? box.width : box.height) == filling.height)
                top += static_cast<double>(laid.turned ? box.height : box.width);
            if (box.width != m_boxes[laid.box].width) laid.turned = !laid.turned;
        }
        const double value = static_cast<double>(filling.height) + top / (static_cast<double>(m_width) + 1);
        if (isFirst || filling.height < m_best.height) m_best = std::move(filling);
        return value;
    }

    const std::vector<Box>& m_boxes;
    std::vector<Box> m_locked;
    int64_t m_width;
    bool m_mayTurn;
    Effort& m_effort;
    Filling m_best;
    double m_area = 0;
    std::size_t m_kinds = 0;
    std::size_t m_attempts = 0;
    bool m_lockedIsBest = false;
};

} // namespace

Filling searchStrip(const std::vector<Box>& boxes, int64_t width, bool mayTurn, int64_t enough, Effort& effort) {
    StripSearch search(boxes, width, mayTurn, effort);
    const auto isDone = [&] { return search.best().height <= enough; };
    search.attempt(startOrders(boxes).front());
    if (!isDone() && !effort.isOver()) search.tryHeld(enough);
    if (!isDone() && !effort.isOver())
        searchOrders(
            boxes, effort, [&](const Order& order) { return search.attempt(order); }, isDone);
    return search.taken();
}

} // namespace sp::layout
