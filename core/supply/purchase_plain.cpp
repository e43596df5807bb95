// SPDX-License-Identifier: MIT
#include "core/supply/purchase_plain.h"

#include <algorithm>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int kMaxLeftOut = 40; ///< suppliers tried without

/// What a pack is taken for.
enum class PackChoice {
    LeastAdded, ///< what it and a shipment that was not paid yet add, for each unit that is still missing
    LeastPrice, ///< what one of it costs for each unit in it: what a buyer without a pencil goes by
};

class PlainPlan {
  public:
    PlainPlan(const Model& model, const std::vector<char>& isOut, PackChoice choice)
        : m_model(model)
        , m_isOut(isOut)
        , m_choice(choice)
        , m_left(model.needs)
        , m_counts(model.packs.size(), 0)
        , m_goods(model.suppliers.size(), 0)
        , m_isUsed(model.suppliers.size(), 0) {
        for (std::size_t s = 0; s < m_goods.size(); ++s) {
            m_goods[s] = model.suppliers[s].goods;
            m_isUsed[s] = m_goods[s] > 0 ? 1 : 0;
        }
    }

    bool make() {
        for (std::size_t m = 0; m < m_left.size(); ++m)
            while (m_left[m] > 0)
                if (!buyFor(static_cast<int>(m))) return false;
        return fillUp();
    }

    const std::vector<int64_t>& counts() const { return m_counts; }
    const std::vector<char>& used() const { return m_isUsed; }
    int64_t cost() const {
        int64_t cost = m_model.cost;
        for (std::size_t p = 0; p < m_counts.size(); ++p)
            if (m_counts[p] > 0) cost += m_model.packs[p].cost(m_counts[p]);
        for (std::size_t s = 0; s < m_goods.size(); ++s)
            if (m_isUsed[s] != 0 && m_goods[s] < m_model.suppliers[s].freeFrom) cost += m_model.suppliers[s].shipping;
        return cost;
    }

  private:
    int64_t costOf(std::size_t p, int64_t count) const { return count == 0 ? 0 : m_model.packs[p].cost(count); }

    /// What so many more of a pack cost for each unit of what is missing.
    double weight(std::size_t p, const ModelGive& give, int64_t count, int64_t left) const {
        const ModelPack& pack = m_model.packs[p];
        if (m_choice == PackChoice::LeastPrice)
            return static_cast<double>(pack.tiers.front().each) / static_cast<double>(give.units);
        double adds = static_cast<double>(costOf(p, m_counts[p] + count) - costOf(p, m_counts[p]));
        if (m_isUsed[at(pack.supplier)] == 0)
            adds += static_cast<double>(m_model.suppliers[at(pack.supplier)].shipping);
        return adds / static_cast<double>(std::min(left, count * give.units));
    }

    /// The pack, and how many of it, that weighs least. False when none can be had.
    bool buyFor(int material) {
        std::size_t best = m_counts.size();
        int64_t bestCount = 0;
        double least = 0;
        for (std::size_t p = 0; p < m_model.packs.size(); ++p) {
            const ModelPack& pack = m_model.packs[p];
            if (m_isOut[at(pack.supplier)] != 0) continue;
            const auto give = std::find_if(pack.gives.begin(), pack.gives.end(),
                                           [material](const ModelGive& g) { return g.material == material; });
            if (give == pack.gives.end() || give->units < 1) continue;
            const int64_t left = m_left[at(material)];
            const int64_t wanted =
                std::max((left + give->units - 1) / give->units, pack.tiers.front().from - m_counts[p]);
            const int64_t count = std::min(wanted, pack.most - m_counts[p]);
            if (count < 1) continue;
            if (costOf(p, m_counts[p] + count) >= kNever) continue;
            const double weighs = weight(p, *give, count, left);
            if (best < m_counts.size() && weighs >= least) continue;
            best = p;
            bestCount = count;
            least = weighs;
        }
        if (best == m_counts.size()) return false;
        add(best, bestCount);
        return true;
    }

    void add(std::size_t p, int64_t count) {
        const ModelPack& pack = m_model.packs[p];
        m_goods[at(pack.supplier)] += costOf(p, m_counts[p] + count) - costOf(p, m_counts[p]);
        m_counts[p] += count;
        m_isUsed[at(pack.supplier)] = 1;
        for (const auto& give : pack.gives) m_left[at(give.material)] -= give.units * count;
    }

    /// More of what is sold until every order is large enough to be taken.
    bool fillUp() {
        for (std::size_t s = 0; s < m_goods.size(); ++s)
            if (m_isUsed[s] != 0 && !fillUp(static_cast<int>(s))) return false;
        return true;
    }

    bool fillUp(int supplier) {
        const int64_t minimum = m_model.suppliers[at(supplier)].minimum;
        for (std::size_t p = 0; p < m_model.packs.size() && m_goods[at(supplier)] < minimum; ++p) {
            const ModelPack& pack = m_model.packs[p];
            const int64_t each = pack.tiers.back().each; // the least, where prices fall with the count
            if (pack.supplier != supplier || each < 1) continue;
            const int64_t missing = minimum - m_goods[at(supplier)];
            const int64_t first = pack.tiers.front().from - m_counts[p];
            const int64_t room = pack.most - m_counts[p];
            const int64_t count = std::min(std::max((missing + each - 1) / each, first), room);
            if (count < 1 || costOf(p, m_counts[p] + count) >= kNever) continue;
            add(p, count);
            // A price that fell for all of them may leave a little to be filled up once more.
            const int64_t still = minimum - m_goods[at(supplier)];
            if (still > 0 && (still + each - 1) / each <= pack.most - m_counts[p]) add(p, (still + each - 1) / each);
        }
        return m_goods[at(supplier)] >= minimum;
    }

    const Model& m_model;
    const std::vector<char>& m_isOut;
    PackChoice m_choice;
    std::vector<int64_t> m_left;
    std::vector<int64_t> m_counts;
    std::vector<int64_t> m_goods;
    std::vector<char> m_isUsed;
};

/// Each material at the least price of a unit anywhere; with packs that give several, the dearest material alone.
int64_t plainBound(const Model& model) {
    if (model.isReduced) return model.floor;
    std::vector<double> least(model.needs.size(), -1);
    bool hasKits = false;
    for (const ModelPack& pack : model.packs) {
        hasKits = hasKits || pack.isKit();
        int64_t each = pack.tiers.front().each;
        for (const auto& tier : pack.tiers) each = std::min(each, tier.each);
        for (const auto& give : pack.gives) {
            if (give.units < 1) continue;
            const double unit = static_cast<double>(each) / static_cast<double>(give.units);
            double& known = least[at(give.material)];
            if (known < 0 || unit < known) known = unit;
        }
    }
    double bound = 0;
    for (std::size_t m = 0; m < least.size(); ++m) {
        const double cost = std::max(0.0, least[m]) * static_cast<double>(model.needs[m]);
        bound = hasKits ? std::max(bound, cost) : bound + cost;
    }
    return static_cast<int64_t>(bound * (1 - 1e-9));
}

} // namespace

SearchResult plainPurchase(const Model& model) {
    SearchResult result;
    result.bound = plainBound(model);
    std::vector<char> isOut(model.suppliers.size(), 0);
    const auto tryWith = [&](const std::vector<char>& out, PackChoice choice = PackChoice::LeastAdded) {
        PlainPlan plan(model, out, choice);
        if (!plan.make() || (!result.counts.empty() && plan.cost() >= result.cost)) return false;
        result.counts = plan.counts();
        result.cost = plan.cost();
        return true;
    };
    tryWith(isOut);
    tryWith(isOut, PackChoice::LeastPrice);
    int tries = 0;
    for (std::size_t s = 0; s < isOut.size() && tries < kMaxLeftOut; ++s) {
        const bool isBought = std::any_of(model.packs.begin(), model.packs.end(), [&](const ModelPack& pack) {
            return at(pack.supplier) == s && !result.counts.empty() &&
                   result.counts[static_cast<std::size_t>(&pack - model.packs.data())] > 0;
        });
        if (!isBought && !result.counts.empty()) continue;
        ++tries;
        isOut[s] = 1;
        if (!tryWith(isOut)) isOut[s] = 0;
    }
    result.bound = std::min(result.bound, result.cost);
    return result;
}

} // namespace sp::supply
