// SPDX-License-Identifier: MIT
#include "core/layout/pattern_cover.h"

#include "core/layout/cover_prices.h"
#include "core/layout/guillotine.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace sp::layout {

using std::int64_t;

namespace {

constexpr std::size_t kMaxPatterns = 600;
constexpr int kMaxRounds = 40;

class Cover {
  public:
    Cover(const std::vector<Box>& boxes, const std::vector<Bin>& bins, bool mayTurn, int64_t enough,
          std::vector<BinWay>& ways, Effort& effort)
        : m_boxes(boxes)
        , m_bins(bins)
        , m_mayTurn(mayTurn)
        , m_enough(enough)
        , m_ways(ways)
        , m_effort(effort)
        , m_kinds(kindsOf(boxes)) {
        int64_t dearest = 0;
        for (const Bin& bin : bins) dearest = std::max(dearest, bin.price);
        // Of plans of one cost the one of fewer bins; where all are free, the fewest.
        for (const Bin& bin : bins)
            m_prices.push_back(static_cast<double>(bin.price) + std::max(1.0, static_cast<double>(dearest) * 1e-7));
    }

    BinPlan run() {
        makePatterns();
        BinPlan best;
        if (m_ways.empty()) return best;
        const auto copies = copiesOf();
        // Whole bins, rounded down; then with one pattern after the other left out of that.
        std::vector<int64_t> whole(m_ways.size(), 0);
        std::vector<int64_t> left;
        for (const Bin& bin : m_bins) left.push_back(bin.left);
        for (std::size_t w = 0; w < m_ways.size(); ++w) {
            whole[w] = std::min(static_cast<int64_t>(std::floor(copies[w] + 1e-6)), left[m_ways[w].bin]);
            left[m_ways[w].bin] -= whole[w];
        }
        keepBetter(best, finished(whole));
        for (std::size_t w = 0; w < m_ways.size() && !isEnough(best) && !m_effort.isOver(); ++w) {
            if (whole[w] == 0) continue;
            auto fewer = whole;
            --fewer[w];
            keepBetter(best, finished(fewer));
        }
        return best;
    }

  private:
    bool isEnough(const BinPlan& plan) const { return plan.isWhole && plan.cost <= m_enough; }

    static void keepBetter(BinPlan& best, BinPlan plan) {
        const auto rank = [](const BinPlan& p) { return std::tuple(!p.isWhole, p.cost, p.bins.size()); };
        if (best.bins.empty() || rank(plan) < rank(best)) best = std::move(plan);
    }

    // ---- patterns

    void makePatterns() {
        std::vector<Guillotine> cutters;
        for (const Bin& bin : m_bins) cutters.emplace_back(m_kinds, bin.width, bin.height, m_mayTurn);
        const int64_t end = m_effort.steps() / 2;
        const auto isOver = [&] {
            return m_effort.steps() <= end || m_effort.isOver() || m_ways.size() >= kMaxPatterns;
        };
        for (std::size_t k = 0; k < m_kinds.size() && !isOver(); ++k) {
            std::vector<double> worth(m_kinds.size(), 0);
            worth[k] = 1;
            for (std::size_t b = 0; b < m_bins.size(); ++b) addWay(b, cutters[b].best(worth, m_effort.steps()));
        }
        for (std::size_t b = 0; b < m_bins.size(); ++b) addFillings(b, areas(), 8);
        for (int round = 0; round < kMaxRounds && !isOver(); ++round) {
            const auto worth = pricesOfKinds();
            bool isNew = false;
            for (std::size_t b = 0; b < m_bins.size() && !isOver(); ++b) {
                if (m_bins[b].left == 0) continue;
                isNew = addWorthy(b, cutters[b].best(worth, m_effort.steps()), worth) || isNew;
                isNew = addFillings(b, worth, 6) || isNew;
            }
            if (!isNew && round > 3) break;
        }
    }

    std::vector<double> areas() const {
        std::vector<double> areas;
        for (const BoxKind& kind : m_kinds)
            areas.push_back(static_cast<double>(kind.width) * static_cast<double>(kind.height));
        return areas;
    }

    std::vector<double> pricesOfKinds() const {
        std::vector<CoverColumn> columns;
        for (const BinWay& way : m_ways) columns.push_back({m_prices[way.bin], way.counts});
        return coverPrices(columns, demands()).prices;
    }

    std::vector<double> copiesOf() const {
        std::vector<CoverColumn> columns;
        for (const BinWay& way : m_ways) columns.push_back({m_prices[way.bin], way.counts});
        return coverPrices(columns, demands()).copies;
    }

    std::vector<int64_t> demands() const {
        std::vector<int64_t> demands;
        for (const BoxKind& kind : m_kinds) demands.push_back(kind.count);
        return demands;
    }

    /// Skylines over the kinds by worth for their area, in a random order, some of them lying one way only.
    bool addFillings(std::size_t b, const std::vector<double>& worth, int tries) {
        std::vector<std::size_t> kinds(m_kinds.size());
        std::iota(kinds.begin(), kinds.end(), std::size_t{0});
        const auto area = areas();
        std::stable_sort(kinds.begin(), kinds.end(),
                         [&](std::size_t a, std::size_t c) { return worth[a] / area[a] > worth[c] / area[c]; });
        bool isNew = false;
        for (int n = 0; n < tries && !m_effort.isOver(); ++n) {
            if (n > 0) std::swap(kinds[below(kinds.size())], kinds[below(kinds.size())]);
            isNew = addWorthy(b, filled(b, kinds, n % 3 != 0), worth) || isNew;
        }
        return isNew;
    }

    std::vector<Laid> filled(std::size_t b, const std::vector<std::size_t>& kinds, bool isLocked) {
        m_effort.steps() -= 60;
        std::vector<Box> boxes;
        std::vector<char> isTurned;
        const Bin& bin = m_bins[b];
        for (const std::size_t k : kinds) {
            const BoxKind& kind = m_kinds[k];
            const bool turn = isLocked && m_mayTurn && below(2) == 0;
            const double room = static_cast<double>(bin.width) * static_cast<double>(bin.height) /
                                (static_cast<double>(kind.width) * static_cast<double>(kind.height));
            int64_t most = std::min(kind.count, static_cast<int64_t>(room) + 1);
            if (most > 1 && below(3) == 0) most = 1 + static_cast<int64_t>(below(static_cast<std::size_t>(most)));
            for (int64_t i = 0; i < most; ++i) {
                boxes.push_back({turn ? kind.height : kind.width, turn ? kind.width : kind.height, k});
                isTurned.push_back(turn ? 1 : 0);
            }
        }
        std::vector<std::size_t> order(boxes.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::vector<char> used(boxes.size(), 0);
        const bool mayTurn = m_mayTurn && !isLocked;
        auto laid = fillSkyline(boxes, order, used, bin.width, bin.height, mayTurn, m_effort.steps()).laid;
        for (Laid& one : laid) {
            one.turned = one.turned != (isTurned[one.box] != 0);
            one.box = boxes[one.box].kind;
        }
        return laid;
    }

    bool addWorthy(std::size_t b, std::vector<Laid> laid, const std::vector<double>& worth) {
        double whole = 0;
        for (const Laid& one : laid) whole += worth[one.box];
        return whole > m_prices[b] * (1 - 1e-9) && addWay(b, std::move(laid));
    }

    /// False where it is known already.
    bool addWay(std::size_t b, std::vector<Laid> laid) {
        if (laid.empty() || m_ways.size() >= kMaxPatterns) return false;
        BinWay way{b, std::vector<int64_t>(m_kinds.size(), 0), {}};
        for (Laid& one : laid) {
            if (way.counts[one.box] >= m_kinds[one.box].count) continue; // more than there are
            ++way.counts[one.box];
            way.laid.push_back(one);
        }
        for (const BinWay& known : m_ways)
            if (known.bin == b && known.counts == way.counts) return false;
        m_ways.push_back(std::move(way));
        return true;
    }

    std::size_t below(std::size_t n) { return static_cast<std::size_t>(m_random() % n); }

    // ---- whole plans

    /// The patterns so often, and the rest in the cheaper of two ways.
    BinPlan finished(const std::vector<int64_t>& copies) {
        auto rest = demands();
        std::vector<Bin> left = m_bins;
        std::vector<std::size_t> bins; // a way each
        int64_t cost = 0;
        for (std::size_t w = 0; w < copies.size(); ++w) {
            for (std::size_t k = 0; k < rest.size(); ++k)
                rest[k] = std::max<int64_t>(0, rest[k] - copies[w] * m_ways[w].counts[k]);
            left[m_ways[w].bin].left -= copies[w];
            cost += copies[w] * m_bins[m_ways[w].bin].price;
            bins.insert(bins.end(), static_cast<std::size_t>(copies[w]), w);
        }
        const auto more = chosen(rest, left);
        BinPlan plan = laidOut(bins, more);
        if (isEnough(plan) || m_effort.isOver()) return plan;
        BinPlan other = laidOut(bins, {});
        addSearched(other, left, m_enough - cost);
        return std::tuple(!other.isWhole, other.cost, other.bins.size()) <
                       std::tuple(!plan.isWhole, plan.cost, plan.bins.size())
                   ? other
                   : plan;
    }

    /// Boxes in the places of the ways; those too many are left out.
    BinPlan laidOut(std::vector<std::size_t> bins, const std::vector<std::size_t>& more) const {
        bins.insert(bins.end(), more.begin(), more.end());
        std::vector<std::vector<std::size_t>> free(m_kinds.size());
        for (std::size_t i = m_boxes.size(); i-- > 0;) free[m_boxes[i].kind].push_back(i);
        BinPlan plan;
        for (const std::size_t w : bins) {
            FilledBin filled{m_ways[w].bin, {}};
            for (Laid one : m_ways[w].laid) {
                auto& boxes = free[one.box];
                if (boxes.empty()) continue;
                const BoxKind& kind = m_kinds[one.box];
                one.box = boxes.back();
                boxes.pop_back();
                // Equal boxes may be given the other way round.
                const Box& box = m_boxes[one.box];
                if (box.width != kind.width) one.turned = !one.turned;
                filled.laid.push_back(one);
            }
            if (filled.laid.empty()) continue;
            plan.cost += m_bins[filled.kind].price;
            plan.bins.push_back(std::move(filled));
        }
        plan.isWhole = std::all_of(free.begin(), free.end(), [](const auto& boxes) { return boxes.empty(); });
        return plan;
    }

    /// What a plan does not hold, by the other search.
    void addSearched(BinPlan& plan, const std::vector<Bin>& left, int64_t enough) {
        std::vector<char> isLaid(m_boxes.size(), 0);
        for (const FilledBin& bin : plan.bins)
            for (const Laid& one : bin.laid) isLaid[one.box] = 1;
        std::vector<Box> rest;
        std::vector<std::size_t> restOf;
        for (std::size_t i = 0; i < m_boxes.size(); ++i)
            if (isLaid[i] == 0) {
                rest.push_back(m_boxes[i]);
                restOf.push_back(i);
            }
        if (rest.empty() || rest.size() > 400 ||
            std::all_of(left.begin(), left.end(), [](const Bin& bin) { return bin.left == 0; }))
            return;
        const MixedEffort part = m_effort.part(8);
        Effort effort(part);
        BinPlan more = searchBins(rest, left, m_mayTurn, enough, effort);
        m_effort.steps() -= part.steps - effort.steps();
        for (FilledBin& bin : more.bins) {
            for (Laid& one : bin.laid) one.box = restOf[one.box];
            plan.bins.push_back(std::move(bin));
        }
        plan.cost += more.cost;
        plan.isWhole = more.isWhole;
    }

    /// The cheapest ways found that hold the rest; nothing where none was found.
    std::vector<std::size_t> chosen(const std::vector<int64_t>& rest, const std::vector<Bin>& left) {
        Choice choice{pricesOfKinds(), 1e300, {}, {}, {}, 20'000};
        for (const Bin& bin : left) choice.left.push_back(bin.left);
        choose(choice, rest, 0);
        m_effort.steps() -= (20'000 - choice.nodes) * static_cast<int64_t>(m_ways.size() / 8 + 4);
        return choice.best;
    }

    struct Choice {
        std::vector<double> worth; ///< by kind
        double cost;               ///< of the best
        std::vector<std::size_t> best;
        std::vector<std::size_t> now;
        std::vector<int64_t> left; ///< by bin
        int64_t nodes;
    };

    void choose(Choice& choice, const std::vector<int64_t>& rest, double cost) const {
        double worth = 0;
        std::size_t most = rest.size();
        for (std::size_t k = 0; k < rest.size(); ++k) {
            if (rest[k] == 0) continue;
            const double here = (choice.worth[k] + 1e-9) * static_cast<double>(rest[k]);
            if (most == rest.size() || here > (choice.worth[most] + 1e-9) * static_cast<double>(rest[most])) most = k;
            worth += choice.worth[k] * static_cast<double>(rest[k]);
        }
        if (most == rest.size()) {
            if (cost >= choice.cost * (1 - 1e-12)) return;
            choice.cost = cost;
            choice.best = choice.now;
            return;
        }
        if (--choice.nodes <= 0 || cost + worth >= choice.cost * (1 - 1e-9)) return;
        std::vector<std::pair<double, std::size_t>> next; // what it costs more than it is worth
        for (std::size_t w = 0; w < m_ways.size(); ++w) {
            const BinWay& way = m_ways[w];
            if (way.counts[most] == 0 || choice.left[way.bin] == 0) continue;
            double brings = 0;
            for (std::size_t k = 0; k < rest.size(); ++k)
                brings += choice.worth[k] * static_cast<double>(std::min(rest[k], way.counts[k]));
            next.emplace_back(m_prices[way.bin] - brings, w);
        }
        std::sort(next.begin(), next.end());
        for (std::size_t i = 0; i < std::min<std::size_t>(next.size(), 8) && choice.nodes > 0; ++i) {
            const BinWay& way = m_ways[next[i].second];
            auto less = rest;
            for (std::size_t k = 0; k < rest.size(); ++k) less[k] = std::max<int64_t>(0, rest[k] - way.counts[k]);
            --choice.left[way.bin];
            choice.now.push_back(next[i].second);
            choose(choice, less, cost + m_prices[way.bin]);
            choice.now.pop_back();
            ++choice.left[way.bin];
        }
    }

    const std::vector<Box>& m_boxes;
    const std::vector<Bin>& m_bins;
    bool m_mayTurn;
    int64_t m_enough;
    std::vector<BinWay>& m_ways;
    Effort& m_effort;
    std::vector<BoxKind> m_kinds;
    std::vector<double> m_prices; ///< by bin
    std::mt19937_64 m_random{0xC07E5};
};

} // namespace

BinPlan coverWithPatterns(const std::vector<Box>& boxes, const std::vector<Bin>& bins, bool mayTurn, int64_t enough,
                          std::vector<BinWay>& ways, Effort& effort) {
    for (const Box& box : boxes)
        if (box.kind >= kMaxPatternKinds) return {};
    return Cover(boxes, bins, mayTurn, enough, ways, effort).run();
}

} // namespace sp::layout
