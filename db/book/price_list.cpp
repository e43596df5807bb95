// SPDX-License-Identifier: MIT
#include "db/book/price_list.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace sp::db {

using catalogue::Pack;
using catalogue::PriceBasis;
using catalogue::PricedMaterial;
using units::UnitPrice;

namespace {

UnitPrice singly(const Pack& pack) { return {pack.prices.front().each, pack.amount}; }

} // namespace

std::string dayInWords(units::Date day) {
    constexpr std::array months{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    const std::chrono::year_month_day ymd(day.days());
    return fmt::format("{} {} {}", static_cast<unsigned>(ymd.day()), months[static_cast<unsigned>(ymd.month()) - 1],
                       static_cast<int>(ymd.year()));
}

Replacement replacementPrice(const std::vector<const Pack*>& packs,
                             const std::unordered_map<base::Id, std::string>& supplierNames) {
    if (packs.empty()) return {std::nullopt, "no pack of it is known"};
    auto chosen = std::find_if(packs.begin(), packs.end(), [](const auto* pack) { return pack->usual; });
    if (chosen == packs.end())
        chosen = std::min_element(packs.begin(), packs.end(),
                                  [](const auto* a, const auto* b) { return singly(*a).each() < singly(*b).each(); });
    const Pack& pack = **chosen;
    const auto supplier = supplierNames.find(pack.supplier);
    std::string from = supplier == supplierNames.end() ? pack.name : supplier->second + ", " + pack.name;
    if (pack.pricedOn) from += ", " + dayInWords(*pack.pricedOn);
    return {singly(pack), std::move(from)};
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
                row.priceFrom = "its fixed price is not set";
            else
                row = {row.material, UnitPrice{row.material.fixedPrice, units::Count::of(1)}, "fixed price"};
        } else {
            auto [price, from] = replacementPrice(packsOf[id], supplierNames);
            if (row.material.basis == PriceBasis::ShelfAverage) {
                const auto average = stores.stock.average(id);
                from = average ? "average of the shelf" : "nothing with a cost is on the shelf; " + from;
                if (average) price = average;
            }
            row.price = price;
            row.priceFrom = std::move(from);
        }
        priced.emplace(id, std::move(row));
    }
    return priced;
}

} // namespace sp::db
