// SPDX-License-Identifier: MIT
#include "core/supply/purchase_labels.h"

#include <algorithm>

namespace sp::supply {

using std::int64_t;

namespace {

constexpr std::size_t kMaxOptions = 200'000;
constexpr std::size_t kCompareAll = 3'000;
constexpr int64_t kToSort = 100; ///< simple steps to sort one of many and to compare it

/// The worth of one unit of the material that `curve` sells.
int64_t unitValue(const Model& model, const Curve& curve) {
    const ModelPack& pack = model.packs[at(curve.packs().front())];
    return pack.gives[0].units > 0 ? pack.value / pack.gives[0].units : 0;
}

template<class Item>
bool isCheaper(const Item& a, const Item& b) {
    if (a.cost != b.cost) return a.cost < b.cost;
    if (a.value != b.value) return a.value > b.value;
    return a.packs < b.packs;
}

/// Keeps the items that no other beats in cost and in all goods at once. For one sum this is a sweep; for more,
/// every item is compared with those kept, up to a number beyond which the rest stays uncompared.
template<class Item>
void dropDominated(std::vector<Item>& items, std::size_t sums) {
    std::sort(items.begin(), items.end(), [sums](const Item& a, const Item& b) {
        if (a.cost != b.cost || a.value != b.value || a.packs != b.packs) return isCheaper(a, b);
        for (std::size_t c = 0; c < sums; ++c)
            if (a.goods[c] != b.goods[c]) return a.goods[c] > b.goods[c];
        return false;
    });
    std::vector<Item> kept;
    if (sums == 1) {
        int64_t most = -1;
        for (const auto& item : items)
            if (item.goods[0] > most) {
                most = item.goods[0];
                kept.push_back(item);
            }
    } else if (sums == 2) {
        // Rising goods[0], falling goods[1].
        std::map<int64_t, int64_t> front;
        for (const auto& item : items) {
            const auto above = front.lower_bound(item.goods[0]);
            if (above != front.end() && above->second >= item.goods[1]) continue;
            kept.push_back(item);
            auto now = front.insert_or_assign(item.goods[0], item.goods[1]).first;
            while (now != front.begin() && std::prev(now)->second <= item.goods[1]) front.erase(std::prev(now));
        }
    } else {
        for (const auto& item : items) {
            const std::size_t compared = std::min(kept.size(), kCompareAll);
            bool beaten = false;
            for (std::size_t i = 0; i < compared && !beaten; ++i) {
                beaten = true;
                for (std::size_t c = 0; c < sums && beaten; ++c) beaten = kept[i].goods[c] >= item.goods[c];
            }
            if (!beaten) kept.push_back(item);
        }
    }
    items = std::move(kept);
}

} // namespace

void LabelSearch::listOptions(int material, int64_t need, std::size_t c, int64_t n, int64_t price, Option option,
                              Options& into) {
    const int64_t least = m_relaxation.tail(material, 0, need);
    if (c == m_relaxation.sums().size()) {
        const Spend& rest = m_relaxation.rest(material).best()[at(n)];
        if (rest.money >= kNever) return;
        option.reduced = price + rest.money * kScale - least;
        if (option.reduced > into.gap) return;
        option.cost += rest.money;
        option.value += rest.value;
        option.packs += rest.packs;
        option.rest = static_cast<std::int32_t>(n);
        into.list.push_back(option);

        return;
    }
    const Curve* curve = m_relaxation.sumCurve(material, c);
    if (curve == nullptr) {
        listOptions(material, need, c + 1, n, price, option, into);
        return;
    }
    const int64_t weight = std::max<int64_t>(1, kScale - m_relaxation.multipliers().goods[c]);
    const int64_t longest = (least + into.gap - price) / weight;
    const MoneyList* list = m_market.moneyList(material, curve->supplier(), std::min(longest, m_mostMoney));
    if (list == nullptr) {
        into.isComplete = false;
        list = m_market.moneyList(material, curve->supplier(), MoneyList::kMaxRowLength);
    }
    into.isComplete = into.isComplete && list->isExact();
    const int64_t value = unitValue(m_market.model(), *curve);
    for (const auto& entry : list->entries()) {
        if (price + entry.money * weight - least > into.gap || entry.money > m_mostMoney) break;
        if (into.list.size() > kMaxOptions || m_isStopped) {
            into.isComplete = false;
            break;
        }
        const int64_t left = std::max<int64_t>(0, n - entry.units);
        const int64_t here = price + entry.money * weight;
        if (here + m_relaxation.tail(material, c + 1, left) - least > into.gap) continue;
        Option next = option;
        next.cost += entry.money;
        next.value += entry.units * value;
        next.packs += entry.packs;
        next.goods[c] = entry.money;
        listOptions(material, need, c + 1, left, here, next, into);
    }
    m_isStopped = m_tick(static_cast<int64_t>(list->entries().size())) || m_isStopped;
}

const LabelSearch::Options& LabelSearch::options(int material, int64_t need, int64_t gap) {
    auto& options = m_options[{material, need}];
    if (options.gap >= gap) return options;
    options = Options{};
    options.gap = gap;
    listOptions(material, need, 0, need, 0, Option{}, options);
    m_isStopped = m_tick(static_cast<int64_t>(options.list.size()) * kToSort) || m_isStopped;
    dropDominated(options.list, m_relaxation.sums().size());
    std::sort(options.list.begin(), options.list.end(),
              [](const Option& a, const Option& b) { return a.reduced < b.reduced; });
    return options;
}

std::vector<LabelSearch::Label> LabelSearch::extended(const std::vector<Label>& labels, const Options& options,
                                                      const Goods& targets, int64_t gap, int64_t mostCost) {
    std::vector<Label> next;
    const std::size_t sums = m_relaxation.sums().size();
    for (std::size_t l = 0; l < labels.size() && !m_isStopped; ++l) {
        const Label& label = labels[l];
        const std::size_t before = next.size();
        std::size_t o = 0;
        for (; o < options.list.size(); ++o) {
            const Option& option = options.list[o];
            if (label.reduced + option.reduced > gap) break;
            if (label.cost + option.cost > mostCost) continue;
            Label grown;
            grown.reduced = label.reduced + option.reduced;
            grown.cost = label.cost + option.cost;
            grown.value = label.value + option.value;
            grown.packs = label.packs + option.packs;
            for (std::size_t c = 0; c < sums; ++c)
                grown.goods[c] = std::min(targets[c], label.goods[c] + option.goods[c]);
            grown.before = static_cast<std::int32_t>(l);
            grown.option = static_cast<std::int32_t>(o);
            next.push_back(grown);
        }
        m_isStopped = m_tick(static_cast<int64_t>((next.size() - before) * 16 + 2 * o + 4)) || m_isStopped;
        if (next.size() > m_mostRaw) {
            m_isStopped = m_tick(static_cast<int64_t>(next.size()) * kToSort) || m_isStopped;
            dropDominated(next, sums);
            if (next.size() > m_mostRaw / 2) m_isCut = thin(next, m_mostRaw / 4, targets) || m_isCut;
        }
    }
    m_isStopped = m_tick(static_cast<int64_t>(next.size()) * kToSort) || m_isStopped;
    dropDominated(next, sums);
    return next;
}

/// Keeps the most promising labels, evenly over how far their goods have come, so that some reach the sums.
bool LabelSearch::thin(std::vector<Label>& labels, std::size_t most, const Goods& targets) const {
    if (labels.size() <= most) return false;
    constexpr std::size_t kClasses = 16;
    std::array<std::vector<Label>, kClasses + 1> classes; // the last: those that are there
    for (const Label& label : labels) {
        double strategy = 1;
        for (std::size_t c = 0; c < m_relaxation.sums().size(); ++c)
            if (targets[c] > 0)
                strategy = std::min(strategy, static_cast<double>(label.goods[c]) / static_cast<double>(targets[c]));
        classes[static_cast<std::size_t>(strategy * static_cast<double>(kClasses))].push_back(label);
    }
    labels.clear();
    for (auto& kind : classes) {
        const std::size_t kept = std::min(kind.size(), most / kClasses + 1);
        std::nth_element(kind.begin(), kind.begin() + static_cast<std::ptrdiff_t>(kept), kind.end(),
                         [](const Label& a, const Label& b) { return a.reduced < b.reduced; });
        labels.insert(labels.end(), kind.begin(), kind.begin() + static_cast<std::ptrdiff_t>(kept));
    }
    return true;
}

std::vector<Bought> LabelSearch::collected(const std::vector<std::vector<Label>>& stages, std::size_t last,
                                           const std::vector<const Options*>& lists,
                                           const std::vector<int>& order) const {
    std::vector<Bought> plan;
    for (std::size_t i = order.size(); i-- > 0;) {
        const Label& label = stages[i + 1][last];
        const Option& option = lists[i]->list[at(label.option)];
        m_relaxation.rest(order[i]).collect(option.rest, plan);
        for (std::size_t c = 0; c < m_relaxation.sums().size(); ++c)
            if (m_relaxation.sumCurve(order[i], c) != nullptr) // for nothing, too, packs may have come: free ones
                m_market.moneyList(order[i], m_relaxation.sums()[c], option.goods[c])->collect(option.goods[c], plan);
        last = at(label.before);
    }
    return plan;
}

int64_t LabelSearch::boundOf(const Task& task) const {
    int64_t bound = task.spent * kScale;
    for (std::size_t c = 0; c < m_relaxation.sums().size(); ++c)
        bound += m_relaxation.multipliers().goods[c] * (m_relaxation.sum(c) - task.goods[c]);
    for (int m = 0; m < m_market.materials(); ++m)
        bound = std::min(kScaledNever, bound + m_relaxation.tail(m, 0, task.needs[at(m)]));
    return bound;
}

LabelSearch::Outcome LabelSearch::run(const Task& task) {
    Outcome outcome;
    const std::size_t sums = m_relaxation.sums().size();
    if (sums > kMaxSums) {
        outcome.isComplete = false;
        return outcome;
    }
    const int64_t gap = task.limit * kScale - kScale - boundOf(task);
    if (gap < 0) return outcome;
    m_mostMoney = task.limit;
    m_mostRaw = std::max<std::size_t>(200'000, task.mostLabels * 8);
    m_isCut = false;
    m_isStopped = false;
    Goods targets{};
    for (std::size_t c = 0; c < sums; ++c) targets[c] = std::max<int64_t>(0, m_relaxation.sum(c) - task.goods[c]);
    std::vector<int> order;
    std::vector<const Options*> lists;
    for (int m = 0; m < m_market.materials(); ++m) {
        const Options& found = options(m, task.needs[at(m)], gap);
        outcome.isComplete = outcome.isComplete && found.isComplete;
        if (found.list.empty()) return outcome;
        order.push_back(m);
    }
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        return options(a, task.needs[at(a)], gap).list.size() < options(b, task.needs[at(b)], gap).list.size();
    });
    for (const int m : order) lists.push_back(&options(m, task.needs[at(m)], gap));
    std::vector<int64_t> cheapest(order.size() + 1, 0); // without regard to sums, from the i-th material on
    for (std::size_t i = order.size(); i-- > 0;)
        cheapest[i] = cheapest[i + 1] + m_relaxation.all(order[i]).best()[at(task.needs[at(order[i])])].money;

    std::vector<std::vector<Label>> stages{{Label{}}};
    for (std::size_t i = 0; i < order.size(); ++i) {
        const int64_t mostCost = task.limit - 1 - task.spent - cheapest[i + 1];
        stages.push_back(extended(stages.back(), *lists[i], targets, gap, mostCost));
        m_isCut = thin(stages.back(), task.mostLabels, targets) || m_isCut;
        if (m_isStopped) {
            outcome.isComplete = false;
            return outcome;
        }
    }
    outcome.isComplete = outcome.isComplete && !m_isCut;
    const auto& ends = stages.back();
    std::size_t best = ends.size();
    for (std::size_t l = 0; l < ends.size(); ++l) {
        bool reached = true;
        for (std::size_t c = 0; c < sums; ++c) reached = reached && ends[l].goods[c] >= targets[c];
        if (reached && (best == ends.size() || isCheaper(ends[l], ends[best]))) best = l;
    }
    if (best < ends.size()) outcome.plan = collected(stages, best, lists, order);
    return outcome;
}

} // namespace sp::supply
