// SPDX-License-Identifier: MIT
#include "core/supply/receipts.h"

#include "core/units/apportion.h"

#include <algorithm>

namespace sp::supply {

namespace {

using units::Fraction;
using units::Money;

const Pack* packOf(const Job& job, const std::string& id) {
    for (const auto* packs : {&job.kits, &job.bulk})
        for (const auto& pack : *packs)
            if (pack.id == id) return &pack;
    return nullptr;
}

void add(std::vector<Receipt>& receipts, const std::string& material, units::Count count, std::optional<Money> cost) {
    const auto found = std::find_if(receipts.begin(), receipts.end(), [&](const Receipt& receipt) {
        return receipt.material == material && receipt.cost.has_value() == cost.has_value();
    });
    if (found == receipts.end()) {
        receipts.push_back({material, count, cost});
        return;
    }
    found->count = units::Count::of(found->count.value() + count.value());
    if (cost) found->cost = *found->cost + *cost;
}

void addPack(std::vector<Receipt>& receipts, const Pack& pack, units::Count packs, Money paid,
             const PriceOfOne& priceOfOne) {
    std::vector<Money> worths;
    std::vector<std::size_t> known;
    for (std::size_t i = 0; i < pack.gives.size(); ++i) {
        const auto price = priceOfOne(pack.gives[i].material);
        if (!price && pack.gives.size() > 1) continue;
        known.push_back(i);
        worths.push_back(price ? Money::fromExact(price->each() * Fraction::of(pack.gives[i].count.value())) : Money());
    }
    const auto costs = units::inProportion(paid, worths);
    std::size_t next = 0;
    for (std::size_t i = 0; i < pack.gives.size(); ++i) {
        const bool isKnown = next < known.size() && known[next] == i;
        const auto& given = pack.gives[i];
        add(receipts, given.material, units::Count::of(given.count.value() * packs.value()),
            isKnown ? std::optional(costs[next++]) : std::nullopt);
    }
}

} // namespace

std::vector<Receipt> receiptsOf(const Job& job, const PurchasePlan& plan, const PriceOfOne& priceOfOne) {
    std::vector<Receipt> receipts;
    for (const auto& order : plan.orders) {
        std::vector<const PlannedPack*> packs;
        std::vector<Money> goods;
        for (const auto& pack : plan.packs)
            if (pack.supplier == order.supplier) {
                packs.push_back(&pack);
                goods.push_back(pack.goods);
            }
        const auto shipping = units::inProportion(order.shipping, goods);
        for (std::size_t i = 0; i < packs.size(); ++i)
            if (const auto* pack = packOf(job, packs[i]->id))
                addPack(receipts, *pack, packs[i]->count, packs[i]->goods + shipping[i], priceOfOne);
    }
    return receipts;
}

} // namespace sp::supply
