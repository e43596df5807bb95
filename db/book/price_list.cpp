// SPDX-License-Identifier: MIT
#include "db/book/price_list.h"

#include <algorithm>

namespace sp::db {

using catalogue::Pack;
using catalogue::PriceBasis;
using catalogue::PricedMaterial;
using catalogue::PriceOrigin;
using units::UnitPrice;

namespace {

UnitPrice singly(const Pack& pack) { return {pack.prices.front().each, pack.amount}; }

/// The further prices of the pack. One of 0 that is not meant is one that was not typed yet.
std::vector<catalogue::PriceBreak> breaksOf(const Pack& pack, bool isNothingMeant) {
    std::vector<catalogue::PriceBreak> breaks(pack.prices.begin() + 1, pack.prices.end());
    if (!isNothingMeant) std::erase_if(breaks, [](const auto& step) { return step.each.isZero(); });
    return breaks;
}

} // namespace

Replacement replacementPrice(const std::vector<const Pack*>& packs, bool isNothingMeant,
                             const std::unordered_map<base::Id, catalogue::Supplier>& suppliers) {
    auto chosen = std::find_if(packs.begin(), packs.end(), [](const auto* pack) { return pack->usual; });
    if (chosen == packs.end()) {
        // A pack begins at nothing, and stays so until its price is typed: it makes no material free. One that is
        // usual has been chosen as it is.
        const auto none = [](const auto* pack) { return singly(*pack).price.isZero(); };
        chosen = std::min_element(packs.begin(), packs.end(), [&](const auto* a, const auto* b) {
            return none(a) != none(b) ? none(b) : singly(*a).each() < singly(*b).each();
        });
        if (chosen == packs.end() || none(*chosen)) return {std::nullopt, {.kind = PriceOrigin::Kind::NoPack}, {}, {}};
    }
    const Pack& pack = **chosen;
    const auto found = suppliers.find(pack.supplier);
    const auto supplier = found == suppliers.end() ? catalogue::Supplier{} : found->second;
    return {singly(pack),
            {PriceOrigin::Kind::Pack, false, supplier.name, pack.name, pack.pricedOn},
            catalogue::freightOf(supplier),
            breaksOf(pack, isNothingMeant)};
}

std::unordered_map<base::Id, PricedMaterial> pricedMaterials(Stores& stores) {
    std::unordered_map<base::Id, catalogue::Supplier> suppliers;
    for (auto& supplier : stores.suppliers.all()) suppliers[supplier.id] = std::move(supplier);
    const auto packs = stores.packs.all();
    std::unordered_map<base::Id, std::vector<const Pack*>> packsOf;
    for (const auto& pack : packs) packsOf[pack.material].push_back(&pack);

    std::unordered_map<base::Id, PricedMaterial> priced;
    for (auto& material : stores.materials.all()) {
        PricedMaterial row{std::move(material), std::nullopt, {}};
        const auto& id = row.material.id;
        if (row.material.basis == PriceBasis::Fixed) {
            if (row.material.fixedPrice.isZero())
                row.origin.kind = PriceOrigin::Kind::NotFixed;
            else
                row = {row.material,
                       UnitPrice{row.material.fixedPrice, units::Count::of(1)},
                       {.kind = PriceOrigin::Kind::Fixed}};
        } else {
            auto [price, origin, freight, breaks] =
                replacementPrice(packsOf[id], row.material.meantAsNothing, suppliers);
            if (row.material.basis == PriceBasis::ShelfAverage) {
                const auto average = stores.stock.average(id);
                origin.isShelfBare = !average;
                if (average) {
                    price = average;
                    origin = {.kind = PriceOrigin::Kind::ShelfAverage};
                    freight = {}; // what was paid for it is in the average
                    breaks.clear();
                }
            }
            row.price = price;
            row.origin = std::move(origin);
            row.freight = freight;
            row.breaks = std::move(breaks);
        }
        priced.emplace(id, std::move(row));
    }
    return priced;
}

} // namespace sp::db
