// SPDX-License-Identifier: MIT
#include "core/supply/purchase_curves.h"

#include <algorithm>
#include <deque>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr Spend kNoWay{kNever, 0, 0};

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

/// From `least` to `most` packs cost `each` apiece and bring `gain` apiece.
struct MoneyList::Range {
    int64_t least = 1;
    int64_t most = 1;
    int64_t each = 0;
    int64_t gain = 0;
};

namespace {

/// Units and packs in one number, (units + 1) 2^24 - packs: more units first, then fewer packs; 0: cannot be spent.
/// Of at most 2^17 packs in all, each of 2^20 units at most (no need is larger), it stays below 2^62.
constexpr int64_t kPerUnit = int64_t{1} << 24;
constexpr int64_t kMaxCounted = int64_t{1} << 17;
constexpr int64_t kMaxUnitsCounted = int64_t{1} << 20;

} // namespace

MoneyList::MoneyList(const Model& model, const Curve& curve, int64_t limit)
    : m_model(&model)
    , m_packs(curve.packs())
    , m_limit(limit) {
    if (limit <= kMaxRowLength)
        fillRow();
    else
        fillSums();
}

std::vector<MoneyList::Range> MoneyList::ranges(const ModelPack& pack) {
    const int64_t units = std::min(pack.gives[0].units, kMaxUnitsCounted);
    const int64_t share = std::max<int64_t>(1, kMaxCounted / static_cast<int64_t>(m_packs.size()));
    const int64_t need = m_model->needs[at(pack.gives[0].material)];
    const int64_t enough = units > 0 ? std::max<int64_t>(1, (need + units - 1) / units) : 1;
    std::vector<Range> found;
    for (std::size_t t = 0; t < pack.tiers.size(); ++t) {
        const auto& tier = pack.tiers[t];
        Range range{tier.from, pack.most, tier.each, units * kPerUnit - 1};
        if (t + 1 < pack.tiers.size()) range.most = std::min(range.most, pack.tiers[t + 1].from - 1);
        // Of what costs nothing, no more than is needed.
        const int64_t affordable = tier.each > 0 ? m_limit / tier.each : std::max(enough, tier.from);
        range.most = std::min(range.most, affordable);
        const bool isHeldByMoney = tier.each > 0 && m_limit <= kMaxRowLength; // then all packs together are
        if (!isHeldByMoney && range.most > share && range.least <= range.most) {
            range.most = share;
            m_isExact = false;
        }
        if (range.least <= range.most && (tier.each > 0 || units > 0)) found.push_back(range);
    }
    return found;
}

/// The best of a window that slides along every each-th granule: a pack at one price costs one pass, however many of
/// it can be bought.
void MoneyList::addToRow(const std::vector<int64_t>& before, const Range& range, std::vector<int64_t>& row,
                         std::vector<std::int32_t>& choice) const {
    const auto put = [&](int64_t money, int64_t most, int64_t count) {
        if (most <= row[at(money)]) return;
        row[at(money)] = most;
        choice[at(money)] = static_cast<std::int32_t>(count);
    };
    if (range.each == 0) {
        for (int64_t v = 0; v <= m_limit; ++v)
            if (before[at(v)] > 0) put(v, before[at(v)] + range.most * range.gain, range.most);
        return;
    }
    std::deque<std::pair<int64_t, int64_t>> window; // falling worth less what came before it, its place
    for (int64_t first = 0; first < std::min(range.each, m_limit + 1); ++first) {
        window.clear();
        for (int64_t j = 0; first + j * range.each <= m_limit; ++j) {
            if (const int64_t i = j - range.least; i >= 0 && before[at(first + i * range.each)] > 0) {
                const int64_t worth = before[at(first + i * range.each)] - i * range.gain;
                while (!window.empty() && window.back().first <= worth) window.pop_back();
                window.emplace_back(worth, i);
            }
            while (!window.empty() && window.front().second < j - range.most) window.pop_front();
            if (window.empty()) continue;
            put(first + j * range.each, window.front().first + j * range.gain, j - window.front().second);
        }
    }
}

void MoneyList::fillRow() {
    std::vector<int64_t> row(at(m_limit) + 1, 0);
    row[0] = kPerUnit;
    for (const int index : m_packs) {
        const auto before = row;
        std::vector<std::int32_t> choice(row.size(), 0);
        for (const auto& range : ranges(m_model->packs[at(index)])) {
            addToRow(before, range, row, choice);
            m_work += 10 * m_limit;
        }
        m_choice.push_back(std::move(choice));
    }
    for (int64_t v = 0; v <= m_limit; ++v)
        if (row[at(v)] > 0) addEntry(v, row[at(v)]);
}

void MoneyList::fillSums() {
    std::vector<Sum> sums{{0, kPerUnit, 0}};
    for (const int index : m_packs) {
        std::vector<Sum> next = sums;
        for (auto& sum : next) sum.count = 0;
        for (const auto& range : ranges(m_model->packs[at(index)])) {
            const int64_t first = range.each == 0 ? range.most : range.least;
            for (int64_t count = first; count <= range.most; ++count) {
                const int64_t money = count * range.each;
                for (const auto& sum : sums) {
                    if (sum.money + money > m_limit) break;
                    next.push_back({sum.money + money, sum.most + count * range.gain, count});
                }
                m_isWhole = next.size() <= kMaxSums;
                m_work += 1 + static_cast<int64_t>(sums.size());
                if (!m_isWhole) return;
            }
        }
        m_work += 30 * static_cast<int64_t>(next.size());
        std::stable_sort(next.begin(), next.end(), [](const Sum& a, const Sum& b) {
            return a.money != b.money ? a.money < b.money : a.most > b.most;
        });
        next.erase(std::unique(next.begin(), next.end(), [](const Sum& a, const Sum& b) { return a.money == b.money; }),
                   next.end());
        m_sums.push_back(next);
        sums = std::move(next);
    }
    for (const auto& sum : sums) addEntry(sum.money, sum.most);
}

void MoneyList::addEntry(int64_t money, int64_t most) {
    const int64_t rounded = (most + kPerUnit - 1) / kPerUnit;
    m_entries.push_back({money, rounded - 1, rounded * kPerUnit - most});
}

void MoneyList::collect(int64_t money, std::vector<Bought>& into) const {
    for (std::size_t p = m_packs.size(); p-- > 0;) {
        int64_t count = 0;
        if (!m_choice.empty()) {
            count = m_choice[p][at(money)];
        } else {
            const auto found = std::lower_bound(m_sums[p].begin(), m_sums[p].end(), money,
                                                [](const Sum& sum, int64_t wanted) { return sum.money < wanted; });
            count = found->count;
        }
        if (count == 0) continue;
        into.push_back({m_packs[p], count});
        money -= m_model->packs[at(m_packs[p])].cost(count);
    }
}

} // namespace sp::supply
