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

} // namespace

Replacement replacementPrice(const std::vector<const Pack*>& packs,
                             const std::unordered_map<base::Id, std::string>& supplierNames) {
    auto chosen = std::find_if(packs.begin(), packs.end(), [](const auto* pack) { return pack->usual; });
    if (chosen == packs.end()) {
        // A pack begins at nothing, and stays so until its price is typed: it makes no material free. One that is
        // usual has been chosen as it is.
        const auto none = [](const auto* pack) { return singly(*pack).price.isZero(); };
        chosen = std::min_element(packs.begin(), packs.end(), [&](const auto* a, const auto* b) {
            return none(a) != none(b) ? none(b) : singly(*a).each() < singly(*b).each();
        });
        if (chosen == packs.end() || none(*chosen)) return {std::nullopt, {.kind = PriceOrigin::Kind::NoPack}};
    }
    const Pack& pack = **chosen;
    const auto supplier = supplierNames.find(pack.supplier);
    return {singly(pack),
            {PriceOrigin::Kind::Pack, false, supplier == supplierNames.end() ? std::string() : supplier->second,
             pack.name, pack.pricedOn}};
}

std::unordered_map<base::Id, PricedMaterial> pricedMaterials(Stores& stores) {
    std::unordered_map<base::Id, std::string> supplierNames;
    for (auto& supplier : stores.suppliers.all()) supplierNames[supplier.id] = std::move(supplier.name);
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
            auto [price, origin] = replacementPrice(packsOf[id], supplierNames);
            if (row.material.basis == PriceBasis::ShelfAverage) {
                const auto average = stores.stock.average(id);
                origin.isShelfBare = !average;
                if (average) {
                    price = average;
                    origin = {.kind = PriceOrigin::Kind::ShelfAverage};
                }
            }
            row.price = price;
            row.origin = std::move(origin);
        }
        priced.emplace(id, std::move(row));
    }
    return priced;
}

} // namespace sp::db
