// SPDX-License-Identifier: MIT
#include "core/supply/purchase_single.h"

#include <algorithm>
#include <utility>

namespace sp::supply {

using std::int64_t;

namespace {

/// So many of a pack, and what they cost with what is paid besides.
struct Choice {
    int64_t count = 0;
    int64_t goods = 0;
    int64_t cost = kNever;
};

/// The better of two counts of a pack by the contract: cost, then the worth of what is left, then fewer packs.
bool isBetter(const ModelPack& pack, const Choice& a, const Choice& b) {
    if (a.cost != b.cost) return a.cost < b.cost;
    return pack.value > 0 ? a.count > b.count : a.count < b.count;
}

int64_t enoughOf(const Model& model, const ModelPack& pack) {
    const auto& give = pack.gives.front();
    return (model.needs[at(give.material)] + give.units - 1) / give.units;
}

/// Within a price more packs cost more, so that of each price only the first count that does is looked at: one that is
/// enough and reaches the minimum, and the first that ships free besides.
Choice bestOf(const Model& model, const ModelPack& pack, const ModelSupplier& terms) {
    Choice best;
    const int64_t enough = enoughOf(model, pack);
    for (std::size_t t = 0; t < pack.tiers.size(); ++t) {
        const auto& tier = pack.tiers[t];
        const int64_t last = t + 1 < pack.tiers.size() ? std::min(pack.most, pack.tiers[t + 1].from - 1) : pack.most;
        const int64_t first = std::max(enough, tier.from);
        for (const int64_t sum : {terms.minimum, std::max(terms.minimum, terms.freeFrom)}) {
            if (sum >= kNever || (tier.each == 0 && sum > 0)) continue;
            const int64_t count = sum == 0 ? first : std::max(first, (sum + tier.each - 1) / tier.each);
            if (count > last) continue;
            const int64_t goods = count * tier.each;
            const Choice choice{count, goods, goods + (goods >= terms.freeFrom ? 0 : terms.shipping)};
            if (best.cost >= kNever || isBetter(pack, choice, best)) best = choice;
        }
    }
    return best;
}

/// Buys a supplier's needed packs; false when it takes a search to say how its sums are reached best.
bool buy(const Model& model, const std::vector<std::size_t>& packs, bool hasMore, SinglePurchase& answer) {
    SearchResult& result = answer.found;
    const ModelSupplier& terms = model.suppliers[at(model.packs[packs.front()].supplier)];
    if (packs.size() == 1 && !hasMore) {
        const auto choice = bestOf(model, model.packs[packs.front()], terms);
        if (choice.cost >= kNever) answer.unreached = packs.front();
        result.counts[packs.front()] = choice.count;
        result.cost = std::min(kNever, result.cost + choice.cost);
        return true;
    }
    int64_t goods = 0;
    for (const std::size_t p : packs) {
        const auto choice = bestOf(model, model.packs[p], {});
        result.counts[p] = choice.count;
        goods += choice.goods;
    }
    if (goods < terms.minimum) return false;
    const bool isFree = goods >= terms.freeFrom;
    // Goods of the sum that ships free cost more than these with their shipping: nothing is to be gained there.
    if (!isFree && goods + terms.shipping >= terms.freeFrom) return false;
    result.cost += goods + (isFree ? 0 : terms.shipping);
    return true;
}

} // namespace

std::optional<SinglePurchase> singlePurchase(const Model& model) {
    std::vector<char> isGiven(model.needs.size(), 0);
    std::vector<std::vector<std::size_t>> needed(model.suppliers.size());
    std::vector<char> hasMore(model.suppliers.size(), 0);
    for (std::size_t p = 0; p < model.packs.size(); ++p) {
        const ModelPack& pack = model.packs[p];
        if (pack.isKit()) return std::nullopt;
        const auto& give = pack.gives.front();
        if (give.units == 0) {
            hasMore[at(pack.supplier)] = 1;
            continue;
        }
        if (std::exchange(isGiven[at(give.material)], 1) != 0) return std::nullopt;
        needed[at(pack.supplier)].push_back(p);
    }
    SinglePurchase answer;
    answer.found.counts.assign(model.packs.size(), 0);
    answer.found.cost = 0;
    for (std::size_t s = 0; s < needed.size(); ++s)
        if (!needed[s].empty() && !buy(model, needed[s], hasMore[s] != 0, answer)) return std::nullopt;
    if (answer.unreached) answer.found.counts.clear();
    answer.found.bound = answer.found.cost;
    return answer;
}

} // namespace sp::supply
