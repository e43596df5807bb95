// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/price_book.h"
#include "db/book/stores.h"

#include <string>
#include <vector>

namespace sp::db {

/// All materials of the book, each with the price its basis gives and where that comes from. Throws DbError.
///
/// Replacement: the first price of the pack marked usual; without one, of the pack that is cheapest for each thing
/// when bought singly (a tie goes to the one named first); of these one without a price counts for nothing.
/// ShelfAverage: see StockStore::average; when nothing with a cost lies on the shelf, the replacement price, and its
/// origin says so. Fixed: the price the owner set; zero is one that was not set, and no price.
/// Only a replacement price carries freight, and goes by the packs that are bought (`breaks`): the average holds what
/// was paid, a fixed price is what was set. A further price of 0 is none, unless the material says that it is meant.
std::unordered_map<base::Id, catalogue::PricedMaterial> pricedMaterials(Stores& stores);

/// The replacement price by the rule above, from a material's packs.
struct Replacement {
    std::optional<units::UnitPrice> price;
    catalogue::PriceOrigin origin;
    catalogue::Freight freight; ///< from the pack's supplier
    std::vector<catalogue::PriceBreak> breaks;
};
Replacement replacementPrice(const std::vector<const catalogue::Pack*>& packs, bool isNothingMeant,
                             const std::unordered_map<base::Id, catalogue::Supplier>& suppliers);

} // namespace sp::db
