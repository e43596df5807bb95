// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/material.h"
#include "core/catalogue/shop.h"
#include "core/units/unit_price.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace sp::catalogue {

/// A material with the price the cost sheet uses; no price means none could be found, and using it is refused.
struct PricedMaterial {
    Material material;
    std::optional<units::UnitPrice> price;
    std::string priceFrom; ///< in words: "Harbour Lane Beads, bag of 10 gross, 12 Oct 2026"

    friend bool operator==(const PricedMaterial&, const PricedMaterial&) = default;
};

/// All that a price is made of besides the order itself. With the order it is what a quote freezes: the same two
/// values always price to the same cent.
struct PriceBook {
    Shop shop;
    BenchStandards bench;
    std::unordered_map<base::Id, PricedMaterial> materials;
    std::optional<Customer> customer;

    const PricedMaterial* find(const base::Id& id) const {
        const auto found = materials.find(id);
        return found == materials.end() ? nullptr : &found->second;
    }

    friend bool operator==(const PriceBook&, const PriceBook&) = default;
};

} // namespace sp::catalogue
