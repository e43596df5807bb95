// SPDX-License-Identifier: MIT
#include "core/supply/purchase_relaxation.h"

#include <algorithm>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr int64_t kMaxOfAKit = 20'000;
constexpr std::size_t kMaxKeptCells = 6'000'000; // of merged curves

/// The steps that a curve takes: of a pack of u units need^2 / 2u, and its later prices for each unit.
int64_t workOfCurve(const Model& model, int material, const std::vector<int>& packs) {
    const int64_t need = model.needs[at(material)];
    int64_t work = 0;
    for (const int index : packs) {
        const ModelPack& pack = model.packs[at(index)];
        const int64_t units = std::max<int64_t>(1, pack.gives[0].units);
        work += need * (2 + std::min(need / (2 * units), pack.most) + static_cast<int64_t>(pack.tiers.size()));
    }
    return 2 * work;
}

int64_t plus(int64_t a, int64_t b) { return std::min(kScaledNever, a + b); }

} // namespace

Market::Market(const Model& model, int64_t steps)
    : m_model(model)
    , m_kitsOf(model.needs.size())
    , m_curves(model.needs.size())
    , m_merged(model.needs.size()) {
    std::vector<std::map<int, std::vector<int>>> singles(model.needs.size());
    for (std::size_t i = 0; i < model.packs.size(); ++i) {
        const ModelPack& pack = model.packs[i];
        if (!pack.isKit()) {
            singles[at(pack.gives[0].material)][pack.supplier].push_back(static_cast<int>(i));
            continue;
        }
        int64_t most = pack.lastFrom();
        for (const auto& give : pack.gives)
            if (give.units > 0) most = std::max(most, (need(give.material) + give.units - 1) / give.units);
        const ModelSupplier& supplier = model.suppliers[at(pack.supplier)];
        const int64_t each = pack.tiers.back().each;
        const int64_t sum = std::max(supplier.minimum, supplier.freeFrom >= kNever ? 0 : supplier.freeFrom);
        if (each > 0) most = std::max(most, (sum + each - 1) / each);
        most = std::min(most, pack.most);
        if (most > kMaxOfAKit) {
            most = kMaxOfAKit;
            m_isExact = false;
        }
        const int k = static_cast<int>(m_kits.size());
        for (std::size_t g = 0; g < pack.gives.size(); ++g)
            m_kitsOf[at(pack.gives[g].material)].push_back({k, static_cast<int>(g), pack.gives[g].units});
        m_kits.push_back(static_cast<int>(i));
        m_kitMost.push_back(most);
    }
    for (int m = 0; m < materials(); ++m)
        for (auto& [supplier, packs] : singles[at(m)]) {
            m_work += workOfCurve(model, m, packs);
            if (m_work > steps) {
                m_isWhole = false;
                return;
            }
            m_curves[at(m)].push_back(std::make_unique<Curve>(model, m, supplier, std::move(packs)));
        }
}

const Curve* Market::curve(int material, int supplier) const {
    const auto& curves = m_curves[at(material)];
    const auto found = std::lower_bound(curves.begin(), curves.end(), supplier,
                                        [](const auto& c, int s) { return c->supplier() < s; });
    return found != curves.end() && (*found)->supplier() == supplier ? found->get() : nullptr;
}

std::shared_ptr<const Merged> Market::merged(int material, const std::vector<char>& suppliers) {
    std::vector<int> key;
    std::vector<const Curve*> curves;
    for (const auto& curve : m_curves[at(material)])
        if (suppliers[at(curve->supplier())]) {
            key.push_back(curve->supplier());
            curves.push_back(curve.get());
        }
    const std::size_t cells = (key.size() + 3) * (at(need(material)) + 1);
    if (m_keptCells + cells > kMaxKeptCells) {
        for (auto& kept : m_merged) kept.clear();
        m_keptCells = 0;
    }
    auto& slot = m_merged[at(material)][std::move(key)];
    if (!slot) {
        m_work += need(material);
        std::size_t steps = 1;
        for (const Curve* curve : curves) {
            const std::size_t pairs = steps * curve->steps().size();
            m_work += static_cast<int64_t>(pairs) + 4 * need(material);
            steps = std::min(pairs, at(need(material)) + 1);
        }
        slot = std::make_shared<const Merged>(std::move(curves), static_cast<int>(need(material)));
        m_keptCells += cells;
    }
    return slot;
}

const MoneyList* Market::moneyList(int material, int supplier, int64_t limit) {
    auto& slot = m_lists[{material, supplier}];
    if (slot.list && slot.list->limit() >= limit) return slot.list.get();
    if (limit >= slot.tooLong) return nullptr;
    const bool isRow = limit <= MoneyList::kMaxRowLength;
    const int64_t roomy = isRow ? std::min(MoneyList::kMaxRowLength, limit + limit / 2 + 64) : limit;
    auto list = std::make_unique<MoneyList>(m_model, *curve(material, supplier), roomy);
    m_work += list->work();
    if (!list->isWhole()) {
        slot.tooLong = limit;
        return nullptr;
    }
    slot.list = std::move(list);
    return slot.list.get();
}

Relaxation::Relaxation(Market& market, std::vector<State> states, bool sumsMatter)
    : m_market(market)
    , m_states(std::move(states)) {
    std::vector<char> allowed(m_states.size(), 0);
    std::vector<char> resting(m_states.size(), 0);
    for (std::size_t s = 0; s < m_states.size(); ++s) {
        const ModelSupplier& supplier = market.model().suppliers[s];
        allowed[s] = m_states[s] != State::Off ? 1 : 0;
        resting[s] = allowed[s];
        if (m_states[s] == State::Paid) m_shipping += supplier.shipping;
        if (!sumsMatter || m_states[s] == State::Off || m_states[s] == State::Open) continue;
        const int64_t target =
            std::max(supplier.minimum, m_states[s] == State::Free ? supplier.freeFrom : 0) - supplier.goods;
        if (target <= 0) continue;
        m_sums.push_back(static_cast<int>(s));
        m_targets.push_back(target);
        resting[s] = 0;
    }
    m_rank.assign(market.kits().size(), market.kits().size());
    for (std::size_t k = 0; k < market.kits().size(); ++k)
        if (allowed[at(market.kit(static_cast<int>(k)).supplier)]) {
            m_rank[k] = m_kits.size();
            m_kits.push_back(static_cast<int>(k));
        }
    const auto materials = at(market.materials());
    m_curves.resize(materials);
    m_uses.resize(materials);
    m_tails.resize(materials);
    m_tailSplits.resize(materials);
    m_kitTails.resize(materials);
    m_kitChoice.resize(materials);
    for (int m = 0; m < market.materials(); ++m) {
        m_rest.push_back(market.merged(m, resting));
        m_all.push_back(market.merged(m, allowed));
        for (const int s : m_sums) m_curves[at(m)].push_back(market.curve(m, s));
        for (const auto& use : market.kitsOf(m))
            if (m_rank[at(use.kit)] < m_kits.size()) m_uses[at(m)].push_back(use);
    }
}

int64_t Relaxation::kitPrice(int k, int64_t count) const {
    const ModelPack& pack = m_market.kit(k);
    const int64_t cost = pack.cost(count);
    if (cost >= kNever) return kScaledNever;
    for (std::size_t c = 0; c < m_sums.size(); ++c)
        if (m_sums[c] == pack.supplier) return cost * (kScale - m_multipliers.goods[c]);
    return cost * kScale;
}

void Relaxation::priceKits() {
    m_prices.assign(m_market.kits().size(), {});
    m_cheapestFrom.assign(m_market.kits().size(), {});
    for (const int k : m_kits) {
        const int64_t most = m_market.kitMost(k);
        std::vector<int64_t> whole;
        for (int64_t count = 0; count <= most; ++count) whole.push_back(kitPrice(k, count));
        for (const int share : m_multipliers.shares[at(k)]) {
            std::vector<int64_t> part;
            for (const int64_t price : whole)
                part.push_back(price >= kScaledNever ? kScaledNever : price * share / kShareScale);
            std::vector<std::int32_t> cheapest(part.size());
            for (std::size_t count = part.size(); count-- > 0;) {
                cheapest[count] = static_cast<std::int32_t>(count);
                if (count + 1 < part.size() && part[at(cheapest[count + 1])] <= part[count])
                    cheapest[count] = cheapest[count + 1];
            }
            m_prices[at(k)].push_back(std::move(part));
            m_cheapestFrom[at(k)].push_back(std::move(cheapest));
        }
    }
}

void Relaxation::mergeTails(int m) {
    const auto need = at(m_market.need(m));
    auto& tails = m_tails[at(m)];
    auto& splits = m_tailSplits[at(m)];
    tails.assign(m_sums.size() + 1, {});
    splits.assign(m_sums.size(), {});
    auto& last = tails.back();
    last.resize(need + 1);
    for (std::size_t n = 0; n <= need; ++n) {
        const int64_t money = rest(m).best()[n].money;
        last[n] = money >= kNever ? kScaledNever : money * kScale;
    }
    for (std::size_t c = m_sums.size(); c-- > 0;) {
        const auto& later = tails[c + 1];
        const Curve* curve = m_curves[at(m)][c];
        auto& split = splits[c];
        split.resize(need + 1);
        if (curve == nullptr) {
            tails[c] = later;
            for (std::size_t n = 0; n <= need; ++n) split[n] = {0, static_cast<std::int32_t>(n)};
            continue;
        }
        auto& now = tails[c];
        now.assign(need + 1, kScaledNever);
        const std::vector<int> steps = stepsOf(later);
        const int64_t weight = kScale - m_multipliers.goods[c];
        for (const int here : curve->steps()) {
            if (curve->best()[at(here)].money >= kNever) break;
            const int64_t price = curve->best()[at(here)].money * weight;
            for (const int other : steps) {
                if (later[at(other)] >= kScaledNever) break;
                const auto n = std::min(need, at(here + other));
                if (price + later[at(other)] < now[n]) {
                    now[n] = price + later[at(other)];
                    split[n] = {here, other};
                }
            }
        }
        for (std::size_t n = need; n-- > 0;)
            if (now[n + 1] < now[n]) {
                now[n] = now[n + 1];
                split[n] = split[n + 1];
            }
    }
}

void Relaxation::mergeKits(int m) {
    const int64_t need = m_market.need(m);
    const auto& uses = m_uses[at(m)];
    auto& tails = m_kitTails[at(m)];
    auto& choice = m_kitChoice[at(m)];
    tails.assign(uses.size(), {});
    choice.assign(uses.size(), {});
    for (std::size_t i = uses.size(); i-- > 0;) {
        const auto& later = i + 1 < uses.size() ? tails[i + 1] : m_tails[at(m)][0];
        const auto& use = uses[i];
        const auto& prices = m_prices[at(use.kit)][at(use.give)];
        const auto& cheapest = m_cheapestFrom[at(use.kit)][at(use.give)];
        const int64_t most = m_market.kitMost(use.kit);
        tails[i].resize(at(need) + 1);
        choice[i].resize(at(need) + 1);
        for (int64_t n = 0; n <= need; ++n) {
            int64_t best = kScaledNever;
            std::int32_t chosen = 0;
            int64_t count = 0;
            for (; count <= most && count * use.units < n; ++count) {
                const int64_t price = prices[at(count)] + later[at(n - count * use.units)];
                if (price < best) {
                    best = price;
                    chosen = static_cast<std::int32_t>(count);
                }
                if (use.units == 0) break;
            }
            if (count <= most && (use.units > 0 || n == 0)) {
                const std::int32_t enough = cheapest[at(count)];
                const int64_t price = prices[at(enough)] + later[0];
                if (price < best) {
                    best = price;
                    chosen = enough;
                }
            }
            tails[i][at(n)] = std::min(best, kScaledNever);
            choice[i][at(n)] = chosen;
        }
    }
}

void Relaxation::evaluateSums(const std::vector<int>& goods) {
    m_multipliers.goods = goods;
    m_fixed = (m_shipping + m_market.model().cost) * kScale;
    for (std::size_t c = 0; c < m_sums.size(); ++c) m_fixed += m_multipliers.goods[c] * m_targets[c];
    for (int m = 0; m < m_market.materials(); ++m) mergeTails(m);
}

int64_t Relaxation::evaluate(const Multipliers& multipliers) {
    m_multipliers = multipliers;
    evaluateSums(multipliers.goods);
    priceKits();
    int64_t bound = m_fixed;
    for (int m = 0; m < m_market.materials(); ++m) {
        mergeKits(m);
        bound = plus(bound, undecided(m, 0, m_market.need(m)));
    }
    return bound;
}

int64_t Relaxation::undecided(int material, std::size_t decided, int64_t n) const {
    const auto& uses = m_uses[at(material)];
    std::size_t i = 0;
    while (i < uses.size() && m_rank[at(uses[i].kit)] < decided) ++i;
    if (i < uses.size()) return m_kitTails[at(material)][i][at(n)];
    return m_tails[at(material)][0][at(n)];
}

Relaxation::Choice Relaxation::choice() const {
    Choice out;
    out.goods.assign(m_sums.size(), 0);
    for (const int k : m_market.kits()) out.copies.emplace_back(m_market.model().packs[at(k)].gives.size(), 0);
    for (int m = 0; m < m_market.materials(); ++m) {
        int64_t n = m_market.need(m);
        for (std::size_t i = 0; i < m_uses[at(m)].size(); ++i) {
            const auto& use = m_uses[at(m)][i];
            const int64_t count = m_kitChoice[at(m)][i][at(n)];
            out.copies[at(use.kit)][at(use.give)] = count;
            n = std::max<int64_t>(0, n - count * use.units);
        }
        addGoods(m, n, out.goods);
    }
    return out;
}

void Relaxation::addGoods(int m, int64_t n, std::vector<int64_t>& goods) const {
    for (std::size_t c = 0; c < m_sums.size(); ++c) {
        const Split& split = m_tailSplits[at(m)][c][at(n)];
        const Curve* curve = m_curves[at(m)][c];
        if (curve != nullptr) goods[c] += curve->best()[at(split.here)].money;
        n = split.rest;
    }
}

} // namespace sp::supply
