// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/design_set.h"
#include "core/catalogue/material.h"
#include "core/catalogue/shop.h"
#include "core/units/unit_price.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace sp::catalogue {

/// Where a price comes from, or why there is none: told in words by whoever knows the reader's language.
struct PriceOrigin {
    enum class Kind {
        Unsaid,
        Pack,         ///< a supplier's pack; of what an earlier program said in words, `pack` holds the whole
        Fixed,        ///< set by the owner
        ShelfAverage, ///< what lies on the shelf has cost so much on average
        NoPack,       ///< no pack of it is known
        NotFixed,     ///< by the owner, who has not set it
    };
    Kind kind = Kind::Unsaid;
    bool isShelfBare = false; ///< it should be the average of the shelf, but nothing with a cost lies there
    std::string supplier{};   ///< of the pack; may be empty
    std::string pack{};       ///< its name
    std::optional<units::Date> pricedOn{};

    friend bool operator==(const PriceOrigin&, const PriceOrigin&) = default;
};

/// A material with the price the cost sheet uses; no price means none could be found, and using it is refused.
struct PricedMaterial {
    Material material;
    std::optional<units::UnitPrice> price; ///< of a pack and what is in it, where one is bought
    PriceOrigin origin;
    Freight freight = {};                ///< what it costs beyond the price to have it here
    std::vector<PriceBreak> breaks = {}; ///< what each such pack costs where more are bought, ascending, from 2 or more

    friend bool operator==(const PricedMaterial&, const PricedMaterial&) = default;
};

/// All that a price is made of besides the order itself. With the order it is what a quote freezes: the same two
/// values always price to the same cent.
struct PriceBook {
    Shop shop;
    BenchStandards bench;
    std::unordered_map<base::Id, PricedMaterial> materials;
    std::optional<Customer> customer;
    std::unordered_map<base::Id, DesignSet> sets; ///< by design, of those with planned pieces

    const PricedMaterial* find(const base::Id& id) const {
        const auto found = materials.find(id);
        return found == materials.end() ? nullptr : &found->second;
    }

    friend bool operator==(const PriceBook&, const PriceBook&) = default;
};

} // namespace sp::catalogue
