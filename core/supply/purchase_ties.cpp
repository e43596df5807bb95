// SPDX-License-Identifier: MIT
#include "core/supply/purchase_ties.h"

#include "core/supply/purchase_basket.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <tuple>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr std::size_t kMostListed = 1'000; ///< packs and suppliers, of which each is a step deeper

/// What is paid to a supplier: nothing, goods and shipping, goods that ship free, or goods that never ship for more and
/// need not come to any sum, so that whether there are some is no question.
enum class Terms { Off, Paid, Free, Plain };

class Ties {
  public:
    Ties(const Model& model, const SearchResult& found, int64_t steps)
        : m_model(model)
        , m_cost(found.cost)
        , m_basket(model)
        , m_order(model.packs.size())
        , m_terms(model.suppliers.size(), Terms::Off)
        , m_best(found.counts)
        , m_left(steps) {
        // Kits first: with them decided, what the rest costs at least is known exactly.
        std::iota(m_order.begin(), m_order.end(), std::size_t{0});
        std::stable_partition(m_order.begin(), m_order.end(), [&](std::size_t p) { return model.packs[p].isKit(); });
        weighMaterials();
        m_bestKey = keyOf(found.counts);
        for (std::size_t p = 0; p < found.counts.size(); ++p) m_basket.set(p, found.counts[p]);
        for (std::size_t s = 0; s < m_terms.size(); ++s) {
            const bool isFree = m_basket.goods(s) >= model.suppliers[s].freeFrom && model.suppliers[s].shipping > 0;
            m_known.push_back(!m_basket.isUsed(s) ? Terms::Off : isFree ? Terms::Free : Terms::Paid);
        }
        for (std::size_t p = 0; p < found.counts.size(); ++p) m_basket.set(p, 0);
    }

    std::vector<int64_t> run() {
        decide(0, m_model.cost);
        return m_best;
    }

  private:
    /// Less is better.
    using Key = std::array<int64_t, 3>;

    Key keyOf(const std::vector<int64_t>& counts) const {
        Key key{};
        std::vector<char> isUsed(m_model.suppliers.size(), 0);
        for (std::size_t p = 0; p < counts.size(); ++p) {
            if (counts[p] == 0) continue;
            key[0] -= m_model.packs[p].value * counts[p];
            isUsed[at(m_model.packs[p].supplier)] = 1;
            key[2] += counts[p];
        }
        key[1] = std::count(isUsed.begin(), isUsed.end(), 1);
        return key;
    }

    bool spend(int64_t steps) {
        m_left -= steps;
        return m_left >= 0;
    }

    /// What a unit of each material costs where it is cheapest: by that the price of a kit is split.
    void weighMaterials() {
        m_weights.assign(m_model.needs.size(), 0);
        for (const ModelPack& pack : m_model.packs) {
            if (pack.isKit() || pack.gives.front().units < 1) continue;
            const auto& give = pack.gives.front();
            const double each = static_cast<double>(pack.tiers.back().each) / static_cast<double>(give.units);
            double& weight = m_weights[at(give.material)];
            if (weight <= 0 || each < weight) weight = each;
        }
    }

    /// The part of what so many of a pack cost that is laid on one of its gives; all parts together are no more than
    /// the whole.
    int64_t partOf(const ModelPack& pack, std::size_t give, int64_t cost) const {
        if (!pack.isKit()) return cost;
        double whole = 0;
        double part = 0;
        for (std::size_t g = 0; g < pack.gives.size(); ++g) {
            const double here = m_weights[at(pack.gives[g].material)] * static_cast<double>(pack.gives[g].units);
            whole += here;
            if (g == give) part = here;
        }
        constexpr int64_t kParts = 1'000;
        const double share = whole > 0 ? part / whole : 1.0 / static_cast<double>(pack.gives.size());
        return cost / kParts * static_cast<int64_t>(share * static_cast<double>(kParts));
    }

    /// The suppliers one by one, as long as what has to be paid anyway leaves room.
    void decide(std::size_t s, int64_t atLeast) {
        if (atLeast > m_cost || !spend(1)) return;
        if (s == m_terms.size()) return tryTerms();
        const ModelSupplier& supplier = m_model.suppliers[s];
        if (supplier.shipping == 0 && supplier.minimum == 0) {
            m_terms[s] = Terms::Plain;
            return decide(s + 1, atLeast);
        }
        // As in the plan known first: there its equals are to be found.
        std::array<Terms, 3> all{Terms::Off, Terms::Paid, Terms::Free};
        std::swap(all[0], all[static_cast<std::size_t>(m_known[s])]);
        for (const Terms terms : all) {
            if (terms == Terms::Free && (supplier.freeFrom >= kNever || supplier.shipping == 0)) continue;
            const int64_t more = terms == Terms::Off    ? 0
                                 : terms == Terms::Paid ? supplier.shipping + supplier.minimum
                                                        : std::max(supplier.freeFrom, supplier.minimum);
            m_terms[s] = terms;
            decide(s + 1, atLeast + more);
        }
    }

    /// All plans of these suppliers.
    void tryTerms() {
        m_budget = m_cost - m_model.cost;
        m_sums.clear();
        for (std::size_t s = 0; s < m_terms.size(); ++s) {
            const ModelSupplier& supplier = m_model.suppliers[s];
            if (m_terms[s] == Terms::Paid) m_budget -= supplier.shipping;
            m_sums.push_back(m_terms[s] == Terms::Free   ? std::max(supplier.freeFrom, supplier.minimum)
                             : m_terms[s] == Terms::Paid ? supplier.minimum
                                                         : 0);
        }
        if (!makeCurves()) return;
        choose(0, 0);
    }

    /// What each number of units of each material costs at least with the packs from each place of the order on.
    bool makeCurves() {
        m_curves.clear();
        if (!spend(static_cast<int64_t>((m_order.size() + 1) * m_model.needs.size()))) return false;
        m_curveAt.assign(m_order.size() + 1, std::vector<std::size_t>(m_model.needs.size()));
        for (std::size_t m = 0; m < m_model.needs.size(); ++m) {
            if (!spend(m_model.needs[m])) return false;
            std::vector<int64_t> none(at(m_model.needs[m]) + 1, kNever);
            none[0] = 0;
            m_curveAt.back()[m] = m_curves.size();
            m_curves.push_back(std::move(none));
        }
        for (std::size_t k = m_order.size(); k-- > 0;) {
            m_curveAt[k] = m_curveAt[k + 1];
            const ModelPack& pack = m_model.packs[m_order[k]];
            if (m_terms[at(pack.supplier)] == Terms::Off) continue;
            for (std::size_t g = 0; g < pack.gives.size(); ++g) {
                const auto m = at(pack.gives[g].material);
                if (pack.gives[g].units < 1) continue;
                auto curve = m_curves[m_curveAt[k][m]];
                if (!addTo(curve, pack, g)) return false;
                m_curveAt[k][m] = m_curves.size();
                m_curves.push_back(std::move(curve));
            }
        }
        return true;
    }

    bool addTo(std::vector<int64_t>& curve, const ModelPack& pack, std::size_t give) {
        const int64_t units = pack.gives[give].units;
        const auto need = static_cast<int64_t>(curve.size()) - 1;
        const int64_t last = std::min(pack.most, std::max((need + units - 1) / units, pack.lastFrom()));
        const auto before = curve;
        for (int64_t count = 1; count <= last; ++count) {
            if (!spend(need + 1)) return false;
            if (pack.cost(count) >= kNever) continue;
            const int64_t cost = partOf(pack, give, pack.cost(count));
            for (int64_t n = 1; n <= need; ++n) {
                const int64_t rest = before[at(std::max<int64_t>(0, n - count * units))];
                if (rest < kNever) curve[at(n)] = std::min(curve[at(n)], rest + cost);
            }
        }
        return true;
    }

    /// What the plan so far costs at least once it covers the needs and reaches the sums; kNever where it cannot.
    int64_t atLeast(std::size_t k, int64_t spent) const {
        int64_t cover = spent;
        for (std::size_t m = 0; m < m_model.needs.size(); ++m) {
            const int64_t rest = m_curves[m_curveAt[k][m]][at(std::max<int64_t>(0, m_basket.missing(m)))];
            if (rest >= kNever) return kNever;
            cover += rest;
        }
        int64_t sums = spent;
        for (std::size_t s = 0; s < m_sums.size(); ++s) sums += std::max<int64_t>(0, m_sums[s] - m_basket.goods(s));
        return std::max(cover, sums);
    }

    void choose(std::size_t k, int64_t spent) {
        if (!spend(static_cast<int64_t>(m_model.needs.size() + m_sums.size())) || atLeast(k, spent) > m_budget) return;
        if (k == m_order.size()) return take();
        const std::size_t p = m_order[k];
        const ModelPack& pack = m_model.packs[p];
        choose(k + 1, spent);
        if (m_terms[at(pack.supplier)] == Terms::Off) return;
        for (int64_t count = 1; count <= pack.most && m_left >= 0; ++count) {
            const int64_t cost = pack.cost(count);
            if (cost < kNever && spent + cost <= m_budget) {
                m_basket.set(p, count);
                choose(k + 1, spent + cost);
            } else if (count >= pack.lastFrom()) {
                break; // from here on each further pack costs more
            } else {
                spend(1);
            }
        }
        m_basket.set(p, 0);
    }

    void take() {
        if (!m_basket.isPlan() || m_basket.cost() != m_cost) return;
        const Key key = keyOf(m_basket.counts());
        if (std::tie(key, m_best) < std::tie(m_bestKey, m_basket.counts())) {
            m_best = m_basket.counts();
            m_bestKey = key;
        }
    }

    const Model& m_model;
    int64_t m_cost;
    Basket m_basket;
    std::vector<std::size_t> m_order; ///< in which packs are chosen
    std::vector<double> m_weights;    ///< by material
    std::vector<Terms> m_terms;       ///< by supplier
    std::vector<Terms> m_known;       ///< of the plan that was found
    std::vector<int64_t> m_sums;      ///< goods to be reached, by supplier
    int64_t m_budget = 0;             ///< for goods, beside the shipping of these terms
    std::vector<std::vector<int64_t>> m_curves;
    std::vector<std::vector<std::size_t>> m_curveAt; ///< by place in the order, by material
    std::vector<int64_t> m_best;
    Key m_bestKey{};
    int64_t m_left; ///< steps
};

} // namespace

SearchResult bestOfEqual(const Model& model, SearchResult found, int64_t steps) {
    const bool hasFree = std::any_of(model.packs.begin(), model.packs.end(), [](const ModelPack& pack) {
        return std::any_of(pack.tiers.begin(), pack.tiers.end(), [](const ModelTier& tier) { return tier.each == 0; });
    });
    if (!hasFree && std::max(model.packs.size(), model.suppliers.size()) <= kMostListed)
        found.counts = Ties(model, found, steps).run();
    return found;
}

} // namespace sp::supply
