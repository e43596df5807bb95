// SPDX-License-Identifier: MIT
#include "core/supply/purchase_improve.h"

#include "core/supply/purchase_basket.h"
#include "core/units/int128.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <random>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int64_t kStep = 5; ///< simple steps in what is counted as one of the work here
constexpr std::size_t kNone = static_cast<std::size_t>(-1);
constexpr std::size_t kMaxSubsets = 6; ///< of so many suppliers every choice is tried, of more each is left out once

/// Fills an order up with the least goods that reach a sum.
class Filler {
  public:
    explicit Filler(const Model& model)
        : m_model(model)
        , m_packs(model.suppliers.size()) {
        for (std::size_t p = 0; p < model.packs.size(); ++p) m_packs[at(model.packs[p].supplier)].push_back(p);
    }

    const std::vector<std::size_t>& packsOf(std::size_t supplier) const { return m_packs[supplier]; }

    /// Raises the supplier's goods to `target` or a little above, if it can be done.
    bool reach(Basket& basket, std::size_t supplier, int64_t target, std::size_t frozen) const {
        struct Way {
            std::size_t first = kNone;
            int64_t firstCount = 0;
            std::size_t second = kNone;
            int64_t secondCount = 0;
            int64_t goods = kNever;
        } best;
        const auto& packs = m_packs[supplier];
        for (const std::size_t p : packs) {
            if (p == frozen) continue;
            const int64_t missing = target - basket.goods(supplier);
            const auto alone = enough(basket, p, missing);
            if (alone && basket.goods(supplier) + alone->second < best.goods)
                best = {p, alone->first, kNone, 0, basket.goods(supplier) + alone->second};
            if (packs.size() > kPairs) continue;
            const auto below = justBelow(basket, p, missing);
            if (!below) continue;
            for (const std::size_t q : packs) {
                if (q == p || q == frozen) continue;
                const auto rest = enough(basket, q, missing - below->second);
                if (!rest || basket.goods(supplier) + below->second + rest->second >= best.goods) continue;
                best = {p, below->first, q, rest->first, basket.goods(supplier) + below->second + rest->second};
            }
        }
        if (best.first == kNone) return false;
        basket.set(best.first, best.firstCount);
        if (best.second != kNone) basket.set(best.second, best.secondCount);
        return true;
    }

  private:
    using Found = std::optional<std::pair<int64_t, int64_t>>; ///< a count of the pack, and what it adds
    static constexpr std::size_t kPairs = 40;

    /// The count that adds `missing` or the least above.
    Found enough(const Basket& basket, std::size_t p, int64_t missing) const {
        const ModelPack& pack = m_model.packs[p];
        const int64_t sum = basket.lineCost(p) + missing;
        Found best;
        for (std::size_t t = 0; t < pack.tiers.size(); ++t) {
            const int64_t each = pack.tiers[t].each;
            if (each < 1) continue;
            const int64_t last = lastOf(pack, t);
            const int64_t count = std::max({(sum + each - 1) / each, pack.tiers[t].from, basket.count(p)});
            const int64_t adds = count * each - basket.lineCost(p);
            if (count <= last && adds >= missing && (!best || adds < best->second)) best = {count, adds};
        }
        return best;
    }

    /// The count that adds most below `missing`.
    Found justBelow(const Basket& basket, std::size_t p, int64_t missing) const {
        const ModelPack& pack = m_model.packs[p];
        const int64_t sum = basket.lineCost(p) + missing - 1;
        Found best;
        for (std::size_t t = 0; t < pack.tiers.size(); ++t) {
            const int64_t each = pack.tiers[t].each;
            if (each < 1) continue;
            const int64_t count = std::min(sum / each, lastOf(pack, t));
            const int64_t adds = count * each - basket.lineCost(p);
            if (count < pack.tiers[t].from || count <= basket.count(p) || adds < 1) continue;
            if (!best || adds > best->second) best = {count, adds};
        }
        return best;
    }

    static int64_t lastOf(const ModelPack& pack, std::size_t tier) {
        return tier + 1 < pack.tiers.size() ? std::min(pack.most, pack.tiers[tier + 1].from - 1) : pack.most;
    }

    const Model& m_model;
    std::vector<std::vector<std::size_t>> m_packs; ///< by supplier
};

class Improver {
  public:
    Improver(const Model& model, int64_t work)
        : m_model(model)
        , m_filler(model)
        , m_work(work / kStep)
        , m_packsOf(model.needs.size())
        , m_price(model.needs.size(), 0)
        , m_noise(model.packs.size(), 1) {
        for (std::size_t p = 0; p < model.packs.size(); ++p)
            for (const auto& give : model.packs[p].gives)
                if (give.units > 0) m_packsOf[at(give.material)].push_back(p);
        priceMaterials();
    }

    SearchResult run(const std::vector<int64_t>& counts) {
        if (!counts.empty()) {
            Basket given(m_model);
            for (std::size_t p = 0; p < counts.size(); ++p) given.set(p, counts[p]);
            keep(given);
        }
        startAnew();
        if (m_best) {
            Basket now = *m_best;
            better(now);
            shake();
        }
        SearchResult result;
        if (!m_best) return result;
        result.counts = m_best->counts();
        result.cost = m_best->cost();
        return result;
    }

  private:
    bool isDone() const { return m_work <= 0; }

    /// What a unit of a material is worth: its least price in a pack of it alone, in kits by their parts.
    void priceMaterials() {
        for (int round = 0; round < 3; ++round) {
            std::vector<double> least(m_price.size(), -1);
            for (const ModelPack& pack : m_model.packs) {
                int64_t each = pack.tiers.front().each;
                for (const auto& tier : pack.tiers) each = std::min(each, tier.each);
                double whole = 0;
                for (const auto& give : pack.gives) whole += weight(give.material) * static_cast<double>(give.units);
                for (const auto& give : pack.gives) {
                    if (give.units < 1 || whole <= 0) continue;
                    const double unit = static_cast<double>(each) * weight(give.material) / whole;
                    double& known = least[at(give.material)];
                    if (known < 0 || unit < known) known = unit;
                }
            }
            for (std::size_t m = 0; m < least.size(); ++m) m_price[m] = std::max(least[m], 0.0);
        }
        for (double& price : m_price) price = std::max(price, 1e-6);
    }
    double weight(int material) const { return m_price[at(material)] > 0 ? m_price[at(material)] : 1.0; }

    // ---- from nothing

    /// Plain plans from every choice of few suppliers, from all but each of many.
    void startAnew() {
        const std::size_t suppliers = m_model.suppliers.size();
        m_isOut.assign(suppliers, 0);
        makePlainest();
        makeAnew();
        if (suppliers <= kMaxSubsets) {
            for (unsigned choice = 1; choice + 1 < (1U << suppliers) && !isDone(); ++choice) {
                for (std::size_t s = 0; s < suppliers; ++s) m_isOut[s] = (choice >> s) & 1U ? 0 : 1;
                makeAnew();
            }
        } else {
            for (std::size_t s = 0; s < suppliers && m_best && !isDone(); ++s) {
                if (!m_best->isUsed(s)) continue;
                m_isOut.assign(suppliers, 0);
                m_isOut[s] = 1;
                makeAnew();
            }
        }
        m_isOut.assign(suppliers, 0);
    }

    /// Of each material in turn the pack of the least price for one, whatever else it gives or its supplier asks.
    void makePlainest() {
        Basket basket(m_model);
        for (std::size_t m = 0; m < m_packsOf.size(); ++m) {
            std::size_t best = kNone;
            int64_t bestUnits = 1;
            for (const std::size_t p : m_packsOf[m]) {
                const ModelPack& pack = m_model.packs[p];
                int64_t units = 0;
                for (const auto& give : pack.gives)
                    if (at(give.material) == m) units = give.units;
                if (best != kNone && units::Int128{pack.tiers.front().each} * bestUnits >=
                                         units::Int128{m_model.packs[best].tiers.front().each} * units)
                    continue;
                best = p;
                bestUnits = units;
            }
            if (best == kNone || basket.missing(m) <= 0) continue;
            const int64_t count = basket.count(best) + (basket.missing(m) + bestUnits - 1) / bestUnits;
            if (m_model.packs[best].cost(count) >= kNever) return;
            basket.set(best, count);
        }
        keep(basket);
        if (!basket.isCovered()) return;
        trim(basket, kNone);
        if (fillUp(basket, kNone)) keep(basket);
    }

    void makeAnew() {
        Basket basket(m_model);
        for (std::size_t s = 0; s < m_isOut.size(); ++s)
            if (m_isOut[s] != 0 && basket.isUsed(s)) return; // bought ahead from
        if (complete(basket, kNone)) keep(basket);
    }

    void keep(const Basket& basket) {
        if (basket.isPlan() && (!m_best || isBetter(basket, *m_best))) m_best = basket;
    }

    static bool isBetter(const Basket& a, const Basket& b) {
        const int64_t costA = a.cost();
        const int64_t costB = b.cost();
        return costA != costB ? costA < costB : a.value() > b.value();
    }

    // ---- a basket made whole

    /// Buys what is missing, drops what is too much, fills orders up. `frozen` keeps its count.
    bool complete(Basket& basket, std::size_t frozen) {
        for (std::size_t m = dearestMissing(basket); m != kNone; m = dearestMissing(basket))
            if (!buyFor(basket, m, frozen)) return false;
        trim(basket, frozen);
        return fillUp(basket, frozen);
    }

    std::size_t dearestMissing(const Basket& basket) const {
        std::size_t dearest = kNone;
        double most = 0;
        for (std::size_t m = 0; m < m_price.size(); ++m) {
            const double worth = static_cast<double>(basket.missing(m)) * m_price[m];
            if (basket.missing(m) <= 0 || (dearest != kNone && worth <= most)) continue;
            dearest = m;
            most = worth;
        }
        return dearest;
    }

    /// The pack, and how many of it, that costs least for what it brings of everything missing.
    bool buyFor(Basket& basket, std::size_t material, std::size_t frozen) {
        std::size_t best = kNone;
        int64_t bestCount = 0;
        double least = 0;
        for (const std::size_t p : m_packsOf[material]) {
            const ModelPack& pack = m_model.packs[p];
            if (p == frozen || m_isOut[at(pack.supplier)] != 0) continue;
            for (const int64_t count : countsFor(basket, p, material)) {
                const double score = scoreOf(basket, p, count);
                if (best != kNone && score >= least) continue;
                best = p;
                bestCount = count;
                least = score;
            }
        }
        if (best == kNone) return false;
        basket.set(best, bestCount);
        m_work -= static_cast<int64_t>(m_packsOf[material].size()) * 4;
        return true;
    }

    /// The counts worth a look: enough of this material and one less, enough of a kit's others, each later price.
    const std::vector<int64_t>& countsFor(const Basket& basket, std::size_t p, std::size_t material) {
        const ModelPack& pack = m_model.packs[p];
        const int64_t now = basket.count(p);
        m_counts.clear();
        const auto look = [&](int64_t count) {
            count = std::min(std::max(count, pack.tiers.front().from), pack.most);
            if (count > now && std::find(m_counts.begin(), m_counts.end(), count) == m_counts.end())
                m_counts.push_back(count);
        };
        for (const auto& give : pack.gives) {
            const int64_t missing = basket.missing(at(give.material));
            if (missing <= 0 || give.units < 1) continue;
            const int64_t enough = now + (missing + give.units - 1) / give.units;
            look(enough);
            if (at(give.material) != material) continue;
            look(std::max(now + 1, enough - 1));
            for (const auto& tier : pack.tiers)
                if (tier.from < 2 * enough) look(tier.from);
        }
        return m_counts;
    }

    double scoreOf(const Basket& basket, std::size_t p, int64_t count) const {
        const ModelPack& pack = m_model.packs[p];
        const ModelSupplier& supplier = m_model.suppliers[at(pack.supplier)];
        const auto s = at(pack.supplier);
        const int64_t goods = pack.cost(count) - basket.lineCost(p);
        double adds = static_cast<double>(goods);
        if (!basket.isUsed(s)) adds += static_cast<double>(supplier.shipping);
        // What an order lacks is filled up with something: of little use as a rule.
        const int64_t lacked = std::max<int64_t>(0, supplier.minimum - basket.goods(s));
        const int64_t lacks = std::max<int64_t>(0, lacked - std::max<int64_t>(0, goods));
        if (!basket.isUsed(s))
            adds += m_fear * static_cast<double>(lacks);
        else
            adds -= m_fear * static_cast<double>(lacked - lacks);
        double brings = 0;
        for (const auto& give : pack.gives) {
            const int64_t missing = std::max<int64_t>(0, basket.missing(at(give.material)));
            brings += m_price[at(give.material)] *
                      static_cast<double>(std::min(missing, give.units * (count - basket.count(p))));
        }
        return brings <= 0 ? 1e300 : (adds <= 0 ? adds : adds * m_noise[p] / brings);
    }

    /// Fewer of each line, the dearest first, as far as nothing is missing and the order is still taken.
    void trim(Basket& basket, std::size_t frozen) {
        m_lines.clear();
        for (std::size_t p = 0; p < m_model.packs.size(); ++p)
            if (basket.count(p) > 0 && p != frozen) m_lines.push_back(p);
        std::stable_sort(m_lines.begin(), m_lines.end(), [&](std::size_t a, std::size_t b) {
            return basket.lineCost(a) / basket.count(a) > basket.lineCost(b) / basket.count(b);
        });
        m_work -= static_cast<int64_t>(m_model.packs.size() / 8 + m_lines.size() * 4 + 4);
        for (const std::size_t p : m_lines) {
            const ModelPack& pack = m_model.packs[p];
            int64_t spare = basket.count(p);
            for (const auto& give : pack.gives)
                if (give.units > 0)
                    spare = std::min(spare, std::max<int64_t>(0, -basket.missing(at(give.material))) / give.units);
            const int64_t before = basket.count(p);
            const int64_t least = before - spare;
            int64_t best = before;
            int64_t bestCost = basket.cost();
            const auto look = [&](int64_t count) {
                if (count < least || pack.cost(count) >= kNever) return;
                basket.set(p, count);
                const int64_t cost = basket.cost();
                if (cost < bestCost && basket.belowMinimum(at(pack.supplier)) == 0) {
                    best = count;
                    bestCost = cost;
                }
            };
            look(least);
            for (const auto& tier : pack.tiers) look(tier.from);
            basket.set(p, best);
        }
    }

    bool fillUp(Basket& basket, std::size_t frozen) {
        for (std::size_t s = 0; s < m_model.suppliers.size(); ++s) {
            const ModelSupplier& supplier = m_model.suppliers[s];
            if (!basket.isUsed(s)) continue;
            if (basket.belowMinimum(s) > 0) {
                m_work -= workToFill(s);
                if (!m_filler.reach(basket, s, supplier.minimum, frozen)) return false;
            }
            const int64_t missing = supplier.freeFrom - basket.goods(s);
            if (supplier.freeFrom >= kNever || missing <= 0 || missing >= supplier.shipping) continue;
            m_work -= workToFill(s);
            Basket filled = basket;
            if (m_filler.reach(filled, s, supplier.freeFrom, frozen) && filled.cost() < basket.cost()) basket = filled;
        }
        return true;
    }
    int64_t workToFill(std::size_t supplier) const {
        const auto packs = static_cast<int64_t>(m_filler.packsOf(supplier).size());
        return packs > 40 ? packs * 4 : packs * packs * 2;
    }

    // ---- bettering

    /// Changes one line at a time and buys the rest anew around it, while that helps.
    void better(Basket& basket) {
        for (bool helps = true; helps && !isDone();) {
            helps = false;
            for (std::size_t p = 0; p < m_model.packs.size() && !isDone(); ++p) {
                if (m_isOut[at(m_model.packs[p].supplier)] != 0) continue;
                for (const int64_t count : changesOf(basket, p)) {
                    Basket other = basket;
                    m_work -= static_cast<int64_t>(m_model.packs.size() / 4);
                    other.set(p, count);
                    if (!complete(other, p) || !isBetter(other, basket)) continue;
                    basket = std::move(other);
                    helps = true;
                }
            }
            keep(basket);
        }
        keep(basket);
    }

    std::vector<int64_t> changesOf(const Basket& basket, std::size_t p) const {
        const ModelPack& pack = m_model.packs[p];
        const int64_t now = basket.count(p);
        std::vector<int64_t> counts;
        const auto look = [&](int64_t count) {
            if (count == now || count < 0 || pack.cost(count) >= kNever) return;
            if (std::find(counts.begin(), counts.end(), count) == counts.end()) counts.push_back(count);
        };
        for (const int64_t step : {1, 2, 3}) {
            look(now - step);
            look(now + step);
        }
        if (now > 0) look(0);
        if (now > 7) look(now / 2);
        for (const auto& tier : pack.tiers) {
            look(tier.from);
            if (tier.from > 1) look(tier.from - 1);
        }
        for (const auto& give : pack.gives) {
            const int64_t need = m_model.needs[at(give.material)];
            if (need < 1 || give.units < 1) continue;
            look((need + give.units - 1) / give.units);
            look(need / give.units);
        }
        return counts;
    }

    /// Leaves lines out at random, at prices a little off, and buys anew.
    void shake() {
        std::mt19937_64 random(20260914);
        const auto below = [&random](std::size_t n) { return static_cast<std::size_t>(random() % n); };
        Basket now = *m_best;
        std::size_t stale = 0;
        while (!isDone()) {
            Basket other = now;
            m_work -= static_cast<int64_t>(m_model.packs.size() / 2 + 20);
            m_lines.clear();
            for (std::size_t p = 0; p < m_model.packs.size(); ++p)
                if (other.count(p) > 0) m_lines.push_back(p);
            if (m_lines.empty()) break;
            const std::size_t out = 1 + below(std::min<std::size_t>(4, m_lines.size()));
            for (std::size_t i = 0; i < out; ++i) {
                const std::size_t p = m_lines[below(m_lines.size())];
                const int64_t keeps = below(3) == 0 ? other.count(p) / 2 : 0;
                if (m_model.packs[p].cost(keeps) < kNever) other.set(p, keeps);
            }
            if (below(4) == 0) m_isOut[below(m_isOut.size())] = 1;
            for (std::size_t s = 0; s < m_isOut.size(); ++s)
                if (m_isOut[s] != 0) leaveOut(other, s);
            for (double& noise : m_noise) noise = 0.7 + 0.6 * static_cast<double>(below(1024)) / 1024.0;
            m_fear = static_cast<double>(below(4)) / 3.0;
            const bool isPlan = complete(other, kNone);
            m_isOut.assign(m_isOut.size(), 0);
            if (!isPlan) continue;
            const int64_t cost = now.cost();
            if (other.cost() > cost + cost / 50) continue;
            if (++stale % 8 == 0 || other.cost() <= cost) {
                std::fill(m_noise.begin(), m_noise.end(), 1.0);
                better(other);
            }
            if (isBetter(other, now) || below(16) == 0) now = other;
            keep(other);
            if (stale % 64 == 0) now = *m_best;
        }
    }

    void leaveOut(Basket& basket, std::size_t supplier) const {
        for (const std::size_t p : m_filler.packsOf(supplier)) basket.set(p, 0);
    }

    const Model& m_model;
    Filler m_filler;
    int64_t m_work;
    std::vector<std::vector<std::size_t>> m_packsOf; ///< by material
    std::vector<double> m_price;                     ///< granules a unit
    std::vector<double> m_noise;                     ///< by pack
    double m_fear = 0.5;                             ///< of what an order lacks, the share that is thought lost
    std::vector<char> m_isOut;                       ///< suppliers not bought from now
    std::vector<int64_t> m_counts;                   ///< of countsFor
    std::vector<std::size_t> m_lines;
    std::optional<Basket> m_best;
};

} // namespace

SearchResult improvedPurchase(const Model& model, const std::vector<int64_t>& counts, int64_t work) {
    return Improver(model, work).run(counts);
}

} // namespace sp::supply
