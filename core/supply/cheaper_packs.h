// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"
#include "core/catalogue/price_book.h"
#include "core/needs/order_prices.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::supply {

/// So many packs of one sort, bought at once.
struct PacksOfOneSort {
    std::string supplier; ///< empty where it is not known
    std::string pack;
    std::int64_t packs = 0;
    units::Money cost; ///< of all of them, without shipping

    friend bool operator==(const PacksOfOneSort&, const PacksOfOneSort&) = default;
};

/// What of packs the material is sold in, and who sells them.
struct PackOffers {
    const std::vector<catalogue::Pack>& packs;
    const std::vector<catalogue::Supplier>& suppliers;
};

/// The cheapest way to have what an order takes of a material in packs of one sort, where that costs less than the
/// packs its price is reckoned from: more of the same up to a further price, or `offers` of others (none: not known).
/// What is bought for a mix of packs and with shipping is planPurchase's to find. Packs that say no price are left out.
std::optional<PacksOfOneSort> cheaperPacks(const catalogue::PricedMaterial& material, const needs::PackedNeed& need,
                                           const PackOffers* offers);

/// What the packs of a need cost at their price, rounded once, half to even.
units::Money costOf(const needs::PackedNeed& need);

} // namespace sp::supply
