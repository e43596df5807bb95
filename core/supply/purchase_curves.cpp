// SPDX-License-Identifier: MIT
#include "core/supply/purchase_curves.h"

#include <algorithm>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr Spend kNoWay{kNever, 0, 0};
constexpr int64_t kMostCountInList = 65'535;

std::size_t at(int64_t n) { return static_cast<std::size_t>(n); }

} // namespace

Curve::Curve(const Model& model, int material, int supplier, std::vector<int> packs)
    : m_supplier(supplier)
    , m_model(&model)
    , m_packs(std::move(packs)) {
    const int64_t need = model.needs[at(material)];
    m_best.assign(at(need) + 1, kNoWay);
    m_best[0] = {};
    for (const int index : m_packs) {
        const ModelPack& pack = model.packs[at(index)];
        const int64_t units = pack.gives[0].units;
        std::vector<Spend> next = m_best;
        std::vector<std::int32_t> choice(m_best.size(), 0);
        const auto offer = [&](int64_t n, int64_t count) {
            const int64_t money = pack.cost(count);
            if (money >= kNever) return;
            const Spend& rest = m_best[at(std::max<int64_t>(0, n - count * units))];
            if (rest.money >= kNever) return;
            const Spend here = Spend{money, count * pack.value, count} + rest;
            if (here < next[at(n)]) {
                next[at(n)] = here;
                choice[at(n)] = static_cast<std::int32_t>(count);
            }
        };
        for (int64_t n = 1; n <= need && units > 0; ++n) {
            const int64_t enough = (n + units - 1) / units;
            for (int64_t count = 1; count <= std::min(enough, pack.most); ++count) offer(n, count);
            for (const auto& tier : pack.tiers)
                if (tier.from > enough && tier.from < (int64_t{1} << 31)) offer(n, tier.from);
        }
        m_best = std::move(next);
        m_choice.push_back(std::move(choice));
    }
    m_steps = stepsOf(m_best);
}

void Curve::collect(int n, std::vector<Bought>& into) const {
    int64_t left = n;
    for (std::size_t p = m_packs.size(); p-- > 0;) {
        const int64_t count = m_choice[p][at(left)];
        if (count == 0) continue;
        into.push_back({m_packs[p], count});
        left = std::max<int64_t>(0, left - count * m_model->packs[at(m_packs[p])].gives[0].units);
    }
}

Merged::Merged(std::vector<const Curve*> curves, int need)
    : m_curves(std::move(curves)) {
    m_best.assign(at(need) + 1, kNoWay);
    m_best[0] = {};
    for (const Curve* curve : m_curves) {
        std::vector<Spend> next(m_best.size(), kNoWay);
        std::vector<Split> split(m_best.size());
        const std::vector<int> steps = stepsOf(m_best);
        for (const int here : curve->steps()) {
            const Spend& spend = curve->best()[at(here)];
            if (spend.money >= kNever) break;
            for (const int rest : steps) {
                if (m_best[at(rest)].money >= kNever) break;
                const Spend sum = spend + m_best[at(rest)];
                const int n = std::min(need, here + rest);
                if (sum < next[at(n)]) {
                    next[at(n)] = sum;
                    split[at(n)] = {here, rest};
                }
            }
        }
        for (int n = need - 1; n >= 0; --n)
            if (next[at(n + 1)] < next[at(n)]) {
                next[at(n)] = next[at(n + 1)];
                split[at(n)] = split[at(n + 1)];
            }
        m_best = std::move(next);
        m_splits.push_back(std::move(split));
    }
    m_steps = stepsOf(m_best);
}

void Merged::collect(int n, std::vector<Bought>& into) const {
    int left = n;
    for (std::size_t c = m_curves.size(); c-- > 0;) {
        const Split& split = m_splits[c][at(left)];
        m_curves[c]->collect(split.here, into);
        left = split.rest;
    }
}

MoneyList::MoneyList(const Model& model, const Curve& curve, int64_t limit)
    : m_model(&model)
    , m_packs(curve.packs())
    , m_limit(limit) {
    // Units and packs in one number, (units + 1) 2^20 - packs: more units first, then fewer packs; 0: cannot be spent.
    constexpr int64_t kPerUnit = int64_t{1} << 20;
    std::vector<int64_t> most(at(limit) + 1, 0);
    most[0] = kPerUnit;
    for (const int index : m_packs) {
        const ModelPack& pack = model.packs[at(index)];
        const int64_t units = pack.gives[0].units;
        std::vector<int64_t> next = most;
        std::vector<std::uint16_t> choice(most.size(), 0);
        const int64_t enough = units > 0 ? model.needs[at(pack.gives[0].material)] / units + 1 : 1;
        const int64_t last = std::min({pack.most, std::max(limit, enough), kMostCountInList});
        for (int64_t count = 1; count <= last; ++count) {
            const int64_t money = pack.cost(count);
            if (money > limit && count >= pack.lastFrom()) break;
            if (money > limit || (money == 0 && count > enough)) continue;
            const int64_t gain = count * units * kPerUnit - count;
            for (int64_t v = 0; v + money <= limit; ++v) {
                if (most[at(v)] == 0 || most[at(v)] + gain <= next[at(v + money)]) continue;
                next[at(v + money)] = most[at(v)] + gain;
                choice[at(v + money)] = static_cast<std::uint16_t>(count);
            }
        }
        most = std::move(next);
        m_choice.push_back(std::move(choice));
    }
    for (int64_t v = 0; v <= limit; ++v) {
        if (most[at(v)] == 0) continue;
        const int64_t rounded = (most[at(v)] + kPerUnit - 1) / kPerUnit;
        m_entries.push_back({v, rounded - 1, rounded * kPerUnit - most[at(v)]});
    }
}

void MoneyList::collect(int64_t money, std::vector<Bought>& into) const {
    for (std::size_t p = m_packs.size(); p-- > 0;) {
        const int64_t count = m_choice[p][at(money)];
        if (count == 0) continue;
        into.push_back({m_packs[p], count});
        money -= m_model->packs[at(m_packs[p])].cost(count);
    }
}

} // namespace sp::supply
