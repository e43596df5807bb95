// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/job.h"
#include "core/units/unit_price.h"

#include <functional>

namespace sp::supply {

/// So many of a material come in, and what was paid for them all; no cost: it cannot be said.
struct Receipt {
    std::string material;
    units::Count count;
    std::optional<units::Money> cost;

    friend bool operator==(const Receipt&, const Receipt&) = default;
};

/// What one of a material costs when bought by itself; nothing when that is not known.
using PriceOfOne = std::function<std::optional<units::UnitPrice>(const std::string& material)>;

/// What the packs of a plan bring, each material once (what has no cost apart from what has one) in the order in which
/// it is met: their goods and their share of the shipping of their order, by goods. What a kit costs is shared among
/// its materials by what they cost by themselves; a material of which that is not known has no cost, unless the pack
/// holds nothing else. As long as one material of every pack has a cost, the costs add up to the plan's cost exactly.
std::vector<Receipt> receiptsOf(const Job& job, const PurchasePlan& plan, const PriceOfOne& priceOfOne);

} // namespace sp::supply
