// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/count.h"
#include "core/units/money.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace sp::supply {

/// So many of a material: a need, what lies on the shelf, what a pack gives.
struct MaterialCount {
    std::string material;
    units::Count count;
};

/// From `from` packs on every pack of the line costs `each` (all-units price break).
struct PackPrice {
    units::Count from; ///< 1 or more; fewer than the least `from` cannot be bought
    units::Money each; ///< 0 or more
};

/// Something a supplier sells at a price: a bulk pack gives one material, a kit several.
struct Pack {
    std::string id;
    std::string supplier;
    std::vector<MaterialCount> gives;   ///< at least one, each 1 or more
    std::vector<PackPrice> prices;      ///< at least one, no two from the same count
    std::optional<units::Count> atMost; ///< packs of this line that can be had
};

struct Supplier {
    std::string id;
    units::Money shipping;                ///< for the whole order
    std::optional<units::Money> freeFrom; ///< goods of this sum or more ship free
    units::Money minimum;                 ///< goods below this sum are not taken as an order
};

struct PurchaseProblem {
    std::vector<MaterialCount> needs; ///< each 0 or more; the same material twice adds up
    std::vector<MaterialCount> shelf; ///< each 0 or more
    std::vector<Pack> packs;
    std::vector<Supplier> suppliers;
};

struct PlannedPack {
    std::string id;
    std::string supplier;
    units::Count count;
    units::Money goods; ///< count times the price that this count earns
};

struct PlannedOrder {
    std::string supplier;
    units::Money goods;
    units::Money shipping;
};

struct PurchasePlan {
    units::Money cost;                ///< goods and shipping
    units::Money bound;               ///< no plan costs less than this; true even where the effort was not enough
    bool proven = false;              ///< cost == bound
    std::vector<PlannedPack> packs;   ///< in the order given, only what is bought
    std::vector<PlannedOrder> orders; ///< in the order of suppliers given, only those ordered from
    std::vector<MaterialCount> left;  ///< shelf + bought - need: needed materials first, then what else came along
    units::Money leftValue;           ///< `left` at the least price per stone among packs of that material alone
};

struct PurchaseAnswer {
    std::optional<PurchasePlan> plan;
    std::optional<base::Message> impossible; ///< why there is none, when there is none: "no pack gives M"
    std::vector<base::Message> warnings;     ///< about odd input that was taken as it stands
};

/// How much may be done for a plan: simple steps, not seconds, so that the same problem is answered alike on a busy
/// machine and on an idle one.
struct PlanEffort {
    static constexpr std::int64_t kUsual = 100'000'000; ///< about a quarter of a second on a machine of today
    std::int64_t steps = kUsual;
    /// Asked now and then; true ends the work for whoever wants no answer any more.
    std::function<bool()> isStopped = {};
};

inline constexpr std::size_t kMaxPacks = 100'000;

/// The cheapest whole packs that cover the needs, with shipping. Among plans of equal cost the one whose leftover is
/// worth more is taken, then the one with fewer suppliers, then fewer packs, then more of what is listed first: once
/// the cost is proven all plans of that cost are gone through, as far as a fixed amount of work does for them
/// (purchase_ties.h). The same problem always gives the same plan for the same effort. No plan is dearer than what a
/// plain buyer would take (purchase_plain.h) bettered by local search (purchase_improve.h). Memory is bounded (about
/// 200 MB at worst); very large needs are covered in part by the pack with the least price per stone before the search,
/// which leaves the bound true but as a rule not equal to the cost. Where no material can be had in two ways there is
/// no search: the plan is proven whatever the numbers (purchase_single.h). Errors: Invalid, OutOfRange for input
/// outside what the types above state; NotFound for a pack of an unknown supplier; TooLarge for more than kMaxPacks,
/// 1,000 needed materials, 100 prices of a pack, or sums beyond the program. Method: suppliers are off, paid or free in
/// a best-first tree; goods sums to be reached and kits are relaxed by Lagrange multipliers and cost splitting (M.
/// Guignard and S. Kim, "Lagrangean decomposition", 1987; B. Polyak's step, 1969; both from memory), single materials
/// by covering knapsacks; kits are then enumerated and sums reached exactly by labels that carry the suppliers' goods.
base::Result<PurchaseAnswer> planPurchase(const PurchaseProblem& problem, const PlanEffort& effort = {});

} // namespace sp::supply
